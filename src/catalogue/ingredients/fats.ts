import { defineIngredient, type Ingredient } from "../ingredient";

/** Fats. */
export const fats: readonly Ingredient[] = [
  defineIngredient({
    name: "coconut oil",
    group: "fats",
    aliases: {
      en: ["coconut fat", "hydrogenated coconut oil"],
      de: ["Kokosöl", "Kokosfett", "Kokosnussöl", "Kokosnussfett", "Kokosfett, gehärtet"],
    },
    composition: { water: 0, fat: 100 },
    spread: {},
    spreadBasis: "practically all fat",
    source: "usdaSr26",
    sourceRecord: "NDB 04047",
    obtained: "from the source",
    allergens: [],
    cautions: [],
    gramsPerMl: { value: 0.921, relativeSpread: 0.01 },
    measuresSource: "usdaSr26",
  }),
  defineIngredient({
    name: "palm kernel oil",
    group: "fats",
    aliases: {
      en: ["palm kernel fat", "PKO", "hydrogenated palm kernel oil"],
      de: ["Palmkernöl", "Palmkernfett", "Palmkernfett, gehärtet"],
    },
    composition: { water: 0, fat: 100 },
    spread: {},
    spreadBasis: "practically all fat",
    source: "usdaSr26",
    sourceRecord: "NDB 04513",
    obtained: "from the source",
    allergens: [],
    cautions: [],
    gramsPerMl: { value: 0.921, relativeSpread: 0.01 },
    measuresSource: "usdaSr26",
  }),
];
