import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "./cells";
import { goesOnBeyond } from "./goesOnBeyond";
import { formKind } from "./forms/formLabels";
import { explainedLetter } from "./headings/explainedLetter";
import { headerRole, type Role } from "./headings/headerRole";
import { withoutNet } from "./headings/withoutNet";
import { isRowOfUnits } from "./isRowOfUnits";
import { columnsBeside, isEmptyBeside, NEAR_LEFT, type Segment } from "./segments";
import { saysTolerance } from "./amounts/saysTolerance";
import { massIn, unitFromWord } from "./amounts/unit";

/**
 * The columns that belong to a list: to the right up to the first empty one after the amounts have begun, so
 * that another table beside it stays apart.
 */
export function columnsOfList(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
): readonly number[] {
  let columns: number[] = [];
  let hasNumbers = false;
  for (const column of columnsBeside(segment)) {
    const isRight = column > segment.column;
    if (isEmptyBeside(sheet, segment, items, column)) {
      if (!isRight) columns = columns.filter((far) => far >= segment.column - NEAR_LEFT);
      if (isRight && hasNumbers && !goesOnBeyond(sheet, segment, items, column + 1)) break;
      continue;
    }
    hasNumbers ||= isRight && items.some((row) => looksNumeric(sheet, row, column));
    columns.push(column);
  }
  return columns;
}

/** Whether a column holds units, whatever its header: "kg", "g", "g". */
const isOfUnits = (sheet: WorkbookSheet, items: readonly number[], column: number): boolean =>
  items.filter((row) => unitFromWord(textAt(sheet, row, column)) !== null).length * 2 >
  items.length;

/** Columns of units that are headed so, and else all that hold units: initials beside them may look like units, too. */
function unitColumns(
  sheet: WorkbookSheet,
  headerRow: number,
  items: readonly number[],
  columns: readonly number[],
): readonly number[] {
  const holding = columns.filter((column) => isOfUnits(sheet, items, column));
  if (holding.length < 2) return holding;
  const headings = holding.map((column) => textAt(sheet, headerRow, column));
  const isUnit = headings.map((heading) => headerRole(heading) === "unit");
  return isUnit.includes(true)
    ? holding.filter((_, at) => isUnit[at] === true || headings[at] === "")
    : holding;
}

/**
 * The column whose target is what to weigh in, where no other has amounts: "Target, g | Actual, g", to be filled in. No
 * aim of a mix is so many grams for each ingredient.
 */
function columnToWeigh(
  sheet: WorkbookSheet,
  headerRow: number,
  items: readonly number[],
  columns: readonly number[],
  hasUnits: boolean,
): number | undefined {
  const filled = columns.filter((column) => items.some((row) => looksNumeric(sheet, row, column)));
  const heading = (column: number) => textAt(sheet, headerRow, column);
  const ofRole = (role: Role) => filled.filter((column) => headerRole(heading(column)) === role);
  if (ofRole("amount").length > 0) return undefined;
  return ofRole("target").find((column) => hasUnits || massIn(heading(column)) !== null);
}

/** "m(solute) / g", "m_W in g": the letter that chemists write for a mass, of what, and its unit. */
const OF_MASS = /^m ?[(_[]/;
const isMassOf = (header: string, below: string): boolean =>
  OF_MASS.test(header.trim()) && (massIn(header) ?? unitFromWord(below)) !== null;

/** "Batch / g": a quantity divided by its unit, as headings of tables have it (ISO 80000-1). */
const QUOTIENT = /^(.+?) ?\/ ?(?:k?g|mg)$/;
const isQuotient = (header: string): boolean =>
  headerRole(QUOTIENT.exec(header.trim())?.[1] ?? "") === "amount";

/** "Salt, g" beside "which salt": so much of what the line names. */
const isMassOfNamed = (header: string, names: string): boolean =>
  massIn(header) !== null && formKind(header) === "solute" && formKind(names) === "solute";

/** "Per kg", "je Kilo": over numbers with their grams beside them it says of how much they are. */
const OF_A_KILO = /^(per|pro|je|auf)( 1| one| ein)? ?(kg|kilo(gram|gramm)?)\b/i;

/** "All in g", over the only numbers of a list: what they are in, not what comes of others. */
const ALL_IN = /^(all|alle|alles|everything),? in (k?g|grams?|gramm|kilos?|kilograms?|kilogramm)$/i;

/** What the headings beside a list are about, by column. */
export function rolesBeside(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
): Map<number, Role> {
  const roles = new Map<number, Role>();
  const { headerRow } = segment;
  if (headerRow === null) return roles;
  const columns = columnsOfList(sheet, segment, items);
  const ofUnits = new Set(unitColumns(sheet, headerRow, items, columns));
  const toWeigh = columnToWeigh(sheet, headerRow, items, columns, ofUnits.size > 0);
  const names = textAt(sheet, headerRow, segment.column);
  const hasUnits = isRowOfUnits(sheet, headerRow + 1, segment.column);
  const isNumeric = (at: number) => items.some((row) => looksNumeric(sheet, row, at));
  const isAllIn = (at: number) =>
    ALL_IN.test(textAt(sheet, headerRow, at)) &&
    columns.filter(isNumeric).every((each) => each === at);
  for (const column of columns) {
    const header = textAt(sheet, headerRow, column);
    // "Boat + solute": the vessel is weighed with it.
    const isGross = header.includes("+") && massIn(header) !== null;
    const below = hasUnits ? textAt(sheet, headerRow + 1, column) : "";
    const words = [withoutNet(header), explainedLetter(sheet, header) ?? "", below];
    const own = words.map(headerRole).find((each) => each !== null);
    const said = isGross || saysTolerance(header) ? "other" : own;
    const isOfLine = isMassOf(header, below) || isMassOfNamed(header, names);
    const isAmount = column === toWeigh || isOfLine || isQuotient(header) || isAllIn(column);
    const role = isAmount ? "amount" : said;
    // Another list of names begins: what stands beyond belongs to it.
    if (column > segment.column && role === "name") break;
    if (ofUnits.has(column)) roles.set(column, "unit");
    else if (OF_A_KILO.test(header) && ofUnits.has(column + 1)) roles.set(column, "amount");
    else if (header !== "") roles.set(column, role ?? "other");
  }
  return roles;
}
