import { NAMESPACE } from "../../src/worksheet/namespace";
import type { Aim } from "../aims/aim";
import { checkFormula } from "../aims/aimArgument";
import type { OwnRange } from "./ownIngredients";
import type { RecognisedRecipe } from "./recognised";
import { sheetRange } from "./sheetRange";

/** What a cell can be made to answer about the recipe. */
export type FormulaKey = "freezingPoint" | "iceOfWater" | "iceOfMix" | "sweetness" | "check";

export interface RecipeFormula {
  readonly key: FormulaKey;
  readonly formula: string;
}

/** Formulas that give the bowl's numbers in a cell; none when the amounts are not in grams or per cent. */
export function recipeFormulas(
  recipe: RecognisedRecipe,
  own: OwnRange | null,
  servingC: number,
  target: Aim | null,
): readonly RecipeFormula[] {
  if (recipe.unit !== "g" && recipe.unit !== "%") return [];
  const mix = [recipe.nameRange, recipe.amountRange].map((range) =>
    sheetRange(recipe.sheet, range),
  );
  const ownRange = own === null ? [] : [sheetRange(own.sheet, own.address)];
  const call = (name: string, ...more: readonly string[]) =>
    `${NAMESPACE}.${name}(${[...mix, ...more, ...ownRange].join(",")})`;
  const formulas: RecipeFormula[] = [
    { key: "freezingPoint", formula: call("FREEZINGPOINT") },
    { key: "iceOfWater", formula: call("ICEFRACTION", String(servingC), '"water"') },
    { key: "iceOfMix", formula: call("ICEFRACTION", String(servingC), '"mix"') },
    { key: "sweetness", formula: call("SWEETNESS") },
  ];
  if (target !== null) {
    const check = checkFormula(target, (argument) => call("CHECK", argument));
    formulas.push({ key: "check", formula: check });
  }
  return formulas.map(({ key, formula }) => ({ key, formula: `=${formula}` }));
}
