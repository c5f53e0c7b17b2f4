import { isProblem } from "../foundation/problem";
import { iceFractionOfMix } from "./freezing";
import type { Mix } from "./mix";
import { maxFreezeTemperatureC } from "./solution";
import { heldLines } from "./workingHeld";
import { line, shown, type WorkingLine } from "./workingLine";

/** How the ice at a temperature comes about. */
export function iceLines(mix: Mix, temperatureC: number): WorkingLine[] {
  const ice = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(ice)) return [];
  const at = `${shown(temperatureC).replace("-", "−")} °C`;
  const lowestC = maxFreezeTemperatureC(mix);
  const effectiveC = lowestC === null ? temperatureC : Math.max(temperatureC, lowestC);
  const kg = mix.waterGrams / 1000;
  const share = mix.waterGrams / mix.totalGrams;
  const last = line(
    `ice at ${at}, share of the mix`,
    "share of the water × water / mix",
    `${shown(ice)} × ${shown(mix.waterGrams)} / ${shown(mix.totalGrams)}`,
    ice * share,
    "fraction",
    "rimeline",
  );
  if (ice === 0)
    return [
      line(`ice at ${at}, share of the water`, "none can form", "0", 0, "fraction", "rimeline"),
      last,
    ];
  const end =
    effectiveC > temperatureC
      ? [
          line(
            "freezing ends (Tm′): colder changes nothing",
            "mean by mass of what is dissolved",
            shown(effectiveC),
            effectiveC,
            "°C",
            "roos1993",
          ),
        ]
      : [];
  const { lines, heldKg } = heldLines(mix, effectiveC);
  return [
    ...end,
    ...lines,
    line(
      `ice at ${at}, share of the water`,
      "1 − held / water",
      `1 - ${shown(heldKg)} / ${shown(kg)}`,
      ice,
      "fraction",
      "stokesRobinson1966",
    ),
    last,
  ];
}
