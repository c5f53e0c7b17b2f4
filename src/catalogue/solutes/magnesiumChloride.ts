import { defineSolute } from "../solute";
import { magnesiumChlorideFit } from "./curves/magnesiumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const magnesiumChloride = defineSolute({
  name: "magnesium chloride",
  aliases: { en: ["anhydrous magnesium chloride"], de: ["Magnesiumchlorid"] },
  formula: "MgCl2",
  cas: "7786-30-3",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("MgCl2"),
  vantHoff: particles(3),
  ...magnesiumChlorideFit,
  eutecticTemperature: {
    value: -33.2,
    unit: "°C",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.4,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  eutecticMassFraction: {
    value: 0.2126,
    unit: "mass fraction",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.003,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  solubility20: {
    value: 54.8,
    unit: "g per 100 g water",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.5,
    basis:
      "solubility line of a model fitted to measured solubilities; handbooks agree within this",
  },
});
