import { COLDEST_C } from "../foundation/constants";
import { badInput, isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { AdjustQuestion, AdjustWish, GramRange } from "./adjustment";
import { outcomesOf } from "./outcomes";
import { readQuestion, type AdjustLine } from "./readQuestion";

/** One ingredient is to give way to another. */
export interface Substitution {
  /** Which of the items gives way, and how much of it is left. */
  readonly away: number;
  readonly leftGrams: number;
  /** Which of the items takes its place; 0 g when it is not in the recipe yet. */
  readonly by: number;
  /** Where the share of ice is to stay as it is. */
  readonly servingC: number;
  /** Then whatever may change in the question may change for it, too. */
  readonly keepsSweetness: boolean;
}

/** Sweetness is kept within so much: less than most tasters tell apart in the cold (common practice). */
const SWEETNESS_WITHIN = 0.05;

const ANY: GramRange = { fromGrams: 0, toGrams: null };

/** In steps nothing stays exactly as it is: so near counts as the same, well within what is uncertain. */
const SAME_WITHIN = { "ice fraction": 0.001, "freezing point": 0.01 } as const;

function within(wish: AdjustWish, value: number, stepGrams: number | null): number {
  if (wish.kind === "sweetness") return SWEETNESS_WITHIN * value;
  if (stepGrams === null) return 0;
  if (wish.kind === "total") return stepGrams / 2;
  return wish.kind === "ice fraction" || wish.kind === "freezing point"
    ? SAME_WITHIN[wish.kind]
    : 0;
}

/** What the recipe is now, as wishes that keep it so. */
function keeping(
  lines: readonly AdjustLine[],
  chosen: Substitution,
  stepGrams: number | null,
): Result<AdjustWish[]> {
  const { servingC, keepsSweetness } = chosen;
  const open = { from: null, to: null };
  const ice: AdjustWish = {
    kind: "ice fraction",
    temperatureC: servingC,
    basis: "water",
    ...open,
  };
  const total: AdjustWish = { kind: "total", ...open };
  const sweetness: AdjustWish = { kind: "sweetness", ...open };
  const point: AdjustWish = { kind: "freezing point", ...open };
  const grams = lines.map((line) => line.grams);
  const iceNow = outcomesOf(lines, [ice], grams);
  if (isProblem(iceNow)) return iceNow;
  // Where nothing is frozen yet the freezing point says what the share of ice cannot.
  const asked: AdjustWish[] = [(iceNow[0]?.value ?? 0) > 0 ? ice : point];
  if (lines.some(isWater)) asked.push(total);
  if (keepsSweetness) asked.push(sweetness);
  const now = outcomesOf(lines, asked, grams);
  if (isProblem(now)) return now;
  return asked.map((wish, at) => {
    const value = now[at]?.value ?? 0;
    const room = within(wish, value, stepGrams);
    const [least, most] =
      wish.kind === "freezing point"
        ? [COLDEST_C, 0]
        : [0, wish.kind === "ice fraction" ? 1 : Infinity];
    return { ...wish, from: Math.max(value - room, least), to: Math.min(value + room, most) };
  });
}

const isWater = ({ item, grams }: AdjustLine): boolean => item.content.water === 1 && grams > 0;

/**
 * The question that exchanges one ingredient for another at equal effect: the same share of ice at the
 * serving temperature, the mass made up with water where the recipe has water, the sweetness kept if asked.
 * The wishes of the question given are replaced by these.
 */
export function substitution(
  question: AdjustQuestion,
  chosen: Substitution,
): Result<AdjustQuestion> {
  const { away, by, leftGrams } = chosen;
  const given = question.grams[away] ?? 0;
  if (away === by) {
    return badInput(`by: "${question.items[by] ?? ""}" cannot stand in for itself.`);
  }
  if (!(leftGrams >= 0 && leftGrams < given)) {
    return badInput(
      `leftGrams: ${leftGrams} g of "${question.items[away] ?? ""}" are to be left; from 0 to less than the ${given} g that are there is expected.`,
    );
  }
  const moved = question.items.map((_, at) => (at === away || at === by ? ANY : null));
  const lines = readQuestion({ ...question, mayChange: moved, wishes: [] });
  if (isProblem(lines)) return lines;
  const wishes = keeping(lines, chosen, question.stepGrams ?? null);
  if (isProblem(wishes)) return wishes;
  const mayChange = lines.map((line, at): GramRange | null => {
    if (at === away) return { fromGrams: leftGrams, toGrams: leftGrams };
    if (at === by) return { fromGrams: line.grams, toGrams: null };
    if (isWater(line)) return ANY;
    return chosen.keepsSweetness ? (question.mayChange[at] ?? null) : null;
  });
  return { ...question, mayChange, wishes };
}
