import type { CurveRecord } from "./solute";

/** Growth per kelvin past the coldest printed figure: sucrose is 1.4 % off at its eutectic, 9 K past it. */
const GROWTH_PER_K = 0.002;

/**
 * Standard uncertainty of the depression a curve gives, as a share of it: as stated while it has been
 * checked, growing by 0.2 % per kelvin beyond.
 */
export function curveUncertaintyFraction(record: CurveRecord, temperatureC: number): number {
  const beyondK = Math.max(0, Math.min(record.checkedToC, 0) - temperatureC);
  return record.relativeUncertainty + GROWTH_PER_K * beyondK;
}
