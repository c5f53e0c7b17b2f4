/** Part of a liquid with its specific refraction and the volume that a gram of it takes up there. */
export interface RefractingPart {
  readonly grams: number;
  readonly volumeMlPerG: number;
  readonly refractionMlPerG: number;
}

/**
 * Refractive index of a liquid, whose parts' specific refractions add up by mass:
 * (n² − 1)/(n² + 2) = ρ·Σ w·r.
 * @source lorentzLorenz1880
 */
export function refractiveIndexOf(parts: readonly RefractingPart[]): number {
  const volumeMl = parts.reduce((sum, part) => sum + part.grams * part.volumeMlPerG, 0);
  const refractionMl = parts.reduce((sum, part) => sum + part.grams * part.refractionMlPerG, 0);
  const share = refractionMl / volumeMl;
  return Math.sqrt((1 + 2 * share) / (1 - share));
}
