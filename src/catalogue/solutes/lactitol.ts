import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const lactitol = defineSolute({
  name: "lactitol",
  aliases: { en: [], de: ["Lactit"] },
  formula: "C12H24O11",
  cas: "585-86-4",
  kind: "polyol",
  food: true,
  molarMass: molarMassOf("C12H24O11"),
  vantHoff: particles(1),
  curve: { form: "hydration", sites: 11, constantFreezing: 1.05, constant25C: 0.98 },
  curveRecord: {
    source: ["rimeline"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.02,
    basis: "No freezing data: mean of the disaccharides",
  },
  sweetness: {
    value: 0.35,
    unit: "1",
    source: "gamanSherrington1990",
    obtained: "from the source",
    uncertainty: 0.05,
    basis: "printed as 0.3 to 0.4 in 10 % solutions at room temperature",
  },
  maxFreezeTemperature: {
    value: -35,
    unit: "°C",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 5,
    basis: "taken as the disaccharides",
  },
  maxFreezeSolids: {
    value: 0.82,
    unit: "mass fraction",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 0.03,
    basis: "taken as the disaccharides",
  },
  solubility20: {
    value: 122,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 10,
    basis: "spread of printed figures",
  },
});
