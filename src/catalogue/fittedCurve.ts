import type { Solute } from "./solute";

/** What the fit script writes for a solute, one file each under solutes/curves/. */
export type FittedCurve = Pick<Solute, "curve" | "curveRecord">;
