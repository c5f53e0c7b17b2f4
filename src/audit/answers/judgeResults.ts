import { rounded } from "../effect";
import type { AuditContext } from "../context";
import { explainResult, SALT_AS_ONE, SIGN_REVERSED, type Explanation } from "./explainResult";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isAboutShownRows } from "../formulas/isAboutShownRows";
import { isInWholeDegrees } from "./isInWholeDegrees";
import { meantPart } from "./meantPart";
import { isReading } from "./isReading";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { isClassBlock } from "../recipes/classSheet";
import { isPointInFahrenheit } from "../temperatures/pointInFahrenheit";
import { freezingPointsByRow, recomputed } from "./recomputed";
import {
  breaksPromise,
  IDEAL_RELATIVE,
  inOurUnit,
  isCloseForReading,
  isOff,
  isWithinTolerance,
  mayBeOtherData,
} from "./resultDifference";
import { saysLaw } from "./saysLaw";
import type { StatedResult } from "./statedResults";

/** The two rules that share this work: a wrong result, and one that only the ideal law gives. */
export const RESULT = { id: "result-differs", severity: "error" } as const;
export const IDEAL_LAW = { id: "ideal-law-too-far-off", severity: "warning" } as const;

/** Above this many results of one block they are computed in one call. */
const MANY = 50;

function explanationOf(context: AuditContext, result: StatedResult) {
  if (result.role === "ice fraction") return null;
  const mix = context.mixOf(result.block, result.recipe);
  return explainResult(mix, result.role, result.value, result.unit === "°F");
}

/**
 * A wrong sign and a van 't Hoff factor left out of a class sheet have their own rules; and a molality may count
 * formula units, which is no mistake.
 */
function isToldElsewhere(
  { role, block, sheet, row, column }: StatedResult,
  stated: number,
  ours: number,
  explanation: Explanation | null,
): boolean {
  const [mistake, ...more] = explanation?.mistakes ?? [];
  const isComputed = sheet.cellAt(row, column)?.formula !== undefined;
  const isClass = role === "molality" || (isComputed && isClassBlock(block));
  if (isClass && mistake === SALT_AS_ONE && more.length === 0) return true;
  const isPoint = role === "freezing point" || role === "depression";
  // How far off the ideal law is with the right sign shows when the sign is mended.
  const isTurned = mistake === SIGN_REVERSED && more.length === 0;
  const isNear = isTurned || !isOff(role, -stated, ours, IDEAL_RELATIVE);
  return isPoint && stated * ours < 0 && isNear;
}

const OUR_UNIT = {
  "freezing point": "°C",
  depression: "K",
  molality: "mol/kg",
  "ice fraction": "%",
} as const;

function judge(context: AuditContext, result: StatedResult, ours: number | null): Finding | null {
  const { role, sheet, label } = result;
  const stated = inOurUnit(result);
  if (ours === null) return null;
  const isRightEnough = !isOff(role, stated, ours);
  if (isRightEnough && !breaksPromise(result, stated, ours)) return null;
  if (isInWholeDegrees(context, result, stated, ours)) return null;
  if (isCloseForReading(role, stated, ours) && isReading(context, result)) return null;
  const explanation = explanationOf(context, result);
  const idealOnly = explanation?.mistakes.length === 0;
  if (isRightEnough && !idealOnly) return null;
  const saysIdeal = saysLaw(label) && !breaksPromise(result, stated, ours);
  if (idealOnly && (saysIdeal || isWithinTolerance(result, stated, ours))) return null;
  if (isToldElsewhere(result, stated, ours, explanation)) return null;
  if (isPointInFahrenheit(context, result)) return null;
  if (isAboutShownRows(context.workbook, sheet, result)) return null;
  if (explanation === null && mayBeOtherData(context, result, stated, ours)) return null;
  const shown = (value: number) => rounded(role === "ice fraction" ? 100 * value : value, 2);
  const unit = OUR_UNIT[role];
  const why = idealOnly
    ? " The ideal law i·Kf·m gives the sheet's number; at this strength real solutions differ."
    : explanation !== null
      ? ` The sheet's number comes out ${explanation.mistakes.join(", ")}.`
      : "";
  return findingAt(idealOnly ? IDEAL_LAW : RESULT, sheet, result, {
    message: `"${label}" is ${shown(stated)} ${unit}; recomputed from the recipe it is ${shown(ours)} ${unit}.${why}`,
    effect: { quantity: role, from: shown(stated), to: shown(ours), unit },
    fix: idealOnly
      ? "Say that it is the ideal law's, or use the freezing point of the real solution."
      : "Mend what it is computed from, or enter it again.",
  });
}

function byBlock(results: readonly StatedResult[]): Map<RecipeBlock, StatedResult[]> {
  const groups = new Map<RecipeBlock, StatedResult[]>();
  for (const result of results) {
    const group = groups.get(result.block);
    if (group === undefined) groups.set(result.block, [result]);
    else group.push(result);
  }
  return groups;
}

function judgeMany(
  context: AuditContext,
  block: RecipeBlock,
  results: readonly StatedResult[],
): Finding[] {
  const recipes = [...new Set(results.map(({ recipe }) => recipe))];
  const points = freezingPointsByRow(context, block, recipes);
  return results.flatMap((result) => {
    const point = points.get(result.recipe.line) ?? null;
    const ours = point === null || result.role === "freezing point" ? point : -point;
    return judge(context, result, ours) ?? [];
  });
}

function judgeAll(context: AuditContext): Finding[] {
  return [...byBlock(context.results)].flatMap(([block, results]) => {
    const isPoint = ({ role }: StatedResult) => role === "freezing point" || role === "depression";
    const points = results.filter(isPoint);
    const many = block.layout === "across" && points.length > MANY;
    const single = many ? results.filter((result) => !isPoint(result)) : results;
    return [
      ...(many ? judgeMany(context, block, points) : []),
      ...single
        .map((result) => meantPart(context, result))
        .flatMap((result) => judge(context, result, recomputed(context, result)) ?? []),
    ];
  });
}

const judged = new WeakMap<AuditContext, Finding[]>();

/** Compares every stated result of a workbook with what its recipe gives; done once for both rules. */
export function judgeResults(context: AuditContext): readonly Finding[] {
  const known = judged.get(context) ?? judgeAll(context);
  judged.set(context, known);
  return known;
}
