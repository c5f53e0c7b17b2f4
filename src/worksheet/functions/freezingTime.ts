import { isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { freezingTimeH } from "../../recipe/freezingTime";
import {
  choice,
  defineFunction,
  number,
  optionalTemperature,
  ownIngredients,
  recipe,
  temperature,
} from "../define";

/** What the core is brought to when nothing is said, K above the air. */
const USUAL_ABOVE_AIR_K = 3;

/** A refusal of a core temperature that was left out says where it comes from. */
const ofUsualCore = (answer: Result<number>): Result<number> =>
  isProblem(answer) && answer.message.startsWith("coreTemperature: ")
    ? {
        ...answer,
        message: answer.message.replace(
          ":",
          `, left out and so ${USUAL_ABOVE_AIR_K} K above the air:`,
        ),
      }
    : answer;

export const freezingTime = defineFunction({
  name: "FREEZINGTIME",
  summary:
    "Hours until the core of a piece reaches a temperature in the freezer, as an estimate (± 30 %).",
  args: {
    mix: recipe(),
    thicknessMm: number("Full thickness, or diameter, in mm", { from: 1, to: 300, unit: "mm" }),
    airTemperature: temperature("Temperature of the air or brine", { from: -60, to: 40 }),
    startTemperature: temperature("Temperature at the start", { from: -60, to: 40, default: 4 }),
    coreTemperature: optionalTemperature(
      "Temperature the core is to reach",
      { from: -60, to: 40 },
      "3 K above the air",
    ),
    airflow: choice("How the cold comes", ["still", "fan", "blast", "brine"], { default: "still" }),
    shape: choice("Shape", ["slab", "cylinder", "sphere"], { default: "slab" }),
    ownIngredients: ownIngredients(),
  },
  unit: "h",
  sources: ["pham1984", "pham1986", "plank1941", "choiOkos1986", "levy1981"],
  example: {
    formula: '=RIME.FREEZINGTIME({"water";"sucrose"},{200;50},25,-18)',
    from: "computed here",
  },
  method:
    "Pham's form of Plank's equation: t = d·ρ/(E·h)·(1 + Bi/2)·Σ ΔH/|T core − T air|, d half the thickness, Bi = h·d/k, E 1, 2, 3 for slab, cylinder, sphere. Cooling, freezing and cooling below follow one another; the heat ΔH comes in small steps from this program's own share of ice, since a sugary mix freezes over many degrees. Heat capacity, conductivity and density by Choi and Okos, ice by Levy. h = 8 still, 15 fan, 25 blast, 200 brine W/(m²·K), common practice. ± 30 %, for one piece without air in it, cooled on all its faces; a lid, a full load or a warm household freezer (load no more at once than its makers allow) takes two or three times as long. Warming to serving works too, while the surface does not melt. Declined under 55 % water, above a Biot number of 11, in surroundings below −45 °C, for a core above or just below the freezing point.",
  seeAlso: ["ICEFRACTION", "TEXTURE"],
  compute: ({
    mix,
    thicknessMm,
    airTemperature,
    startTemperature,
    coreTemperature,
    airflow,
    shape,
  }) => {
    const answer = freezingTimeH(mix, {
      thicknessMm,
      airC: airTemperature,
      startC: startTemperature,
      coreC: coreTemperature ?? airTemperature + USUAL_ABOVE_AIR_K,
      airflow,
      shape,
    });
    return coreTemperature === null ? ofUsualCore(answer) : answer;
  },
});
