import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const erythritol = defineSolute({
  name: "erythritol",
  aliases: { en: ["meso-erythritol"], de: ["Erythrit"] },
  formula: "C4H10O4",
  cas: "149-32-6",
  kind: "polyol",
  food: true,
  molarMass: molarMassOf("C4H10O4"),
  vantHoff: particles(1),
  curve: { form: "hydration", sites: 4, constantFreezing: 0.9, constant25C: 0.73 },
  curveRecord: {
    source: ["chirife2010"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.02,
    basis: "Norrish constant at 25 °C (1.34), moved to freezing by as much as mannitol moves",
  },
  sweetness: {
    value: 0.65,
    unit: "1",
    source: "goffHartel2013",
    obtained: "from memory",
    uncertainty: 0.06,
    basis: "spread of printed figures, 5 to 10 % solutions near room temperature",
  },
  maxFreezeTemperature: {
    value: -60,
    unit: "°C",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 10,
    basis: "estimate between xylitol and glycerol; crystallises on slow cooling",
  },
  maxFreezeSolids: {
    value: 0.75,
    unit: "mass fraction",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 0.06,
    basis: "estimate between xylitol and glycerol; crystallises on slow cooling",
  },
  solubility20: {
    value: 55,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 5,
    basis: "spread of printed figures",
  },
});
