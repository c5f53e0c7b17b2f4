import { defineSolute } from "../solute";
import { ethanolFit } from "./curves/ethanol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const ethanol = defineSolute({
  name: "ethanol",
  aliases: {
    en: [
      "alcohol",
      "ethyl alcohol",
      "absolute ethanol",
      "absolute alcohol",
      "EtOH",
      "C2H5OH",
      "ethanol absolute",
      "absolute ethyl alcohol",
    ],
    de: [
      "Alkohol",
      "Äthanol",
      "Weingeist",
      "Ethylalkohol",
      "absoluter Alkohol",
      "absolutes Ethanol",
      "Ethanol absolut",
    ],
  },
  formula: "C2H6O",
  cas: "64-17-5",
  kind: "alcohol",
  food: true,
  molarMass: molarMassOf("C2H6O"),
  vantHoff: particles(1),
  ...ethanolFit,
  glassTransitionDry: {
    value: -176,
    unit: "°C",
    source: "angell1988",
    obtained: "from memory",
    uncertainty: 3,
    basis: "spread of calorimetric figures",
  },
  gordonTaylor: {
    value: 0.56,
    unit: "1",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 0.3,
    basis: "Simha–Boyer rule from the densities and glass transitions",
  },
  maxFreezeTemperature: {
    value: -118,
    unit: "°C",
    source: "takaizumi1997",
    obtained: "from memory",
    uncertainty: 15,
    basis: "glass transition of freeze-concentrated ethanol; hydrates form on slow cooling",
  },
  maxFreezeSolids: {
    value: 0.75,
    unit: "mass fraction",
    source: "takaizumi1997",
    obtained: "from memory",
    uncertainty: 0.08,
    basis: "glass transition of freeze-concentrated ethanol; hydrates form on slow cooling",
  },
  note: "Volatile: water activity and boiling point of a spirit are not answered by this curve.",
});
