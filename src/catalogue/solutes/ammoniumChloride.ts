import { defineSolute } from "../solute";
import { ammoniumChlorideFit } from "./curves/ammoniumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const ammoniumChloride = defineSolute({
  name: "ammonium chloride",
  aliases: { en: ["sal ammoniac", "E 510"], de: ["Salmiak", "Ammoniumchlorid", "Salmiaksalz"] },
  formula: "NH4Cl",
  cas: "12125-02-9",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("NH4Cl"),
  vantHoff: particles(2),
  ...ammoniumChlorideFit,
  eutecticTemperature: {
    value: -15.4,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.197,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.003,
    basis: "spread of printed figures",
  },
});
