import { type FittedCurve } from "../fittedCurve";
import type { FreezingTable } from "./figureTable";
import { isopiestic } from "./figures/isopiestic";
import { osmotic25 } from "./figures/osmotic25";
import { fitHydration } from "./hydrationFit";
import type { HydrationPlan, SeriesPlan } from "./plan";
import { freezingPoints, freezingTables, type FreezingPointOfOne } from "./points";
import { largest, residualsK, rootMeanSquare } from "./residuals";
import { fitSeries } from "./seriesFit";
import { crossValidationK, extrapolationK } from "./trial";
import { fitWarmTerm, warmPoints, type WarmTables } from "./warmFit";

/** The least that is ever claimed: handbooks agree no better with each other. */
const LEAST_UNCERTAINTY = 0.004;

interface PrintedFigures extends WarmTables {
  readonly freezing: readonly FreezingTable[];
}

const PRINTED: PrintedFigures = { freezing: freezingTables, osmotic: osmotic25, isopiestic };

/** Fits one solute to the figures marked "fit", reads no others, and says how well it does. */
export function fitSolute(
  plan: HydrationPlan | SeriesPlan,
  molarMassGPerMol: number,
  printed: PrintedFigures = PRINTED,
): FittedCurve {
  const points = freezingPoints(plan.solute, molarMassGPerMol, "fit", printed.freezing);
  const fit = (some: readonly FreezingPointOfOne[]) =>
    plan.form === "series" ? fitSeries(plan, some) : fitHydration(plan, some);
  const cold = fit(points);
  const curve =
    cold.form === "series" && plan.form === "series" && plan.warm === true
      ? fitWarmTerm(cold, warmPoints(plan.solute, cold.ions, "fit", printed))
      : cold;
  const misses = residualsK(curve, points);
  const shares = points.flatMap(({ freezingPointC }, row) =>
    freezingPointC < -0.5 ? [(misses[row] ?? 0) / freezingPointC] : [],
  );
  const left = crossValidationK(fit, points).toFixed(3);
  const beyond = extrapolationK(fit, points);
  const foretold = beyond < 90 ? `within ${beyond.toFixed(2)} K` : "not at all";
  return {
    curve,
    curveRecord: {
      source: [...new Set(points.map((point) => point.source))],
      obtained: "computed here",
      rmsK: round(rootMeanSquare(misses), 4),
      largestK: round(largest(misses), 3),
      points: points.length,
      checkedToC: Math.min(...points.map((point) => point.freezingPointC)),
      relativeUncertainty: Math.max(
        round(rootMeanSquare(shares), 4),
        plan.leastUncertainty ?? LEAST_UNCERTAINTY,
      ),
      basis: `${points.length} printed freezing points; left-out fifths are met within ${left} K (RMS), the colder half from the warmer ${foretold}`,
    },
  };
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
