import { adjustRecipe } from "../../src/adjust/adjustRecipe";
import type { AdjustedRecipe, AdjustQuestion, AdjustWish } from "../../src/adjust/adjustment";
import { isProblem } from "../../src/foundation/problem";
import { askedValue, BELOW_THE_END, feasibleCase, randomFrom, SERVED } from "./cases";

const CASES = 300;
/** Of the value, or of a hundredth: what the answers may miss a wish by. */
const WITHIN = 1e-6;
const HALF_STEP_GRAMS = 0.5;

const missOf = ({ from, to }: AdjustWish, value: number) =>
  Math.max((from ?? value) - value, value - (to ?? value), 0);

const relative = ({ from, to }: AdjustWish, miss: number) =>
  miss / Math.max(Math.abs(from ?? 0), Math.abs(to ?? 0), 0.01);

function recipesFor(question: AdjustQuestion): readonly AdjustedRecipe[] {
  const answer = adjustRecipe(question);
  if (isProblem(answer)) throw new Error(`${answer.message} ${JSON.stringify(question)}`);
  if (answer.kind === "obstacle") throw new Error(`impossible: ${JSON.stringify(question)}`);
  return answer.recipes;
}

/** The measure by which a change is the smallest: grams changed by grams there, a trace by 0.5 % of all. */
function changeOf({ grams }: AdjustQuestion, next: readonly number[]): number {
  const total = grams.reduce((sum, one) => sum + one, 0);
  return grams.reduce(
    (sum, now, at) => sum + Math.abs(next[at]! - now) / Math.max(now, 0.005 * total),
    0,
  );
}

/** What half a gram of each changed ingredient moves a wish's quantity by, by asking the function itself. */
function halfGramMoves(wish: AdjustWish, question: AdjustQuestion, grams: readonly number[]) {
  const value = askedValue(wish, question, grams);
  return question.grams.reduce((sum, now, at) => {
    if (Math.abs(grams[at]! - now) < 1e-9) return sum;
    const moved = [HALF_STEP_GRAMS, -HALF_STEP_GRAMS].map((half) =>
      askedValue(
        wish,
        question,
        grams.map((each, place) => (place === at ? Math.max(each + half, 0) : each)),
      ),
    );
    return sum + Math.max(...moved.map((one) => Math.abs(one - value)));
  }, 0);
}

describe.each([
  ["at serving temperatures", SERVED, CASES],
  ["where some have ceased to freeze (Tm′)", BELOW_THE_END, CASES / 2],
])("recipes %s of which a way to meet every wish is known, none called impossible", (...given) => {
  const [, temperatures, count] = given;
  const random = randomFrom(20261125);
  const cases = Array.from({ length: count }, () => feasibleCase(random, null, temperatures));
  const solved = cases.map((one) => ({ ...one, recipes: recipesFor(one.question) }));

  test("every answer meets every wish by the worksheet functions", () => {
    let worst = 0;
    for (const { question, recipes } of solved) {
      for (const { grams } of recipes) {
        for (const wish of question.wishes) {
          worst = Math.max(worst, relative(wish, missOf(wish, askedValue(wish, question, grams))));
        }
      }
    }
    expect(worst).toBeLessThan(WITHIN);
  });

  test("no amount leaves its range, and what may not change does not", () => {
    for (const { question, recipes } of solved) {
      for (const { grams } of recipes) {
        question.mayChange.forEach((range, at) => {
          const now = question.grams[at]!;
          expect(grams[at]).toBeGreaterThanOrEqual(range === null ? now : range.fromGrams);
          if (range?.toGrams !== null) {
            expect(grams[at]).toBeLessThanOrEqual(range === null ? now : range.toGrams);
          }
        });
      }
    }
  });

  test("the first answer changes no more than the way that is known", () => {
    for (const { question, knownGrams, recipes } of solved) {
      const [first] = recipes;
      const room = changeOf(question, knownGrams) * (1 + 1e-6) + 1e-6;
      expect(changeOf(question, first!.grams)).toBeLessThan(room);
    }
  });
});

describe(`${CASES} more, in whole grams`, () => {
  const random = randomFrom(7);
  const cases = Array.from({ length: CASES }, () => feasibleCase(random, 1));

  test("changed amounts are whole, and wishes hold within what half a gram of each moves", () => {
    let [all, exact] = [0, 0];
    for (const { question } of cases) {
      for (const { grams, outcomes } of recipesFor(question)) {
        all += 1;
        if (outcomes.every(({ miss }) => miss === 0)) exact += 1;
        for (const [at, now] of question.grams.entries()) {
          if (Math.abs(grams[at]! - now) > 1e-9) expect(Number.isInteger(grams[at])).toBe(true);
        }
        for (const [at, wish] of question.wishes.entries()) {
          const miss = missOf(wish, askedValue(wish, question, grams));
          expect(miss).toBeLessThanOrEqual(halfGramMoves(wish, question, grams) + 1e-9);
          expect(Math.abs(outcomes[at]!.miss - miss)).toBeLessThan(1e-5 * (1 + miss));
        }
      }
    }
    // Most windows are wide enough for whole grams that keep them exactly.
    expect(exact / all).toBeGreaterThan(0.5);
  });
});

describe("a wish that is out of reach", () => {
  const random = randomFrom(99);
  const shifted = Array.from({ length: CASES }, () => {
    const { question } = feasibleCase(random, null);
    const chosen = Math.floor(random() * question.wishes.length);
    const factor = random() < 0.5 ? 1.3 : 0.7;
    const most = (wish: AdjustWish) =>
      wish.kind === "ice fraction" ? 1 : wish.kind === "component" ? 100 : 1e9;
    const wishes = question.wishes.map((wish, at) =>
      at === chosen
        ? {
            ...wish,
            from: wish.from === null ? null : Math.min(wish.from * factor, most(wish)),
            to: wish.to === null ? null : Math.min(wish.to * factor, most(wish)),
          }
        : wish,
    );
    return { ...question, wishes };
  });
  const obstacles = shifted.flatMap((question) => {
    const answer = adjustRecipe(question);
    if (isProblem(answer)) throw new Error(answer.message);
    return answer.kind === "obstacle" ? [{ question, obstacle: answer.obstacle }] : [];
  });

  test("there are many such cases among those tried", () => {
    expect(obstacles.length).toBeGreaterThan(CASES / 4);
  });

  test("its nearest value is reachable, and nothing beyond it is", () => {
    for (const { question, obstacle } of obstacles) {
      const { wish, side, reachable, wanted, kept } = obstacle;
      const asked = (level: number): AdjustQuestion => ({
        ...question,
        wishes: [
          ...kept.map((at) => question.wishes[at]!),
          { ...question.wishes[wish]!, from: null, to: null, [side]: level },
        ],
      });
      const towards = wanted - reachable;
      const nearer = adjustRecipe(asked(reachable - 1e-4 * towards));
      const beyond = adjustRecipe(asked(reachable + 1e-2 * towards));
      const isReachable = !isProblem(nearer) && nearer.kind === "adjusted";
      // An end of the scale cannot be asked for any nearer.
      if (reachable !== 0) expect([JSON.stringify(obstacle), isReachable]).toContain(true);
      expect(!isProblem(beyond) && beyond.kind).toBe("obstacle");
    }
  });
});
