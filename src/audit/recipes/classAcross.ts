import { referencesOf } from "../../workbook/references";
import { isOfParticles } from "./amounts/ofParticles";
import { isMass, unitFromWord } from "./amounts/unit";
import { waterByFormula } from "./amounts/waterByFormula";
import { waterLabel } from "./amounts/waterLabel";
import { looksNumeric, textAt } from "./cells";
import { formKind } from "./forms/formLabels";
import { rolesOfRows } from "./forms/rolesOfRows";
import { hasWater } from "./classSheet";
import type { FinderContext } from "./finderContext";
import type { Role } from "./headings/headerRole";
import { chemicalName } from "./names/chemicalName";
import { titleOfRow } from "./names/titleOfRow";
import type { DetailPlace, Recipe, RecipeBlock, RecipeName } from "./recipeBlock";

const SAID = new Set<Role | null>(["molar mass", "particles", "moles", "molality"]);
const OF_SOLUTION = new Set<Role | null>(["depression", "freezing point"]);

/** A table with more rows below its names is a ledger of recipes. */
const MOST_ROWS = 60;

/** A row that says something of each substance. */
interface ClassRow {
  readonly role: Role | null;
  readonly row: number;
  readonly label: string;
}

function rowsBelow(context: FinderContext, block: RecipeBlock): readonly ClassRow[] {
  const { sheet, range, names, headerRow } = block;
  const first = (headerRow ?? range.top) + 1;
  const rows = Array.from({ length: range.bottom - first + 1 }, (_, at) => ({
    row: first + at,
    label: titleOfRow(sheet, first + at, range.left, names[0]?.column ?? 0),
  }));
  const columns = names.map(({ column }) => column);
  const roles = rolesOfRows(context, rows, columns);
  return rows.map((one, at) => ({ ...one, role: roles[at] ?? null }));
}

const isFormula = ({ sheet, names }: RecipeBlock, { line }: Recipe): boolean =>
  names.every(({ column }) => sheet.cellAt(line, column)?.formula !== undefined);

/** The masses alone, where molar masses stand below: what is worked out of them, and particles, are no recipes. */
function massesIn(block: RecipeBlock, rows: readonly ClassRow[]): readonly Recipe[] {
  const { recipes } = block;
  if (!rows.some(({ role }) => role === "molar mass")) return recipes;
  const isSaid = ({ line }: Recipe) => rows.some(({ row, role }) => row === line && SAID.has(role));
  return recipes.filter((recipe) => !isSaid(recipe) && !isFormula(block, recipe));
}

/** Whether a row is worked out of another one: moles of particles of those of formula units. */
const goesOnFrom = (
  { sheet, names }: RecipeBlock,
  { row }: ClassRow,
  other: ClassRow | undefined,
): boolean =>
  names.some(({ column }) =>
    referencesOf(sheet.cellAt(row, column)?.formula ?? "").some(
      ({ range }) => range.top === other?.row && range.left === column,
    ),
  );

/** The rows that say what a class works with, none where each column is a solution; of several of a kind that of particles. */
function classRows(block: RecipeBlock, rows: readonly ClassRow[]): ReadonlyMap<Role, ClassRow> {
  const isOfEach = rows.some(
    ({ role, label }) => OF_SOLUTION.has(role) || formKind(label) === "water",
  );
  const found = new Map<Role, ClassRow>();
  for (const one of isOfEach ? [] : rows) {
    const { label } = one;
    const isOfMoles = one.role === "particles" && goesOnFrom(block, one, found.get("moles"));
    const role = isOfMoles ? "moles" : one.role;
    if (role === null || !SAID.has(role)) continue;
    if (!found.has(role) || isOfParticles(label)) found.set(role, one);
  }
  return found;
}

/** A recipe in the unit that stands behind its row of amounts, where nothing else says one. */
function withUnitBehind({ sheet, names }: RecipeBlock, recipe: Recipe): Recipe {
  const last = Math.max(...names.map(({ column }) => column));
  const unit = unitFromWord(textAt(sheet, recipe.line, last + 1));
  const isSaid = recipe.unitAssumed && unit !== null && isMass(unit);
  return isSaid ? { ...recipe, unit, unitAssumed: false } : recipe;
}

/**
 * Substances of a class that stand beside each other, with their masses, molar masses and particles in rows below, and
 * the water they are dissolved in, which stands apart.
 */
export function classAcross(context: FinderContext, block: RecipeBlock): RecipeBlock {
  const { sheet } = block;
  const below = block.range.bottom - block.range.top <= MOST_ROWS ? rowsBelow(context, block) : [];
  const recipes = massesIn(block, below);
  const rows = recipes.length === 1 ? [...classRows(block, below)] : [];
  if (rows.length === 0) return block;
  const names = block.names.map((name): RecipeName => {
    const said = rows.filter(([, { row }]) => looksNumeric(sheet, row, name.column));
    const details = said.map(([role, { row, label }]): [Role, DetailPlace] => [
      role,
      { row, column: name.column, label },
    ]);
    const item = chemicalName(name.item, context.check) ?? name.item;
    return { ...name, item, details: new Map(details) };
  });
  const solved = { ...block, names, recipes: recipes.map((one) => withUnitBehind(block, one)) };
  const water = hasWater(solved) ? null : (waterByFormula(solved) ?? waterLabel(sheet, solved));
  return water === null ? solved : { ...solved, names: [...names, water] };
}
