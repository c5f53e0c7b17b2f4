import { defineIngredient, type Ingredient } from "../ingredient";

/** Flavourings. */
export const flavour: readonly Ingredient[] = [
  defineIngredient({
    name: "vanilla extract",
    group: "flavour",
    aliases: {
      en: ["pure vanilla extract", "vanilla extract 35 %"],
      de: ["Vanilleextrakt", "Vanille-Extrakt", "Vanilleextrakt 35 %", "flüssiger Vanilleextrakt"],
    },
    composition: {
      water: 52.57,
      fat: 0.06,
      protein: 0.06,
      solutes: { sucrose: 12.65, ethanol: 34.4, "sodium chloride": 0.244 },
      ash: 0.02,
    },
    spread: { ethanol: 1.7, water: 1.6, sucrose: 1.5 },
    spreadBasis: "between makers: strength ± 5 %, sugar ± 12 % relative (common practice)",
    source: "usdaSr26",
    sourceRecord: "NDB 02050",
    obtained: "computed here",
    allergens: [],
    cautions: ["alcohol"],
    gramsPerMl: { value: 0.879, relativeSpread: 0.02 },
    measuresSource: "usdaSr26",
    abvPercent: 35,
    note: "34.4 g of ethanol per 100 g.",
  }),
];
