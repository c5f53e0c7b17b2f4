import { defineSolute } from "../solute";
import { mannitolFit } from "./curves/mannitol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const mannitol = defineSolute({
  name: "mannitol",
  aliases: { en: ["D-mannitol", "manna sugar"], de: ["Mannit"] },
  formula: "C6H14O6",
  cas: "69-65-8",
  kind: "polyol",
  food: true,
  molarMass: molarMassOf("C6H14O6"),
  vantHoff: particles(1),
  ...mannitolFit,
  sweetness: {
    value: 0.5,
    unit: "1",
    source: "goffHartel2013",
    obtained: "from memory",
    uncertainty: 0.08,
    basis: "spread of printed figures, 5 to 10 % solutions near room temperature",
  },
  maxFreezeTemperature: {
    value: -33,
    unit: "°C",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 6,
    basis: "of the glass former; crystallises on slow cooling",
  },
  maxFreezeSolids: {
    value: 0.8,
    unit: "mass fraction",
    source: "roos1993",
    obtained: "from memory",
    uncertainty: 0.05,
    basis: "of the glass former; crystallises on slow cooling",
  },
  solubility20: {
    value: 18,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 1,
    basis: "spread of printed figures",
  },
  eutecticTemperature: {
    value: -1.5,
    unit: "°C",
    source: "cavatur2002",
    obtained: "from memory",
    uncertainty: 0.2,
    basis: "spread of printed figures",
  },
});
