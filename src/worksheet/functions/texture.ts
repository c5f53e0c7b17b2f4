import { andThen } from "../../foundation/result";
import { textureOf } from "../../recipe/texture";
import { defineFunction, ownIngredients, recipe, temperature } from "../define";

export const texture = defineFunction({
  name: "TEXTURE",
  summary: "A word for how a mix feels at a temperature.",
  args: {
    mix: recipe(),
    temperature: temperature("Temperature of the mix", { from: -60, to: 40 }),
    ownIngredients: ownIngredients(),
  },
  unit: "text",
  sources: ["commonPractice", "gordonTaylor1952", "wlf1955"],
  example: { formula: '=RIME.TEXTURE({"water";"sucrose"},{200;70},-13)', from: "common practice" },
  method:
    "With ice, by firmness = decade of the viscosity of what is not frozen + 5 × share of ice in the mix: pours below 1.5, spoons below 2.9, scoops below 4.2, bites below 6.5, rock-hard above. Without, by that decade: flows below 1, squeezes below 3, pulls below 7, cuts below 10, snaps above. The decade follows from the distance to the glass transition (± 1). A scale of this program's own around textbook mixes, common practice; a word beside a limit may be its neighbour. Air and fat soften, pieces and gums harden: they are not counted. The reason stands in WORKING.",
  seeAlso: ["WORKING", "CHECK", "ICEFRACTION"],
  compute: ({ mix, temperature: temperatureC }) =>
    andThen(textureOf(mix, temperatureC), ({ word }) => word),
});
