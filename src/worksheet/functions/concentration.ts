import { convertConcentration, SCALES } from "../../recipe/concentration";
import { choice, defineFunction, notNegative, solute } from "../define";

export const concentration = defineFunction({
  name: "CONCENTRATION",
  summary: "Converts the concentration of a solute in water from one scale to another.",
  args: {
    solute: solute("Name of the solute"),
    value: notNegative("The concentration on the scale `from`"),
    from: choice("Scale of the value", SCALES),
    to: choice("Scale of the answer", SCALES),
  },
  unit: "as the scale",
  sources: ["ciaaw2021", "nbsC440", "crc102"],
  example: {
    formula: '=RIME.CONCENTRATION("sucrose",32.9,"g per 100 g water","mass fraction")',
    from: "computed here",
  },
  method:
    "Through the mass fraction. Brix is the mass per cent of sucrose; Baume is 145 − 145/(specific gravity 20/20 °C), from printed densities to 84 %. A hydrate counts as named, with its water in it.",
  seeAlso: ["MASSFRACTION", "MOLALITY", "BRIX"],
  compute: ({ solute: dissolved, value, from, to }) =>
    convertConcentration(dissolved, value, from, to),
});
