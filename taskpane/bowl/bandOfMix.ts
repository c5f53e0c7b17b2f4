import type { Cell } from "../../src/foundation/cell";

interface Ice {
  readonly iceOfWater: Cell;
  readonly iceOfMix: Cell;
}

/** Ice of the mix is ice of the water times the mix's share of water, and so is its uncertainty; null where it is not known. */
export function bandOfMix({ iceOfWater, iceOfMix }: Ice, band: Cell): number | null {
  if (typeof iceOfWater !== "number" || typeof iceOfMix !== "number") return null;
  return typeof band === "number" && iceOfWater > 0 ? (band * iceOfMix) / iceOfWater : null;
}
