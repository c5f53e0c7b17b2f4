import { isProblem } from "../../src/foundation/problem";
import type { Words } from "../words/words";
import type { PaneContext } from "../view";
import { askOf, shareOf, type AskedMix } from "./askMixOf";

/** One figure of a mix, ready to be shown. */
export interface Figure {
  readonly key: keyof Words["steer"]["figures"];
  readonly text: string;
}

const DASH = "–";

/** Freezing point and share of ice with one standard uncertainty, then what is a plain sum. */
export function figuresOf(
  mix: AskedMix,
  servingC: number,
  { numbers }: PaneContext,
): readonly Figure[] {
  const point = askOf(mix, "FREEZINGPOINT");
  const pointBand = askOf(mix, "UNCERTAINTY", "freezing point", null);
  const ice = askOf(mix, "ICEFRACTION", servingC, "water");
  const iceBand = askOf(mix, "UNCERTAINTY", "ice fraction", servingC);
  const sweetness = askOf(mix, "SWEETNESS");
  const total = askOf(mix, "COMPONENT", "total");
  const solids = shareOf(mix, "solids");
  const banded = (value: unknown, band: unknown, scale: number, unit: string) =>
    typeof value === "number" && typeof band === "number" && !isProblem(band)
      ? numbers.withBand(value * scale, band * scale, unit)
      : DASH;
  const plain = (value: unknown, unit: string) =>
    typeof value === "number" ? `${numbers.fixed(value, 1)}\u202f${unit}` : DASH;
  return [
    { key: "point", text: banded(point, pointBand, 1, "°C") },
    { key: "ice", text: banded(ice, iceBand, 100, "%") },
    { key: "sweetness", text: plain(sweetness, "g") },
    { key: "solids", text: plain(solids, "g") },
    { key: "total", text: plain(total, "g") },
  ];
}
