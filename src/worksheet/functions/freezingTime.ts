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

export const freezingTime = defineFunction({
  name: "FREEZINGTIME",
  summary: "Hours until the core of a piece reaches a temperature in the freezer, as an estimate.",
  args: {
    mix: recipe(),
    thicknessMm: number("Full thickness, or diameter, in mm", { from: 1, to: 300, unit: "mm" }),
    airTemperature: temperature("Temperature of the air or brine", { from: -60, to: 40 }),
    startTemperature: temperature("Temperature at the start", { from: -60, to: 40, default: 4 }),
    coreTemperature: optionalTemperature(
      "Temperature the core is to reach, else 3 K above the air",
      {
        from: -60,
        to: 40,
      },
    ),
    airflow: choice("How the cold comes", ["still", "fan", "blast", "brine"], { default: "still" }),
    shape: choice("Shape", ["slab", "cylinder", "sphere"], { default: "slab" }),
    ownIngredients: ownIngredients(),
  },
  unit: "h",
  sources: ["pham1986", "plank1941", "choiOkos1986"],
  example: {
    formula: '=RIME.FREEZINGTIME({"water";"sucrose"},{200;50},25,-18)',
    from: "computed here",
  },
  method:
    "Pham's form: t = d/(E·h)·ρ·(ΔH₁/ΔT₁ + ΔH₂/ΔT₂)·(1 + Bi/2), d half the thickness, E 1, 2, 3 for slab, cylinder, sphere; heats and mean temperatures from this program's own share of ice, h 8 still, 15 fan, 25 blast, 200 brine W/(m²·K). For one piece with air on all its faces, ± 30 %; a lid, a full load or a warm household freezer takes two or three times as long. Warming up works too. Declined under 55 % water.",
  seeAlso: ["ICEFRACTION", "TEXTURE"],
  compute: ({
    mix,
    thicknessMm,
    airTemperature,
    startTemperature,
    coreTemperature,
    airflow,
    shape,
  }) =>
    freezingTimeH(mix, {
      thicknessMm,
      airC: airTemperature,
      startC: startTemperature,
      coreC: coreTemperature ?? airTemperature + 3,
      airflow,
      shape,
    }),
});
