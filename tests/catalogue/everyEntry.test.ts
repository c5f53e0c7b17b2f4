import { ingredients } from "../../src/catalogue/ingredients";
import { solutes } from "../../src/catalogue/solutes";
import { callFunction } from "../../src/worksheet/callFunction";
import { isProblem } from "../../src/foundation/problem";
import { bibliography } from "../../src/foundation/bibliography";
import { cellOf, column, numberOf, ofRecipe, problemOf } from "../worksheet/ask";

type Grams = Readonly<Record<string, number>>;

/** Freezing point, °C; a mix without ice counts as colder than all. */
function coldness(grams: Grams): number {
  const cell = callFunction(
    "FREEZINGPOINT",
    column(Object.keys(grams)),
    column(Object.values(grams)),
  )[0]![0]!;
  if (typeof cell === "number") return cell;
  if (isProblem(cell) && cell.kind === "outsideValidity") return -100;
  throw new Error(isProblem(cell) ? cell.message : String(cell));
}

const BASE: Grams = { water: 300, sucrose: 60, glucose: 20, "fine salt": 1, "whole milk": 200 };
const with_ = (name: string, grams: number): Grams => ({
  ...BASE,
  [name]: (BASE[name] ?? 0) + grams,
});

describe("more of a solute never makes a mix freeze warmer", () => {
  test.each(solutes.map(({ name }) => name))("%s", (name) => {
    const amounts = [0, 0.5, 2, 8, 30, 100];
    const points = amounts.map((grams) => coldness(with_(name, grams)));
    points.slice(1).forEach((point, i) => {
      expect(point).toBeLessThanOrEqual(points[i]!);
      if (amounts[i + 1]! <= 30) expect(point).toBeLessThan(points[i]!);
    });
  });
});

describe("provenance and use of every solute", () => {
  test.each(solutes.map((solute) => [solute.name, solute] as const))(
    "%s shows where its curve is from",
    (name, { curveRecord }) => {
      const shown = cellOf("SOLUTE", name, "source");
      for (const key of curveRecord.source) expect(shown).toContain(bibliography[key]);
    },
  );

  const notFood = solutes.filter(({ food }) => !food).map(({ name }) => name);

  test("glycols, methanol and ammonia are among what is no food", () => {
    for (const name of ["ethylene glycol", "propylene glycol", "methanol", "ammonia"]) {
      expect(notFood).toContain(name);
    }
  });

  test.each(notFood)("%s is answered for class and refused in what is eaten", (name) => {
    const mix = [
      [["water"], [name]],
      [[95], [5]],
    ] as const;
    expect(numberOf("FREEZINGPOINT", ...mix)).toBeLessThan(-0.5);
    expect(problemOf("CHECK", ...mix, "firm bar at −18").message).toContain("not a food");
    expect(problemOf("CAUTIONS", ...mix).message).toContain("not a food");
  });
});

/** All of it stays out of the solution: pieces, fats, and what holds neither water nor a solute. */
const inert = ingredients.filter(
  ({ inclusion, composition: { water, solutes: dissolved = {}, higherSaccharides } }) =>
    inclusion === true ||
    (water === 0 && Object.keys(dissolved).length === 0 && higherSaccharides === undefined),
);

describe("what does not dissolve changes nothing but the shares of the mass", () => {
  test("there is such an ingredient of every kind: nuts, chocolate, biscuits, fat", () => {
    const groups = new Set(inert.map(({ group }) => group));
    for (const group of ["nuts and seeds", "cocoa and chocolate", "biscuits", "fats"]) {
      expect(groups).toContain(group);
    }
  });

  const totalGrams = Object.values(BASE).reduce((sum, grams) => sum + grams, 0);

  test.each(inert.map(({ name }) => name))("%s", (name) => {
    const mixed = with_(name, 100);
    expect(coldness(mixed)).toBe(coldness(BASE));
    const iceOf = (grams: Grams, basis: string) => ofRecipe("ICEFRACTION", grams, -12, basis);
    expect(iceOf(mixed, "water")).toBe(iceOf(BASE, "water"));
    const share = totalGrams / (totalGrams + 100);
    expect(iceOf(mixed, "mix")).toBeCloseTo(share * iceOf(BASE, "mix"), 12);
    expect(ofRecipe("WATERACTIVITY", mixed)).toBe(ofRecipe("WATERACTIVITY", BASE));
  });
});

describe("of every ingredient beside others", () => {
  test.each(ingredients.map(({ name }) => name))(
    "%s: only ratios matter, the order does not, and a line may be split",
    (name) => {
      const grams = with_(name, 150);
      const entries = Object.entries(grams);
      const asked = (lines: readonly (readonly [string, number])[]) =>
        callFunction(
          "FREEZINGPOINT",
          column(lines.map(([item]) => item)),
          column(lines.map(([, amount]) => amount)),
        )[0]![0];
      const there = asked(entries);
      if (typeof there !== "number") {
        expect(isProblem(there!) && there.kind).toBe("outsideValidity");
        return;
      }
      const same = (lines: readonly (readonly [string, number])[]) =>
        expect(Math.abs((asked(lines) as number) / there - 1)).toBeLessThan(1e-10);
      same(entries.map(([item, amount]) => [item, 7.3 * amount]));
      same([...entries].reverse());
      same(
        entries.flatMap(([item, amount]) => [
          [item, amount / 4],
          [item, (3 * amount) / 4],
        ]),
      );
    },
  );
});
