import type { AdjustQuestion, GramRange } from "../../src/adjust/adjustment";
import type { Matrix } from "../../src/foundation/cell";
import type { PaneContext } from "../view";
import type { SteerLine } from "./steerLines";
import type { NamedWish } from "./wishDrafts";

/** What the user said of one ingredient: fields as typed. */
export interface LineChoice {
  readonly free: boolean;
  readonly from: string;
  readonly to: string;
  readonly price: string;
}

const LEAST_PART = 0.5;
const MOST_TIMES = 2;

/** From half to twice what is there; anything for what is not there yet. */
export function usualChoice(
  { grams, usual, place }: SteerLine,
  pricePerKg: number | null,
  { numbers }: PaneContext,
): LineChoice {
  const isNew = place === null || grams === 0;
  return {
    free: usual,
    from: isNew ? "" : numbers.plain(grams * LEAST_PART),
    to: isNew ? "" : numbers.plain(grams * MOST_TIMES),
    price: pricePerKg === null ? "" : numbers.plain(pricePerKg),
  };
}

export interface SteerInput {
  readonly lines: readonly SteerLine[];
  readonly choices: readonly LineChoice[];
  readonly wishes: readonly NamedWish[];
  readonly own: Matrix | null;
  readonly wholeGrams: boolean;
}

/** The question to the programme, or the sentence that names the field that cannot be read. */
export function steerQuestion(input: SteerInput, context: PaneContext): AdjustQuestion | string {
  const { lines, choices, wishes, own, wholeGrams } = input;
  const mayChange: (GramRange | null)[] = [];
  const pricesPerKg: (number | null)[] = [];
  const read = (typed: string): number | null =>
    typed.trim() === "" ? null : (context.numbers.read(typed) ?? NaN);
  for (const [at, { name }] of lines.entries()) {
    const choice = choices[at];
    if (choice === undefined) continue;
    const fields = choice.free ? [choice.from, choice.to, choice.price] : ["", "", choice.price];
    const wrong = fields.find((typed) => !((read(typed) ?? 0) >= 0));
    if (wrong !== undefined) return context.words.steer.notAGram(name, wrong);
    const [fromGrams, toGrams, price] = fields.map(read);
    mayChange.push(choice.free ? { fromGrams: fromGrams ?? 0, toGrams: toGrams ?? null } : null);
    pricesPerKg.push(price ?? null);
  }
  return {
    items: lines.map(({ name }) => name),
    grams: lines.map(({ grams }) => grams),
    own,
    mayChange,
    pricesPerKg,
    wishes: wishes.map(({ wish }) => wish),
    stepGrams: wholeGrams ? 1 : null,
  };
}
