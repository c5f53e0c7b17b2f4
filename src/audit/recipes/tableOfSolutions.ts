import { componentPer100 } from "../answers/answers";
import { pureSolute } from "../solutions/pureSolute";
import { amountOf } from "./amounts/amountOf";
import { gramsPer, isMass, massIn, type AmountUnit } from "./amounts/unit";
import { textAt } from "./cells";
import { formKind } from "./forms/formLabels";
import { withoutNet } from "./headings/withoutNet";
import type { Recipe, RecipeBlock, RecipeName } from "./recipeBlock";

/** "Flask + water": the vessel is weighed with it. */
const WITH_VESSEL = /\+/;

/** "Crushed ice (g)": in a cold bath the water is ice. */
const ICE =
  /^((crushed|chopped|cracked|shaved|broken|(zer|ge)sto(ß|ss)enes|gehacktes|gecrushtes) )?(ice|eis)([ -]?(cubes|würfel))?( used| taken|menge)?\W*(in )?(k?g)?\W*$/i;

const isWaterOrIce = (header: string): boolean =>
  formKind(withoutNet(header)) === "water" || ICE.test(header);

/** What a table of solutions weighs in: a column of water and one of what is dissolved in it. */
interface Weighed {
  readonly water: number;
  readonly recipe: Recipe;
}

/** The column of water beside the solutes, of several the one that was typed: then every row is a solution of its own. */
export function weighedColumns(block: RecipeBlock): Weighed | null {
  const { sheet, headerRow, roles, recipes, names } = block;
  const columns = [...roles.keys()].filter((column) => {
    const header = textAt(sheet, headerRow ?? -1, column);
    return isWaterOrIce(header) && !WITH_VESSEL.test(header);
  });
  const recipe = recipes.find(({ line }) => !columns.includes(line));
  const isTyped = (column: number) =>
    names.every(({ row }) => sheet.cellAt(row, column)?.formula === undefined);
  const water = columns.find(isTyped) ?? columns[0];
  return water === undefined || recipe === undefined ? null : { water, recipe };
}

/** The unit in a header, or in a row of units below it. */
export function unitOfColumn({ sheet, headerRow }: RecipeBlock, column: number): AmountUnit | null {
  const row = headerRow ?? -1;
  return massIn(textAt(sheet, row, column)) ?? massIn(textAt(sheet, row + 1, column));
}

/** Crystals hold some water; what they are dissolved in is more than so many times that. */
const MORE = 2;

/** "=G5-F5": what was weighed less its vessel is as good as typed. */
const BY_DIFFERENCE = /^=?\s*\$?[A-Z]{1,3}\$?\d+\s*-\s*\$?[A-Z]{1,3}\$?\d+\s*$/i;

/** Whether a pure solute stands beside water, typed or weighed by difference, that it does not bring along. */
function isDissolved(block: RecipeBlock, recipe: Recipe, name: RecipeName, column: number) {
  const { sheet, ownIngredients } = block;
  if (pureSolute(name.item, ownIngredients) === null) return false;
  const cell = sheet.cellAt(name.row, column);
  const unit = unitOfColumn(block, column);
  if (typeof cell?.value !== "number") return false;
  if (cell.formula !== undefined && !BY_DIFFERENCE.test(cell.formula)) return false;
  const grams = cell.value * (unit !== null && isMass(unit) ? gramsPer(unit) : 1);
  const held = componentPer100(name.item, "water", ownIngredients) ?? 0;
  const own = ((amountOf(block, recipe, name).grams ?? 0) * held) / 100;
  return grams > 0 && grams > MORE * own;
}

/** Whether the rows of a list are solutions, each with its water beside it, though no column works with moles. */
export function isTableOfSolutions(block: RecipeBlock): boolean {
  const weighed = weighedColumns(block);
  if (weighed === null) return false;
  const { water, recipe } = weighed;
  const dissolved = block.names.filter((name) => isDissolved(block, recipe, name, water));
  return dissolved.length > 0 && 2 * dissolved.length >= block.names.length;
}
