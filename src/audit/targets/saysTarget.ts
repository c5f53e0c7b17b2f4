import { textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { headsTarget } from "./headsTarget";

/** Labels of titles and of other pages, whose words may be a target's name by chance. */
const OF_TITLE =
  /title|titel|\bname\b|recipe|rezept|\bsee\b|siehe|page|seite|sheet|blatt|file|datei|next|nächste|\bnot\b|nicht/i;
/** What a label of a target may be by its words: nothing known, or where and how cold it is kept. */
const UNSAID: ReadonlySet<Role | null> = new Set<Role | null>([
  null,
  ...(["other", "target", "temperature"] as const),
]);
const REACH = 3;

/** The words nearest to the left of a cell. */
function labelOf({ sheet }: RecipeBlock, { row, column }: Place): string {
  for (let at = column - 1; at >= Math.max(0, column - REACH); at -= 1) {
    const text = textAt(sheet, row, at);
    if (text !== "") return text;
  }
  return "";
}

const isUnsaid = (label: string): boolean =>
  label !== "" && UNSAID.has(headerRole(label)) && !OF_TITLE.test(label);

/** "Product: scooped at −13": what a list calls its items may be what it makes. */
const saysOf = (label: string): boolean =>
  isUnsaid(label) || (headerRole(label) === "name" && !OF_TITLE.test(label));

/** Whether the name of a target below or outside a list, or under a heading beside its lines, is said of its recipe. */
export function saysTarget(block: RecipeBlock, place: Place): boolean {
  const { sheet, range, headerRow, names } = block;
  const isOutside = place.column < range.left || place.column > range.right;
  const isLabelled = saysOf(labelOf(block, place));
  if (place.row > range.bottom || (isOutside && isLabelled)) return isLabelled;
  const isBeside = headerRow !== null && names.some(({ row }) => row === place.row);
  return isBeside && isUnsaid(textAt(sheet, headerRow, place.column));
}

/** The headed columns beside recipes in rows that may hold targets, those that say so first. */
export function columnsOfTargets({ sheet, range, headerRow, names }: RecipeBlock): number[] {
  const taken = new Set(names.map(({ column }) => column));
  const columns = Array.from(
    { length: range.right - range.left + 1 + 2 * REACH },
    (_, at) => range.left - REACH + at,
  ).filter((column) => !taken.has(column));
  const header = (column: number) => textAt(sheet, headerRow ?? -1, column);
  const says = columns.filter((column) => headsTarget(header(column)));
  return says.length > 0 ? says.slice(0, 1) : columns.filter((column) => isUnsaid(header(column)));
}
