import { defineSolute } from "../solute";
import { fructoseFit } from "./curves/fructose";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const fructose = defineSolute({
  name: "fructose",
  aliases: {
    en: ["D-fructose", "fruit sugar", "levulose", "laevulose"],
    de: ["Fruchtzucker", "Fruktose", "Lävulose"],
  },
  formula: "C6H12O6",
  cas: "57-48-7",
  kind: "sugar",
  food: true,
  molarMass: molarMassOf("C6H12O6"),
  vantHoff: particles(1),
  ...fructoseFit,
  sweetness: {
    value: 1.2,
    unit: "1",
    source: "goffHartel2013",
    obtained: "from memory",
    uncertainty: 0.12,
    basis: "in solution at room temperature; more in the cold, 1.7 is that of the crystals",
  },
  glassTransitionDry: {
    value: 5,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 4,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 3.76,
    unit: "1",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of calorimetric figures",
  },
  maxFreezeTemperature: {
    value: -46,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 3,
    basis: "spread of calorimetric figures",
  },
  maxFreezeSolids: {
    value: 0.825,
    unit: "mass fraction",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.02,
    basis: "spread of calorimetric figures",
  },
  eutecticTemperature: {
    value: -10.1,
    unit: "°C",
    source: "youngJonesLewis1952",
    obtained: "from memory",
    uncertainty: 0.4,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.485,
    unit: "mass fraction",
    source: "youngJonesLewis1952",
    obtained: "from memory",
    uncertainty: 0.01,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 375,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 15,
    basis: "spread of printed figures",
  },
  note: "Sweeter in the cold than at room temperature; the 1.7 often printed is that of the crystals on the tongue.",
});
