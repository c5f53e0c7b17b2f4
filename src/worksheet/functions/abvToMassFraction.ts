import { abvMassFraction } from "../../recipe/abvMassFraction";
import { defineFunction, number } from "../define";

export const abvToMassFraction = defineFunction({
  name: "ABVTOMASSFRACTION",
  summary: "Mass fraction of ethanol in a spirit of a given strength by volume.",
  args: {
    abvPercent: number("Alcohol by volume at 20 °C", { from: 0, to: 100, unit: "% vol" }),
  },
  unit: "fraction",
  sources: ["crc102"],
  example: { formula: "=RIME.ABVTOMASSFRACTION(40)", from: "computed here" },
  method:
    "mass fraction × density of the mixture = strength × density of ethanol (0.7893 g/mL), solved with printed densities of ethanol and water. Sugar in a liqueur makes it heavier, so its mass fraction is smaller.",
  seeAlso: ["CONCENTRATION"],
  compute: ({ abvPercent }) => abvMassFraction(abvPercent),
});
