import { defineSolute } from "../solute";
import { glucoseFit } from "./curves/glucose";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const glucose = defineSolute({
  name: "glucose",
  aliases: {
    en: [
      "D-glucose",
      "anhydrous glucose",
      "anhydrous dextrose",
      "dextrose, anhydrous",
      "grape sugar",
    ],
    de: ["Traubenzucker, wasserfrei", "Glukose", "Dextrose, wasserfrei", "wasserfreie Dextrose"],
  },
  formula: "C6H12O6",
  cas: "50-99-7",
  kind: "sugar",
  food: true,
  molarMass: molarMassOf("C6H12O6"),
  vantHoff: particles(1),
  ...glucoseFit,
  sweetness: {
    value: 0.7,
    unit: "1",
    source: "gamanSherrington1990",
    obtained: "from the source",
    uncertainty: 0.06,
    basis: "printed as 0.7 to 0.8 in 10 % solutions at room temperature",
  },
  glassTransitionDry: {
    value: 31,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 3,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 4.52,
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
    value: 0.8,
    unit: "mass fraction",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.02,
    basis: "spread of calorimetric figures",
  },
  eutecticTemperature: {
    value: -5.3,
    unit: "°C",
    source: "young1957",
    obtained: "from memory",
    uncertainty: 0.1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.3175,
    unit: "mass fraction",
    source: "young1957",
    obtained: "from memory",
    uncertainty: 0.01,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 91,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 4,
    basis: "anhydrous basis; spread of printed figures",
  },
});
