import { cellName } from "../../workbook/address";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { isLedger } from "../recipes/isLedger";
import type { Place, Recipe } from "../recipes/recipeBlock";
import { isUnexplained } from "./isUnexplained";
import { statedParts } from "./statedParts";

/** Fewer answers may each be wrong by themselves. */
const LEAST_ANSWERS = 3;
/** So many of different recipes on one sheet. */
const LEAST_ON_SHEET = 4;

/** Recipes whose answers are all wrong, with what was found of them. */
export interface UnfitGroup {
  readonly recipes: readonly Recipe[];
  readonly findings: readonly Finding[];
}

/** A recipe with the cells of its answers. */
interface Answered {
  readonly recipe: Recipe;
  /** The sheet of the recipe. */
  readonly home: string;
  readonly cells: Set<string>;
}

const cellOf = (sheet: string, { row, column }: Place): string =>
  `${sheet}!${cellName(row, column)}`;

function answeredRecipes(context: AuditContext): readonly Answered[] {
  const found = new Map<Recipe, Answered>();
  const answers = [...context.results, ...statedParts(context)];
  for (const { block, recipe, sheet, row, column } of answers) {
    if (isLedger(block)) continue;
    const own = found.get(recipe) ?? { recipe, home: block.sheet.name, cells: new Set() };
    found.set(recipe, own);
    own.cells.add(cellOf(sheet.name, { row, column }));
  }
  return [...found.values()];
}

/**
 * The recipes whose answers are all wrong where there are several, and all recipes of a sheet where none has a right
 * one: then an amount is wrong or the lists were read wrongly, and not each answer by itself.
 */
export function unfitGroups(context: AuditContext, findings: readonly Finding[]): UnfitGroup[] {
  const unexplained = findings.filter(isUnexplained);
  if (unexplained.length < LEAST_ANSWERS) return [];
  const byCell = new Map(unexplained.map((one) => [`${one.sheet}!${one.cell}`, one]));
  const wrongOf = ({ cells }: Answered) => [...cells].flatMap((cell) => byCell.get(cell) ?? []);
  const isUnfit = (one: Answered) => wrongOf(one).length === one.cells.size;
  const groupOf = (some: readonly Answered[]): UnfitGroup => ({
    recipes: some.map(({ recipe }) => recipe),
    findings: some.flatMap(wrongOf),
  });
  const bySheet = new Map<string, Answered[]>();
  for (const one of answeredRecipes(context)) {
    const here = bySheet.get(one.home) ?? [];
    bySheet.set(one.home, here);
    here.push(one);
  }
  return [...bySheet.values()].flatMap((all) => {
    const count = all.reduce((sum, { cells }) => sum + cells.size, 0);
    if (all.length > 1 && count >= LEAST_ON_SHEET && all.every(isUnfit)) return [groupOf(all)];
    const unfit = all.filter((one) => one.cells.size >= LEAST_ANSWERS && isUnfit(one));
    return unfit.map((one) => groupOf([one]));
  });
}
