import { defineSolute } from "../solute";
import { maltoseFit } from "./curves/maltose";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const lactose = defineSolute({
  name: "lactose",
  aliases: {
    en: ["milk sugar", "anhydrous lactose", "lactose, anhydrous"],
    de: ["Milchzucker", "Laktose"],
  },
  formula: "C12H22O11",
  cas: "63-42-3",
  kind: "sugar",
  food: true,
  molarMass: molarMassOf("C12H22O11"),
  vantHoff: particles(1),
  // its own table ends at 8 %, too soon to tell it from maltose, whose curve it takes
  curve: maltoseFit.curve,
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0049,
    largestK: 0.015,
    points: 16,
    checkedToC: -0.5,
    relativeUncertainty: 0.01,
    basis: "the curve of maltose, held against 16 printed freezing points of lactose to 8 %",
  },
  sweetness: {
    value: 0.16,
    unit: "1",
    source: "gamanSherrington1990",
    obtained: "from the source",
    uncertainty: 0.03,
    basis: "printed as 0.15 to 0.16 in 10 % solutions at room temperature",
  },
  glassTransitionDry: {
    value: 101,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 4,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 6.56,
    unit: "1",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of calorimetric figures",
  },
  maxFreezeTemperature: {
    value: -30,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 2,
    basis: "spread of calorimetric figures",
  },
  maxFreezeSolids: {
    value: 0.813,
    unit: "mass fraction",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.02,
    basis: "spread of calorimetric figures",
  },
  solubility20: {
    value: 19,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 1,
    basis: "equilibrium of both anomers, anhydrous basis",
  },
  eutecticTemperature: {
    value: -0.65,
    unit: "°C",
    source: "nickerson1974",
    obtained: "from memory",
    uncertainty: 0.05,
    basis: "spread of printed figures",
  },
});
