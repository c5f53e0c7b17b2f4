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
  sources: ["commonPractice", "gordonTaylor1952"],
  example: { formula: '=RIME.TEXTURE({"water";"sucrose"},{200;70},-13)', from: "common practice" },
  method:
    "With ice, by the share of the mix that is ice: pours, spoons, scoops, bites, rock-hard. Without, by the decade of the viscosity from the distance to the glass transition: flows, squeezes, pulls, cuts, snaps. A scale of this program's own, common practice; air and fat soften, pieces harden. The reason stands in WORKING.",
  seeAlso: ["WORKING", "CHECK", "ICEFRACTION"],
  compute: ({ mix, temperature: temperatureC }) =>
    andThen(textureOf(mix, temperatureC), ({ word }) => word),
});
