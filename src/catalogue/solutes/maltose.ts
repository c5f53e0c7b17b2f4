import { defineSolute } from "../solute";
import { maltoseFit } from "./curves/maltose";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const maltose = defineSolute({
  name: "maltose",
  aliases: { en: ["malt sugar", "anhydrous maltose"], de: ["Malzzucker"] },
  formula: "C12H22O11",
  cas: "69-79-4",
  kind: "sugar",
  food: true,
  molarMass: molarMassOf("C12H22O11"),
  vantHoff: particles(1),
  ...maltoseFit,
  sweetness: {
    value: 0.4,
    unit: "1",
    source: "gamanSherrington1990",
    obtained: "from the source",
    uncertainty: 0.07,
    basis: "printed as 0.3 to 0.45 in 10 % solutions at room temperature",
  },
  glassTransitionDry: {
    value: 87,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 4,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 6.15,
    unit: "1",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of calorimetric figures",
  },
  maxFreezeTemperature: {
    value: -32,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 2,
    basis: "spread of calorimetric figures",
  },
  maxFreezeSolids: {
    value: 0.816,
    unit: "mass fraction",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.02,
    basis: "spread of calorimetric figures",
  },
  solubility20: {
    value: 79,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 6,
    basis: "spread of printed figures",
  },
});
