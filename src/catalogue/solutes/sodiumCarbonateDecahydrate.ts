import { hydrateOf } from "../hydrateOf";
import { sodiumCarbonate } from "./sodiumCarbonate";

export const sodiumCarbonateDecahydrate = hydrateOf(sodiumCarbonate, 10, {
  name: "sodium carbonate decahydrate",
  cas: "6132-02-1",
  aliases: {
    en: ["washing soda", "washing soda crystals"],
    de: ["Kristallsoda", "Natriumcarbonat-Decahydrat"],
  },
});
