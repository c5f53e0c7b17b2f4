import { iceLineTemperatureC } from "../../engine/iceLineTemperature";
import { waterHeldKgPerMol } from "../../engine/waterHeld";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../foundation/constants";
import { isopiestic } from "./figures/isopiestic";
import { osmotic25 } from "./figures/osmotic25";
import type { FigureUse, IsopiesticTable, OsmoticTable } from "./figureTable";
import { leastSquares } from "./leastSquares";
import { referenceOsmoticCoefficient } from "./pitzer";
import { rounded, type SeriesCurve } from "./seriesFit";

/** A solution at 25 °C whose water activity is known, as θ in mol/kg. */
export interface WarmPoint {
  readonly molalityMolPerKg: number;
  readonly thetaMolPerKg: number;
}

export interface WarmTables {
  readonly osmotic: readonly OsmoticTable[];
  readonly isopiestic: readonly IsopiesticTable[];
}

/** Beyond this the series is not meant to hold (water activity 0.5). */
const MOST_THETA = 38;

/** Known 25 °C solutions of one solute kept for one use. */
export function warmPoints(
  solute: string,
  ions: number,
  use: FigureUse,
  tables: WarmTables = { osmotic: osmotic25, isopiestic },
): WarmPoint[] {
  const printed = tables.osmotic
    .filter((table) => table.solute === solute && table.use === use)
    .flatMap(({ molalityMolPerKg, osmoticCoefficient }) =>
      molalityMolPerKg.map((molality, row) => ({
        molalityMolPerKg: molality,
        thetaMolPerKg: ions * molality * (osmoticCoefficient[row] ?? Number.NaN),
      })),
    );
  const paired = tables.isopiestic
    .filter((table) => table.solute === solute && table.use === use && table.temperatureC === 25)
    .flatMap(({ molalityMolPerKg, reference, referenceMolalityMolPerKg }) =>
      molalityMolPerKg.map((molality, row) => {
        const against = referenceMolalityMolPerKg[row] ?? Number.NaN;
        const thetaMolPerKg = 2 * against * referenceOsmoticCoefficient(reference, against);
        return { molalityMolPerKg: molality, thetaMolPerKg };
      }),
    );
  return [...printed, ...paired].filter(({ thetaMolPerKg }) => thetaMolPerKg <= MOST_THETA);
}

/** Adds the temperature term: linear least squares of the relative miss in held water at 25 °C. */
export function fitWarmTerm(curve: SeriesCurve, points: readonly WarmPoint[]): SeriesCurve {
  const rows = points.map(({ molalityMolPerKg, thetaMolPerKg }) => {
    const activity = Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * thetaMolPerKg);
    const warmth = (25 - iceLineTemperatureC(thetaMolPerKg)) / 25;
    const term = WATER_MOLAR_MASS_KG_PER_MOL * activity * warmth * molalityMolPerKg;
    return [term, term * (1 - activity)];
  });
  const targets = points.map(
    ({ molalityMolPerKg, thetaMolPerKg }) =>
      1 - molalityMolPerKg * waterHeldKgPerMol(curve, thetaMolPerKg, 25),
  );
  const [k0 = 0, k1 = 0] = leastSquares(rows, targets);
  return { ...curve, k: [rounded(k0), rounded(k1)] };
}
