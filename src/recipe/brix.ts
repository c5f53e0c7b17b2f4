import { rootBetween } from "../engine/rootBetween";
import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { interpolated } from "./interpolated";
import type { Mix } from "./mix";
import { solutionRows, type SolutionRow } from "./solutionRows";
import { standIn } from "./standIn";

const WATER_INDEX = 1.333;
const MOST_BRIX = 84;

const indexRows = (rows: readonly SolutionRow[]) =>
  rows.map(([massPercent, , refractiveIndex]) => [massPercent, refractiveIndex] as const);

const SUCROSE = indexRows(solutionRows["sucrose"] ?? []);

/** How much more than sucrose a substance raises the refractive index, gram for gram, at so much dissolved. */
function againstSucrose(name: string, percent: number): number {
  const rows = indexRows(solutionRows[name] ?? []);
  const at = Math.min(Math.max(percent, 2), rows.at(-1)?.[0] ?? 2);
  const raisedBy = (table: typeof rows) => (interpolated(table, at) ?? WATER_INDEX) - WATER_INDEX;
  return raisedBy(rows) / raisedBy(SUCROSE);
}

/**
 * Degrees Brix that a refractometer at 20 °C would read on the liquid part: the refractive indices of all that
 * is dissolved, added by mass, as if it were sucrose. Alcohol, salt and acid falsify the reading as sugar.
 */
export function brixOfMix({ doses, waterGrams }: Mix): Result<number> {
  const dissolved = doses.reduce((sum, { grams }) => sum + grams, 0);
  const liquid = dissolved + waterGrams;
  if (!(liquid > 0)) {
    return outsideValidity(
      "grams: nothing in this mix is liquid at 20 °C; water or something dissolved is expected.",
    );
  }
  const percent = (100 * dissolved) / liquid;
  const asSucrose = doses.reduce(
    (sum, { substance, grams }) => sum + grams * againstSucrose(standIn(substance), percent),
    0,
  );
  const whole = (interpolated(SUCROSE, Math.min(percent, MOST_BRIX)) ?? WATER_INDEX) - WATER_INDEX;
  const raised = dissolved > 0 ? (whole * asSucrose) / dissolved : 0;
  const missing = (brix: number) =>
    (interpolated(SUCROSE, brix) ?? WATER_INDEX) - WATER_INDEX - raised;
  return (
    rootBetween(missing, 0, MOST_BRIX) ??
    outsideValidity(
      `grams: the reading would lie above ${MOST_BRIX} °Bx, the most that is answered.`,
    )
  );
}
