import { defineIngredient, type Ingredient } from "../ingredient";

/** Drinks from plants. */
export const plantDrinks: readonly Ingredient[] = [
  defineIngredient({
    name: "coconut milk",
    group: "plant drinks",
    aliases: { en: ["canned coconut milk", "coconut milk, canned"], de: ["Kokosmilch"] },
    composition: {
      water: 72.88,
      fat: 21.33,
      protein: 2.02,
      solutes: { sucrose: 2.81, "sodium chloride": 0.362 },
      ash: 0.6,
    },
    spread: { water: 1.5, fat: 1.1, sucrose: 0.34, "sodium chloride": 0.054 },
    spreadBasis: "between makers and harvests: fat ± 5 %, sugars ± 12 % relative (common practice)",
    source: "usdaSr26",
    sourceRecord: "NDB 12118",
    obtained: "computed here",
    allergens: [],
    cautions: [],
    gramsPerMl: { value: 0.955, relativeSpread: 0.02 },
    measuresSource: "usdaSr26",
    note: "The source names no sugars: its carbohydrate is taken as sucrose. Coconut is no tree nut in EU law; the US agency took it off its list of tree nuts in 2025.",
  }),
  defineIngredient({
    name: "soy drink, sweetened",
    group: "plant drinks",
    aliases: {
      en: ["soy milk", "soymilk", "soya drink"],
      de: ["Sojadrink, gesüßt", "Sojamilch", "Sojadrink"],
    },
    composition: {
      water: 88.05,
      fat: 1.75,
      protein: 3.27,
      solutes: { sucrose: 3.99, "sodium chloride": 0.306 },
      ash: 0.34,
      inert: 2.29,
    },
    spread: { water: 1.8, fat: 0.088, sucrose: 0.48, "sodium chloride": 0.046 },
    spreadBasis: "between makers and harvests: fat ± 5 %, sugars ± 12 % relative (common practice)",
    source: "usdaSr26",
    sourceRecord: "NDB 16120",
    obtained: "computed here",
    allergens: ["soy"],
    cautions: [],
    gramsPerMl: { value: 1.03, relativeSpread: 0.01 },
    measuresSource: "usdaSr26",
    note: "Sugars taken as sucrose.",
  }),
];
