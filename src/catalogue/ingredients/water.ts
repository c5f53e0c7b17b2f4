import { defineIngredient, type Ingredient } from "../ingredient";

/** Water and ice. */
export const water: readonly Ingredient[] = [
  defineIngredient({
    name: "water",
    group: "water",
    aliases: { en: ["tap water", "drinking water", "H2O"], de: ["Wasser", "Leitungswasser"] },
    composition: { water: 100 },
    spread: {},
    spreadBasis: "pure water",
    source: "rimeline",
    sourceRecord: "by definition",
    obtained: "computed here",
    allergens: [],
    cautions: [],
    gramsPerMl: { value: 0.998, relativeSpread: 0.005 },
    measuresSource: "kell1975",
  }),
  defineIngredient({
    name: "ice",
    group: "water",
    aliases: { en: ["crushed ice", "ice cubes"], de: ["Eis", "Eiswürfel", "Crushed Ice"] },
    composition: { water: 100 },
    spread: {},
    spreadBasis: "pure water",
    source: "rimeline",
    sourceRecord: "by definition",
    obtained: "computed here",
    allergens: [],
    cautions: [],
    gramsPerMl: { value: 0.55, relativeSpread: 0.15 },
    measuresSource: "commonPractice",
    note: "Counts as water: the answer is for the mix once it has reached its own temperature. Crushed and heaped; the spread covers cubes.",
  }),
];
