import { defineSolute } from "../solute";
import { potassiumNitrateFit } from "./curves/potassiumNitrate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumNitrate = defineSolute({
  name: "potassium nitrate",
  aliases: {
    en: ["saltpetre", "saltpeter", "E 252"],
    de: ["Salpeter", "Kaliumnitrat", "Kalisalpeter"],
  },
  formula: "KNO3",
  cas: "7757-79-1",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("KNO3"),
  vantHoff: particles(2),
  ...potassiumNitrateFit,
  eutecticTemperature: {
    value: -2.84,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.05,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.098,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.002,
    basis: "spread of printed figures",
  },
});
