import { adjustRecipe } from "../../src/adjust/adjustRecipe";
import type { AdjustQuestion, AdjustWish, Obstacle } from "../../src/adjust/adjustment";
import { substitution } from "../../src/adjust/substitution";
import { isProblem } from "../../src/foundation/problem";
import { column, numberOf } from "../worksheet/ask";

const free = { fromGrams: 0, toGrams: null };

/** Water and sugar: at a temperature every share of ice belongs to one share of sugar. */
const syrup = (wishes: readonly AdjustWish[], more: Partial<AdjustQuestion> = {}) => ({
  items: ["water", "sucrose"],
  grams: [800, 200],
  own: null,
  mayChange: [free, free],
  wishes,
  ...more,
});

function recipesOf(question: AdjustQuestion) {
  const answer = adjustRecipe(question);
  if (isProblem(answer)) throw new Error(answer.message);
  if (answer.kind === "obstacle") throw new Error("impossible");
  return answer.recipes;
}

function obstacleOf(question: AdjustQuestion): Obstacle {
  const answer = adjustRecipe(question);
  if (isProblem(answer)) throw new Error(answer.message);
  if (answer.kind === "adjusted") throw new Error("possible");
  return answer.obstacle;
}

function sentenceOf(question: AdjustQuestion): string {
  const answer = adjustRecipe(question);
  if (!isProblem(answer)) throw new Error(`not refused: ${answer.kind}`);
  return answer.message;
}

const total = (grams: number): AdjustWish => ({ kind: "total", from: grams, to: grams });
const point = (from: number, to = from): AdjustWish => ({ kind: "freezing point", from, to });

describe("against print", () => {
  // CRC Handbook of Chemistry and Physics, "Concentrative properties of aqueous solutions": sucrose of
  // 26 mass % freezes at −2.12 °C; printed to 0.01 K, which is 0.15 mass % there.
  test("a sugar solution that is to freeze at −2.12 °C becomes one of 26 %", () => {
    const [first] = recipesOf(syrup([point(-2.12), total(1000)]));
    expect(Math.abs(first!.grams[1]! / 10 - 26)).toBeLessThan(0.3);
    expect(first!.grams[0]! + first!.grams[1]!).toBeCloseTo(1000, 6);
  });

  test("it is what RIME.AMOUNTFOR finds by its own way, the mass held", () => {
    const [first] = recipesOf(syrup([point(-3), total(1000)]));
    const mix = [column(["water", "sucrose"]), column([800, 200])];
    const amount = numberOf(
      "AMOUNTFOR",
      ...mix,
      "sucrose",
      "freezing point",
      -3,
      null,
      null,
      null,
      "mass",
    );
    expect(first!.grams[1]).toBeCloseTo(amount, 5);
  });
});

