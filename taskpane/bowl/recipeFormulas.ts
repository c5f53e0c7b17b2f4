import { NAMESPACE } from "../../src/worksheet/namespace";
import type { OwnRange } from "./ownIngredients";
import type { RecognisedRecipe } from "./recognised";

/** What a cell can be made to answer about the recipe. */
export type FormulaKey = "freezingPoint" | "iceOfWater" | "iceOfMix" | "sweetness" | "check";

export interface RecipeFormula {
  readonly key: FormulaKey;
  readonly formula: string;
}

const sheetRange = (sheet: string, address: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet)
    ? `${sheet}!${address}`
    : `'${sheet.replace(/'/g, "''")}'!${address}`;

/** Formulas that give the bowl's numbers in a cell; none when the amounts are not in grams or per cent. */
export function recipeFormulas(
  recipe: RecognisedRecipe,
  own: OwnRange | null,
  servingC: number,
  target: string | null,
): readonly RecipeFormula[] {
  if (recipe.unit !== "g" && recipe.unit !== "%") return [];
  const mix = [recipe.nameRange, recipe.amountRange].map((range) =>
    sheetRange(recipe.sheet, range),
  );
  const ownRange = own === null ? [] : [sheetRange(own.sheet, own.address)];
  const call = (name: string, ...more: readonly string[]) =>
    `=${NAMESPACE}.${name}(${[...mix, ...more, ...ownRange].join(",")})`;
  const formulas: RecipeFormula[] = [
    { key: "freezingPoint", formula: call("FREEZINGPOINT") },
    { key: "iceOfWater", formula: call("ICEFRACTION", String(servingC), '"water"') },
    { key: "iceOfMix", formula: call("ICEFRACTION", String(servingC), '"mix"') },
    { key: "sweetness", formula: call("SWEETNESS") },
  ];
  if (target !== null) {
    formulas.push({ key: "check", formula: call("CHECK", `"${target.replace(/"/g, '""')}"`) });
  }
  return formulas;
}
