import type { HeldWaterCurve } from "./heldWaterCurve";

/** One solute of a mixture as the engine sees it: an amount and a curve, no name. */
export interface Dissolved {
  readonly moles: number;
  readonly curve: HeldWaterCurve;
}

/** A solution: liquid water and what is dissolved in it. */
export interface Solution {
  readonly waterKg: number;
  readonly solutes: readonly Dissolved[];
}
