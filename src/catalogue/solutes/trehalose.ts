import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const trehalose = defineSolute({
  name: "trehalose",
  aliases: { en: ["anhydrous trehalose", "mycose"], de: ["Trehalose, wasserfrei"] },
  formula: "C12H22O11",
  cas: "99-20-7",
  kind: "sugar",
  food: true,
  molarMass: molarMassOf("C12H22O11"),
  vantHoff: particles(1),
  curve: { form: "hydration", sites: 11, constantFreezing: 1.06, constant25C: 0.985 },
  curveRecord: {
    source: ["rimeline"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.015,
    basis:
      "No freezing data in hand: mean of sucrose and maltose; the band is one unit of the hydration number",
  },
  sweetness: {
    value: 0.42,
    unit: "1",
    source: "goffHartel2013",
    obtained: "from memory",
    uncertainty: 0.04,
    basis: "spread of printed figures, 5 to 10 % solutions near room temperature",
  },
  glassTransitionDry: {
    value: 106,
    unit: "°C",
    source: "foodProperties2006",
    obtained: "from the source",
    uncertainty: 6,
    basis: "spread of calorimetric figures, 100 to 115",
  },
  gordonTaylor: {
    value: 6.54,
    unit: "1",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of calorimetric figures",
  },
  maxFreezeTemperature: {
    value: -29.5,
    unit: "°C",
    source: "belitz2004",
    obtained: "from the source",
    uncertainty: 2,
    basis: "end of melting of 20 % solutions; spread of calorimetric figures",
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
    value: 69,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 3,
    basis: "anhydrous basis; spread of printed figures",
  },
});
