import { EXTRAPOLATED_BELOW_C } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import { freezingPointOfMix } from "./freezing";
import { freezingPointGapK } from "./freezingPointGap";
import type { Mix } from "./mix";
import { maxFreezeTemperatureC } from "./solution";
import { freezingPointUncertaintyK } from "./uncertainty";
import { heldLines } from "./workingHeld";
import { line, shown, shownDifference, type WorkingLine } from "./workingLine";
import { idealLines } from "./workingSolution";

/** How the freezing point comes about, or why there is none. */
export function freezingLines(mix: Mix): WorkingLine[] {
  const pointC = freezingPointOfMix(mix);
  if (isProblem(pointC)) return neverLines(mix, pointC.message.replace(/^grams: /, ""));
  if (pointC === 0) {
    return [line("freezing point", "nothing is dissolved", "0", 0, "°C", "murphyKoop2005")];
  }
  const [, ideal] = idealLines(mix);
  const idealK = Number(ideal?.result ?? 0);
  const uncertaintyK = freezingPointUncertaintyK(mix);
  return [
    ...heldLines(mix, pointC).lines,
    line(
      "freezing point: there all the water is held",
      "θ such that Σ mol × w(θ) = water",
      shown(pointC),
      pointC,
      "°C",
      "stokesRobinson1966",
    ),
    ...(pointC < EXTRAPOLATED_BELOW_C
      ? [
          line(
            "colder than any curve was checked",
            "extrapolated",
            "",
            "extrapolated",
            "",
            "rimeline",
          ),
        ]
      : []),
    line(
      "real less ideal depression",
      "solutes hold water, ions hold each other",
      `${shown(-pointC)} - ${shown(idealK)}`,
      shownDifference(-pointC, idealK),
      "K",
      "rimeline",
    ),
    ...gapLines(mix),
    ...(isProblem(uncertaintyK)
      ? []
      : [
          line(
            "one standard uncertainty",
            "curves, mixing rule and ingredients",
            shown(uncertaintyK),
            uncertaintyK,
            "K",
            "rimeline",
          ),
        ]),
  ];
}

/** Print is divided on mixtures of sugars, salts and alcohols: how far its two rules are apart here. */
function gapLines(mix: Mix): WorkingLine[] {
  const gapK = freezingPointGapK(mix);
  return gapK === 0
    ? []
    : [
        line(
          "the other mixing rule differs by (part of the uncertainty)",
          "what sugars, salts and alcohols do alone, summed, less all together",
          shown(gapK),
          gapK,
          "K",
          "kleinhansMazur2007",
        ),
      ];
}

/** Why no ice forms: what the solutes would hold at the end of freezing is more than all the water. */
function neverLines(mix: Mix, reason: string): WorkingLine[] {
  const lowestC = maxFreezeTemperatureC(mix);
  if (lowestC === null) return [line("freezing point", reason, "", "none", "", "rimeline")];
  const { lines, heldKg } = heldLines(mix, Math.max(lowestC, -100));
  return [
    line(
      "freezing would end (Tm′)",
      "mean by mass of what is dissolved",
      shown(lowestC),
      lowestC,
      "°C",
      "roos1993",
    ),
    ...lines,
    line(
      "held beyond the water there is, at Tm′",
      "held − water",
      `${shown(heldKg)} - ${shown(mix.waterGrams / 1000)}`,
      shownDifference(heldKg, mix.waterGrams / 1000),
      "kg",
      "rimeline",
    ),
    line("freezing point", reason, "", "none", "", "rimeline"),
  ];
}
