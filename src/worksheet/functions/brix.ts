import { brixOfMix } from "../../recipe/brix";
import { defineFunction, ownIngredients, recipe } from "../define";

export const brix = defineFunction({
  name: "BRIX",
  summary: "Degrees Brix that a refractometer would read on the liquid part of a mix.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "°Bx",
  sources: ["crc102", "nbsC440"],
  example: { formula: '=RIME.BRIX({"water";"sucrose"},{80;20})', from: "computed here" },
  method:
    "Refractive indices of all that is dissolved, added by mass and read as if it were sucrose, at 20 °C. Alcohol (a third to a half of its mass), salt (1.2 times) and acids falsify the reading as sugar; fat and pulp blur it. ± 0.5 °Bx.",
  seeAlso: ["CONCENTRATION", "COMPONENT"],
  compute: ({ mix }) => brixOfMix(mix),
});
