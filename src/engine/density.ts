/** Part of a mix with the volume that a gram of it takes up there. */
export interface VolumePart {
  readonly grams: number;
  readonly volumeMlPerG: number;
}

/** Density of a mix whose parts' volumes add up, g/mL; with air, `overrunFraction` of the mix's volume. */
export function densityOfParts(parts: readonly VolumePart[], overrunFraction: number): number {
  const grams = parts.reduce((sum, part) => sum + part.grams, 0);
  const volumeMl = parts.reduce((sum, part) => sum + part.grams * part.volumeMlPerG, 0);
  return grams / (volumeMl * (1 + overrunFraction));
}
