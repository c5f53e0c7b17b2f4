import type { AuditContext } from "../context";
import { componentGrams } from "../answers/answers";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { BUT_WATER } from "../answers/butWater";
import { plainWords } from "../recipes/headings/plainWords";
import { plainWaterGrams } from "./plainWaterGrams";
import { misreadingOf } from "./misreadParts";
import { RESULT } from "../answers/judgeResults";
import { statedParts, type StatedPart } from "../answers/statedParts";

/** Compositions of fruit and dairy vary; and a label may mean the sugar that is added. */
const RELATIVE = 0.08;
const LEAST = 0.5;

function isRight({ part, basis, value, right, mix, label }: StatedPart): boolean {
  const isNear = (one: number) =>
    Math.abs(value - one) <= Math.max(LEAST, RELATIVE * Math.abs(one));
  if (isNear(right)) return true;
  const total = mix.grams.reduce((sum, one) => sum + one, 0);
  const whole = basis === "% of the mix" ? total : (componentGrams(mix, "water") ?? 0);
  const inBasis = (grams: number | null) =>
    basis === "g" ? (grams ?? 0) : (100 * (grams ?? 0)) / whole;
  // "Solids" may leave out what does not dissolve, and count all but the water, alcohol too; "sugar" what milk and
  // fruit bring.
  if (part === "solids") {
    const solids = [
      componentGrams(mix, "dissolved solids"),
      total - (componentGrams(mix, "water") ?? 0),
      // "All but the water" may be the other lines.
      ...(BUT_WATER.test(plainWords(label)) ? [total - plainWaterGrams(mix)] : []),
    ];
    return solids.some((grams) => isNear(inBasis(grams)));
  }
  return part === "sugars" && isNear(inBasis(componentGrams(mix, "sucrose")));
}

function finding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, basis, part } = stated;
  if (!stated.mix.complete || isRight(stated) || misreadingOf(stated) !== null) return [];
  const [from, to] = [rounded(value, 1), rounded(right, 1)];
  const unit = basis === "% of the mix" ? "%" : "g";
  return [
    findingAt(RESULT, sheet, stated, {
      message: `"${label}" is ${from} ${unit}; recomputed from the recipe it is ${to} ${unit}.`,
      effect: { quantity: part, from, to, unit },
      fix: "Mend what it is computed from, or enter it again.",
    }),
  ];
}

const placeOf = ({ sheet, row, column }: StatedPart): string => `${sheet.name}!${row},${column}`;

/** Stated amounts and shares of water, solids, sugars and alcohol that are those of no recipe near which they stand. */
export function partsThatDiffer(context: AuditContext): Finding[] {
  const parts = statedParts(context);
  const wrong = parts.flatMap((stated) => finding(stated).map((found) => ({ stated, found })));
  if (wrong.length === 0) return [];
  // Between two lists a number may be of either.
  const right = new Set(parts.filter(isRight).map(placeOf));
  return wrong.flatMap(({ stated, found }) => (right.has(placeOf(stated)) ? [] : [found]));
}
