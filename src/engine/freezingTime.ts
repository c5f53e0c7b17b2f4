/** Heat that has to leave (or enter) each kilogram, and the temperature at which it does. */
export interface HeatStage {
  readonly heatJPerKg: number;
  readonly meanC: number;
}

/** A piece that is cooled or warmed evenly on all its faces. */
export interface CooledPiece {
  readonly halfThicknessM: number; // radius when round
  /** 1 for a slab, 2 for a long cylinder, 3 for a sphere. */
  readonly shapeDivisor: number;
  readonly densityKgPerM3: number;
  readonly conductivityWPerMK: number;
  readonly surfaceWPerM2K: number;
  readonly surroundingsC: number;
}

/**
 * Seconds until the stages of heat have passed:
 *   t = d·ρ / (E·h) · Σ ΔH/|T − T_a| · (1 + Bi/2),  Bi = h·d/k.
 * With one stage at the freezing point this is Plank's equation.
 * @source pham1986; plank1941
 */
export function freezingTimeS(piece: CooledPiece, stages: readonly HeatStage[]): number {
  const { halfThicknessM, shapeDivisor, densityKgPerM3, conductivityWPerMK } = piece;
  const { surfaceWPerM2K, surroundingsC } = piece;
  const perKelvin = stages.reduce(
    (sum, { heatJPerKg, meanC }) =>
      heatJPerKg > 0 ? sum + heatJPerKg / Math.abs(meanC - surroundingsC) : sum,
    0,
  );
  const biot = (surfaceWPerM2K * halfThicknessM) / conductivityWPerMK;
  const perArea = (halfThicknessM * densityKgPerM3) / (shapeDivisor * surfaceWPerM2K);
  return perArea * perKelvin * (1 + biot / 2);
}
