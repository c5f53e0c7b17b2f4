import type { HeldWaterCurve } from "../../engine/heldWaterCurve";
import { iceLineThetaMolPerKg } from "../../engine/iceLine";
import { waterHeldKgPerMol } from "../../engine/waterHeld";
import { COLDEST_C } from "../../foundation/constants";

const STEP_K = 0.05;

/** Water activity 0.65, mol/kg. */
const DRIEST_THETA = 23.9;

/**
 * The coldest temperature, °C, down to which a curve is positive and falls as θ rises, checked every 0.05 K
 * from −0.001 to −60 °C on the ice line, and at 25 °C at the same water activities down to 0.65.
 */
export function soundDownToC(curve: HeldWaterCurve): number {
  let before = [Infinity, Infinity];
  for (let temperatureC = -0.001; temperatureC >= COLDEST_C; temperatureC -= STEP_K) {
    const theta = iceLineThetaMolPerKg(temperatureC);
    const held = [waterHeldKgPerMol(curve, theta, "freezing")];
    if (theta < DRIEST_THETA) held.push(waterHeldKgPerMol(curve, theta, 25));
    const sound = held.every((value, i) => value > 0 && value < (before[i] ?? 0));
    if (!sound) return temperatureC;
    before = held;
  }
  return COLDEST_C;
}
