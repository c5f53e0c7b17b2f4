import { brixOfMix } from "../../recipe/brix";
import { defineFunction, ownIngredients, recipe } from "../define";

export const brix = defineFunction({
  name: "BRIX",
  summary: "Degrees Brix that a refractometer would read on the liquid part of a mix.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "°Bx",
  sources: ["crc102", "lorentzLorenz1880", "hoiland1986"],
  example: { formula: '=RIME.BRIX({"water";"sucrose"},{80;20})', from: "computed here" },
  method:
    "The refractive index of the liquid at 20 °C, specific refractions added by mass (Lorentz and Lorenz), read as if all were sucrose. So it is not the sugar: alcohol reads as 0.4 times its mass, salt as 1.2, acid as 0.9, milk and egg protein as 1.3; fat and pulp blur the reading and are left out. ± 0.3 °Bx for sugars, ± 1 °Bx with polyols, syrups or protein.",
  seeAlso: ["CONCENTRATION", "COMPONENT"],
  compute: ({ mix }) => brixOfMix(mix),
});
