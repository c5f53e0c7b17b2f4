import type { Ingredient } from "./ingredient";
import { ingredients } from "./ingredients";
import type { Solute } from "./solute";

/** What the cook and the eater ask of anything in a recipe, be it a solute or an ingredient. */
export type KitchenFacts = Pick<
  Ingredient,
  "allergens" | "allergensByMaker" | "cautions" | "gramsPerMl" | "gramsPerPiece" | "measuresSource"
>;

/** Solute → the ingredient as which it stands on the shelf. */
const soldAs: Readonly<Record<string, string>> = {
  sucrose: "refined sugar",
  glucose: "dextrose powder (anhydrous)",
  "glucose monohydrate": "dextrose powder (monohydrate)",
  fructose: "crystalline fructose",
  allulose: "allulose granules",
  lactose: "lactose powder",
  "lactose monohydrate": "lactose powder",
  maltose: "maltose powder",
  "maltose monohydrate": "maltose powder",
  trehalose: "trehalose powder",
  "trehalose dihydrate": "trehalose powder",
  sorbitol: "sorbitol powder",
  mannitol: "mannitol powder",
  xylitol: "xylitol granules",
  erythritol: "erythritol granules",
  maltitol: "maltitol powder",
  isomalt: "isomalt granules",
  lactitol: "lactitol powder",
  "lactitol monohydrate": "lactitol powder",
  glycerol: "glycerol, food grade",
  "propylene glycol": "propylene glycol, food grade",
  "sodium chloride": "fine salt",
  "citric acid": "citric acid powder",
  "citric acid monohydrate": "citric acid powder (monohydrate)",
  "trisodium citrate": "sodium citrate powder (dihydrate)",
  "trisodium citrate dihydrate": "sodium citrate powder (dihydrate)",
  "sodium bicarbonate": "baking soda powder",
};

/** Solutes that no ingredient of the shelf stands for. */
const ownFacts: Readonly<Record<string, KitchenFacts>> = {
  ethanol: {
    allergens: [],
    cautions: ["alcohol"],
    gramsPerMl: { value: 0.7893, relativeSpread: 0.001 },
    measuresSource: "crc102",
  },
  galactose: { allergens: ["milk"], cautions: [] },
  "milk salts": { allergens: ["milk"], cautions: [] },
};

const ingredientByName = new Map(ingredients.map((ingredient) => [ingredient.name, ingredient]));

/**
 * Allergens, cautions and household measures of a solute or an ingredient. A solute has those of the form in
 * which it is sold (lactose is of milk, xylitol is not for dogs); one that is not a food says so.
 */
export function kitchenFactsOf(item: Solute | Ingredient): KitchenFacts {
  if ("composition" in item) return item;
  const shelf = ingredientByName.get(soldAs[item.name] ?? "");
  const facts = shelf ?? ownFacts[item.name] ?? { allergens: [], cautions: [] };
  return item.food ? facts : { ...facts, cautions: [...facts.cautions, "not food"] };
}