describe("the smallest change", () => {
  test("nothing changes when every wish is met already", () => {
    const [first, ...others] = recipesOf(
      syrup([total(1000), { kind: "sweetness", from: 15, to: 25 }]),
    );
    expect(first!.grams).toEqual([800, 200]);
    expect(others).toEqual([]);
  });

  test("each amount stays within its range", () => {
    const { wish, reachable } = obstacleOf(
      syrup([point(-3), total(1000)], { mayChange: [free, { fromGrams: 0, toGrams: 220 }] }),
    );
    expect([wish, reachable > -3]).toEqual([0, true]);
  });

  test("an ingredient that is not in the recipe is added only where it is listed", () => {
    const question = syrup([{ kind: "sweetness", from: 20, to: 20 }, point(-2.5)], {
      items: ["water", "sucrose", "trehalose"],
      grams: [800, 200, 0],
    });
    const listed = recipesOf({ ...question, mayChange: [null, free, free] });
    expect(listed[0]!.grams[2]).toBeGreaterThan(100);
    expect(obstacleOf({ ...question, mayChange: [null, free, null] }).kept).toHaveLength(1);
  });

  test("two other ways are offered where they differ", () => {
    const question: AdjustQuestion = {
      items: ["water", "whole milk", "cream 35 % fat", "sucrose", "glucose", "skim milk powder"],
      grams: [100, 450, 200, 120, 40, 40],
      own: null,
      mayChange: Array.from({ length: 6 }, () => free),
      wishes: [
        { kind: "ice fraction", temperatureC: -13, basis: "water", from: 0.6, to: 0.65 },
        { kind: "component", component: "fat", from: 9, to: 10 },
        { kind: "sweetness", from: 14, to: 17 },
      ],
    };
    const ways = recipesOf(question).map(({ way }) => way);
    expect(ways[0]).toBe("smallest change");
    expect(new Set(ways).size).toBe(ways.length);
    const still = recipesOf(question).find(({ way }) => way === "water untouched");
    if (still !== undefined) expect(still.grams[0]).toBe(100);
  });

  test("the cost of 1 kg is kept down by what is cheap", () => {
    const question = syrup([{ kind: "cost", from: null, to: 0.2 }, total(1000)], {
      pricesPerKg: [0, 1.5],
    });
    expect(recipesOf(question)[0]!.grams[1]).toBeCloseTo(1000 * (0.2 / 1.5), 6);
  });

  test("below the end of freezing (Tm′) the ice keeps its share, and the answer is right there, too", () => {
    const ice: AdjustWish = {
      kind: "ice fraction",
      temperatureC: -45,
      basis: "water",
      from: 0.9,
      to: 0.9,
    };
    const [first] = recipesOf(syrup([ice, total(1000)]));
    const mix = [column(["water", "sucrose"]), column(first!.grams)];
    expect(numberOf("ICEFRACTION", ...mix, -45)).toBeCloseTo(0.9, 6);
  });
});

describe("the one wish that stands in the way", () => {
  test("is named with the nearest value it can have", () => {
    // 1000 g of water and sugar with 10 % sugar at most: the most solids there can be are 10 g per 100 g.
    const solids: AdjustWish = { kind: "component", component: "solids", from: 30, to: 35 };
    const question = syrup([total(1000), solids], {
      mayChange: [free, { fromGrams: 0, toGrams: 100 }],
    });
    const { wish, side, wanted, reachable } = obstacleOf(question);
    expect([wish, side, wanted]).toEqual([1, "from", 30]);
    expect(reachable).toBeCloseTo(10, 6);
  });

  test("of two that contradict each other it is the one that has to give way less", () => {
    const question = syrup([point(-3), { kind: "sweetness", from: 20, to: 21 }]);
    const { wish, kept } = obstacleOf(question);
    expect(kept).toEqual(wish === 0 ? [1] : [0]);
  });
});

describe("whole grams", () => {
  test("are kept exactly where the wishes leave room", () => {
    const [first] = recipesOf(syrup([point(-2.2, -2.1), total(1000)], { stepGrams: 1 }));
    expect(first!.grams.every((grams) => Number.isInteger(grams))).toBe(true);
    expect(first!.outcomes.map(({ miss }) => miss)).toEqual([0, 0]);
  });

  test("miss by a stated size where they do not", () => {
    const [first] = recipesOf(syrup([point(-2.12345), total(1000)], { stepGrams: 5 }));
    expect(first!.grams.map((grams) => grams % 5)).toEqual([0, 0]);
    const [frozen] = first!.outcomes;
    expect(frozen!.miss).toBeCloseTo(Math.abs(frozen!.value + 2.12345), 12);
    expect(frozen!.miss).toBeGreaterThan(0);
  });
});

