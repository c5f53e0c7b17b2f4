import { defineSolute } from "../solute";
import { glycerolFit } from "./curves/glycerol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const glycerol = defineSolute({
  name: "glycerol",
  aliases: {
    en: [
      "glycerin",
      "glycerine",
      "vegetable glycerin",
      "propane-1,2,3-triol",
      "1,2,3-propanetriol",
    ],
    de: ["Glyzerin", "Glycerin", "pflanzliches Glycerin"],
  },
  formula: "C3H8O3",
  cas: "56-81-5",
  kind: "polyol",
  food: true,
  molarMass: molarMassOf("C3H8O3"),
  vantHoff: particles(1),
  ...glycerolFit,
  sweetness: {
    value: 0.6,
    unit: "1",
    source: "goffHartel2013",
    obtained: "from memory",
    uncertainty: 0.08,
    basis: "spread of printed figures, 5 to 10 % solutions near room temperature",
  },
  glassTransitionDry: {
    value: -83,
    unit: "°C",
    source: "angell1988",
    obtained: "from memory",
    uncertainty: 2,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 1.7,
    unit: "1",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 0.4,
    basis: "Simha–Boyer rule from the densities and glass transitions",
  },
  maxFreezeTemperature: {
    value: -65,
    unit: "°C",
    source: "belitz2004",
    obtained: "from the source",
    uncertainty: 5,
    basis: "end of melting of a 20 % solution; C_g′ from 0.85 g water per g",
  },
  maxFreezeSolids: {
    value: 0.54,
    unit: "mass fraction",
    source: "belitz2004",
    obtained: "from the source",
    uncertainty: 0.05,
    basis: "end of melting of a 20 % solution; C_g′ from 0.85 g water per g",
  },
  eutecticTemperature: {
    value: -46.5,
    unit: "°C",
    source: "lane1925",
    obtained: "from memory",
    uncertainty: 0.5,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.667,
    unit: "mass fraction",
    source: "lane1925",
    obtained: "from memory",
    uncertainty: 0.005,
    basis: "spread of printed figures",
  },
});
