import { badInput, isProblem, outsideValidity, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Item } from "../recipe/item";
import type { MixPart } from "../recipe/mix";
import { mixOf } from "../recipe/mixOf";
import { namedItem, NO_OWN_INGREDIENTS, type OwnIngredients } from "../recipe/namedItem";
import { notFood } from "../recipe/notFood";
import { readOwnIngredients } from "../recipe/readOwnIngredients";
import type { AdjustQuestion } from "./adjustment";
import { wishProblem } from "./wishProblem";

/** One ingredient as the programme sees it. */
export interface AdjustLine {
  readonly item: Item;
  readonly grams: number;
  /** Both equal to `grams` when it stays. */
  readonly fromGrams: number;
  readonly toGrams: number;
  /** A change by so many grams counts as one. */
  readonly scaleGrams: number;
  readonly pricePerKg: number | null;
}

/** An ingredient may become so many times the whole recipe when no limit is given. */
const MOST_TIMES = 10;
/** A change is measured against the ingredient's own grams, but a trace is not held to its trace. */
const LEAST_SHARE_OF_RECIPE = 0.005;

const isAmount = (value: number): boolean => Number.isFinite(value) && value >= 0;

function lineOf(question: AdjustQuestion, at: number, own: OwnIngredients): Result<AdjustLine> {
  const name = question.items[at] ?? "";
  const grams = question.grams[at] ?? NaN;
  const place = `items, row ${at + 1}`;
  if (!isAmount(grams)) {
    return badInput(`grams: "${name}" is ${grams} g; a number of at least 0 is expected.`);
  }
  const item = namedItem(name, own, place);
  if (isProblem(item)) return item;
  const total = question.grams.reduce((sum, one) => sum + one, 0);
  const range = question.mayChange[at] ?? null;
  const fromGrams = range === null ? grams : range.fromGrams;
  const toGrams = range === null ? grams : (range.toGrams ?? MOST_TIMES * total);
  if (!isAmount(fromGrams) || !isAmount(toGrams) || fromGrams > toGrams) {
    return badInput(
      `mayChange: "${name}" may go from ${fromGrams} to ${toGrams} g; two amounts, the smaller first, are expected.`,
    );
  }
  if (range !== null && item.origin.kind === "water lost") {
    return badInput('mayChange: "water lost" is what evaporates and cannot be chosen.');
  }
  const scaleGrams = Math.max(grams, LEAST_SHARE_OF_RECIPE * total);
  const pricePerKg = question.pricesPerKg?.[at] ?? null;
  return { item, grams, fromGrams, toGrams, scaleGrams, pricePerKg };
}

/** A price is missing, or is none, while the cost is asked for. */
function priceProblem(question: AdjustQuestion, lines: readonly AdjustLine[]): Problem | null {
  if (!question.wishes.some(({ kind }) => kind === "cost")) return null;
  const wrong = lines.find(
    ({ pricePerKg, grams, toGrams }) =>
      (grams > 0 || toGrams > 0) && (pricePerKg === null || !isAmount(pricePerKg)),
  );
  return wrong === undefined
    ? null
    : badInput(
        `pricesPerKg: "${wrong.item.name}" has ${wrong.pricePerKg === null ? "no price" : `the price ${wrong.pricePerKg}`}; a price of 1 kg of at least 0 is expected of every ingredient.`,
      );
}

function stepProblem({ stepGrams = null }: AdjustQuestion): Problem | null {
  return stepGrams === null || (stepGrams > 0 && Number.isFinite(stepGrams))
    ? null
    : badInput(`stepGrams: the step is ${stepGrams} g; a number above 0 is expected.`);
}

const partsOf = (lines: readonly AdjustLine[]): readonly MixPart[] =>
  lines.map(({ item, grams, toGrams }) => ({
    item,
    grams: Math.max(grams, toGrams > 0 ? 1e-9 : 0),
  }));

/** Looks every name up and checks every number of a question; what is no food is refused. */
export function readQuestion(question: AdjustQuestion): Result<readonly AdjustLine[]> {
  const own = question.own === null ? NO_OWN_INGREDIENTS : readOwnIngredients(question.own);
  if (isProblem(own)) return own;
  const lines: AdjustLine[] = [];
  for (const at of question.items.keys()) {
    const line = lineOf(question, at, own);
    if (isProblem(line)) return line;
    lines.push(line);
  }
  const mix = mixOf(lines.map(({ item, grams }) => ({ item, grams })));
  if (isProblem(mix)) return mix;
  const withAll = mixOf(partsOf(lines));
  const refusal = isProblem(withAll) ? withAll : notFood(withAll);
  const wrong = refusal ?? stepProblem(question) ?? priceProblem(question, lines);
  if (wrong !== null) return wrong;
  for (const [at, wish] of question.wishes.entries()) {
    const wrongWish = wishProblem(wish, `wishes, ${at + 1}`);
    if (wrongWish !== null) return wrongWish;
  }
  return lines.every(({ fromGrams, toGrams, grams }) => fromGrams === grams && toGrams === grams)
    ? outsideValidity("mayChange: no ingredient may change; at least one is expected.")
    : lines;
}
