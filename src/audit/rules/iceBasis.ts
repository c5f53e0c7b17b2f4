import { iceFraction } from "../answers/answers";
import { isOfDoubtedRecipe } from "../answers/doubtedRecipes";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledBasis } from "../answers/resultLabel";
import { temperatureOfResultC } from "../temperatures/servingTemperature";
import type { StatedResult } from "../answers/statedResults";
import type { Rule } from "../rule";

const identity = { id: "ice-of-water-or-mix", severity: "error" } as const;

/** A point of difference is more than rounding, and more than curves of different origin differ. */
const TOLERANCE = 0.015;

function finding(context: AuditContext, result: StatedResult): Finding | null {
  const basis = labelledBasis(result.label);
  const temperatureC = temperatureOfResultC(context, result);
  const mix = context.mixOf(result.block, result.recipe);
  if (basis === null || temperatureC === null || !mix.complete) return null;
  // A formula that asks for what the label says has another mistake, if any.
  const formula = result.sheet.cellAt(result.row, result.column)?.formula ?? "";
  if (formula.includes(`"${basis}"`)) return null;
  const stated = result.unit === "%" ? result.value / 100 : result.value;
  const own = iceFraction(mix, temperatureC, basis);
  const other = iceFraction(mix, temperatureC, basis === "water" ? "mix" : "water");
  if (own === null || other === null) return null;
  if (Math.abs(own - stated) <= TOLERANCE || Math.abs(other - stated) > TOLERANCE) return null;
  if (isOfDoubtedRecipe(context, result)) return null;
  const said = basis === "water" ? "the water" : "the mix";
  const is = basis === "water" ? "the whole mix" : "the water only";
  return findingAt(identity, result.sheet, result, {
    message: `"${result.label}" says the share of ${said} that is ice, but ${rounded(100 * stated, 1)} % is the share of ${is}.`,
    effect: {
      quantity: `share of ${said} that is ice`,
      from: rounded(100 * stated, 1),
      to: rounded(100 * own, 1),
      unit: "%",
    },
    fix: "Change the label, or the basis in the formula.",
    edits: numberEdit(
      result.sheet,
      result,
      result.unit === "%" ? rounded(100 * own, 1) : rounded(own, 3),
    ),
  });
}

export const iceBasis: Rule = {
  ...identity,
  title: "The share of the water and the share of the mix are mixed up",
  find: (context) =>
    context.results
      .filter(({ role }) => role === "ice fraction")
      .flatMap((result) => finding(context, result) ?? []),
};
