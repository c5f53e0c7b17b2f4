import { numberFrom } from "../answers/answers";
import { decimalsOf } from "../decimalsOf";
import type { Place } from "../recipes/recipeBlock";
import { gramsPer, isMass, unitFromHeader } from "../recipes/amounts/unit";
import type { AlcoholLabel } from "./alcoholLabel";
import type { LabelledLine } from "./labelledLine";

const RELATIVE = 0.005;
/** Below this share more than right the two ways of reading give the same. */
const LEAST_MORE = 0.015;
const ML: Readonly<Record<string, number>> = {
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
  litre: 1000,
  liter: 1000,
};

/** How many decimals a number format always shows. */
const decimalsShown = (format = ""): number => /\.(0+)/.exec(format)?.[1]?.length ?? 0;

/** Half of the last digit that is typed, or shown by the format: 5 among tenths is 5.0. */
export function roundingOf(line: LabelledLine, { row, column }: Place): number {
  const cell = line.sheet.cellAt(row, column);
  if (cell?.formula !== undefined || typeof cell?.value !== "number") return 0;
  const decimals = Math.max(decimalsOf(cell.value), decimalsShown(cell.format));
  return 0.501 * 10 ** -decimals;
}

const isVolume = (unit: ReturnType<typeof unitFromHeader>): string | null =>
  unit !== null && typeof unit !== "string" && unit.household in ML ? unit.household : null;

/** The factor to grams (or to millilitres) that a label's unit has; null for another kind of number. */
export function amountIn(
  label: string,
): { readonly factor: number; readonly isMl: boolean } | null {
  const unit = unitFromHeader(label);
  const volume = isVolume(unit);
  if (volume !== null) return { factor: ML[volume] ?? 1, isMl: true };
  if (unit === null) return { factor: 1, isMl: false };
  return typeof unit === "string" && isMass(unit) ? { factor: gramsPer(unit), isMl: false } : null;
}

/** An alcohol (or the water beside it) as a mistake and as the strength really gives it. */
export interface Sizes {
  readonly taken: number;
  readonly right: number;
  readonly mL: number | null;
}

/** What a wrong and a right reading of an amount would give, in g. */
export function sizesFor(
  says: AlcoholLabel,
  amount: number,
  isMl: boolean,
  abv: number,
  mass: number,
): Sizes {
  if (isMl) {
    const mL = (amount * abv) / 100;
    return { taken: mL, right: mL * (numberFrom("GRAMS", "ethanol", 1, "mL") ?? NaN), mL: amount };
  }
  const [taken, right] = [(amount * abv) / 100, (amount * mass) / 100];
  return says === "water"
    ? { taken: amount - taken, right: amount - right, mL: null }
    : { taken, right, mL: null };
}

/** Whether a number is the mistaken one, and that is another than the right one. */
export function isTaken(stated: number, { taken, right }: Sizes, rounding: number): boolean {
  const slack = Math.max(RELATIVE * Math.abs(taken), rounding);
  const isApart = Math.abs(taken - right) > Math.max(LEAST_MORE * Math.abs(right), 2 * rounding);
  return taken > 0 && isApart && Math.abs(stated - taken) <= slack;
}