describe("exchanging a sugar at equal effect", () => {
  const mix = { items: ["water", "sucrose", "glucose"], grams: [950, 50, 0], own: null };
  const question: AdjustQuestion = { ...mix, mayChange: [free, free, free], wishes: [] };
  const chosen = { away: 1, leftGrams: 0, by: 2, servingC: -0.5, keepsSweetness: false };

  test("keeps ice and mass; about half as much of a sugar of about half the molar mass is needed", () => {
    const asked = substitution(question, chosen);
    if (isProblem(asked)) throw new Error(asked.message);
    const [first] = recipesOf(asked);
    const [water, sucrose, glucose] = first!.grams as [number, number, number];
    expect(sucrose).toBe(0);
    expect(water + glucose).toBeCloseTo(1000, 6);
    const ice = (grams: readonly number[]) =>
      numberOf("ICEFRACTION", column(mix.items), column(grams), -0.5);
    expect(ice(first!.grams)).toBeCloseTo(ice(mix.grams), 6);
    // Molar masses 342.30 and 180.16 g/mol (IUPAC atomic weights): the ideal law asks for 0.526 of the mass
    // per kg of water; so dilute, the greater hydration of the larger sugar shifts that by a per cent or two.
    const ratio = glucose / water / (50 / 950);
    expect(ratio).toBeGreaterThan(0.526);
    expect(ratio).toBeLessThan(0.545);
  });

  test("no other way is offered that leaves what is to go", () => {
    const asked = substitution({ ...question, stepGrams: 1 }, chosen);
    if (isProblem(asked)) throw new Error(asked.message);
    for (const { grams } of recipesOf(asked)) expect(grams[1]).toBe(0);
  });

  test("the sweetness cannot be kept by the other sugar alone, and that is said with the nearest", () => {
    const asked = substitution(question, { ...chosen, keepsSweetness: true });
    if (isProblem(asked)) throw new Error(asked.message);
    expect(asked.wishes[obstacleOf(asked).wish]!.kind).toBe("sweetness");
  });

  test.each([
    [{ ...chosen, by: 1 }, /by: "sucrose" cannot stand in for itself/],
    [{ ...chosen, leftGrams: 50 }, /leftGrams: 50 g of "sucrose".*less than the 50 g/],
  ])("is refused when it makes no sense", (wrong, sentence) => {
    const asked = substitution(question, wrong);
    expect(isProblem(asked) && asked.message).toMatch(sentence);
  });
});

describe("what is refused, each in one sentence", () => {
  test.each<[string, AdjustQuestion, RegExp]>([
    ["an unknown name", syrup([], { items: ["water", "sucrosse"] }), /"sucrosse".*nearest/],
    ["a negative amount", syrup([], { grams: [800, -1] }), /"sucrose" is -1 g/],
    ["nothing that may change", syrup([], { mayChange: [null, null] }), /no ingredient may change/],
    [
      "a range the wrong way round",
      syrup([], { mayChange: [{ fromGrams: 5, toGrams: 2 }, null] }),
      /"water" may go from 5 to 2 g/,
    ],
    ["a window the wrong way round", syrup([point(-1, -2)]), /from -1 to -2; the smaller/],
    ["a freezing point above 0 °C", syrup([point(2)]), /freezing point is to be 2 °C; -60 to 0/],
    [
      "ice above 0 °C",
      syrup([{ kind: "ice fraction", temperatureC: 3, basis: "water", from: 0, to: 1 }]),
      /asked for at 3 °C/,
    ],
    ["a cost without prices", syrup([{ kind: "cost", from: null, to: 1 }]), /"water" has no price/],
    ["a step of nothing", syrup([], { stepGrams: 0 }), /the step is 0 g/],
    [
      "a glycol, even when it is only allowed to be added",
      syrup([], {
        items: ["water", "sucrose", "propylene glycol"],
        grams: [800, 200, 0],
        mayChange: [null, null, free],
      }),
      /"propylene glycol" is not a food/,
    ],
  ])("%s", (_, question, sentence) => {
    expect(sentenceOf(question)).toMatch(sentence);
    expect(sentenceOf(question).split(/[.!?] /)).toHaveLength(1);
  });
});
