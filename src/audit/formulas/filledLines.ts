import { moveFormula } from "../../workbook/moveFormula";
import type { WorkbookSheet } from "../../workbook/model";
import type { Move } from "./movedAcross";
import { readsBefore } from "./readsBefore";
import { readsOnlyBlanks } from "./readsTheSame";
import { isNoFood } from "../recipes/names/isNoFood";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";

/** Cells in a column or a row. A hundred thousand of them are not held as objects. */
export interface Line {
  readonly length: number;
  readonly placeAt: (at: number) => Place;
  /** How a formula is filled along it; as a sheet does it where nothing is said. */
  readonly move?: Move;
}

/** Cells of one column (or row) of a recipe that were filled with one formula, but for some strangers. */
export interface FilledLine extends Line {
  readonly sheet: WorkbookSheet;
  /** The formula as it reads in the first place, its relative references moved along. */
  readonly pattern: string;
  /** Cells that hold a number or another formula. */
  readonly strangers: readonly Place[];
  /** What belongs into a place of a line whose formulas choose the rows that they read by their names. */
  readonly expectedAt?: (place: Place) => string | null;
}

/** A line counts as filled when so many cells, and this share of them, follow one pattern. */
const LEAST_CELLS = 3;
/** Of a formula that reads the same cells everywhere more: two alike are two alike, not a line that was filled. */
const LEAST_ALIKE = 5;
const LEAST_SHARE = 0.66;
const SAMPLES = 9;
/** Rows that say something of the ingredients of recipes in rows stand at most so far below them, in a table so long. */
const [MOST_BELOW, MOST_ROWS] = [3, 60];
/** In longer lines it is not looked for numbers beside blanks. */
const MOST_LOOKED_AT = 300;

/** The pattern at another place of the line. */
export function patternAt(
  line: Pick<FilledLine, "placeAt" | "pattern" | "move" | "expectedAt">,
  { row, column }: Place,
): string {
  const { placeAt, pattern, move = moveFormula } = line;
  const expected = line.expectedAt?.({ row, column });
  if (typeof expected === "string") return expected;
  const first = placeAt(0);
  return move(pattern, row - first.row, column - first.column);
}

const BROKEN = "#REF!";

/**
 * A place's formula as it would read in the first place; null where there is none, and where it would read above the
 * sheet: formulas that read up to different rows would look the same there.
 */
function atFirst(
  sheet: WorkbookSheet,
  { placeAt, move = moveFormula }: Line,
  { row, column }: Place,
): string | null {
  const first = placeAt(0);
  const formula = sheet.cellAt(row, column)?.formula;
  if (formula === undefined) return null;
  const moved = move(formula, first.row - row, first.column - column);
  return moved.includes(BROKEN) && !formula.includes(BROKEN) ? null : moved;
}

/** The formula that most of a few places along the line share. */
function commonest(sheet: WorkbookSheet, line: Line): string | null {
  const counts = new Map<string, number>();
  const step = Math.max(1, Math.floor(line.length / SAMPLES));
  for (let at = 0; at < line.length; at += step) {
    const pattern = atFirst(sheet, line, line.placeAt(at));
    if (pattern !== null) counts.set(pattern, (counts.get(pattern) ?? 0) + 1);
  }
  const [best] = [...counts].sort(([, one], [, other]) => other - one);
  return best !== undefined && best[1] >= 2 ? best[0] : null;
}

/** Whether a formula was filled along the line where there is nothing to read, too: a list of many recipes' names. */
function isFilledAtBlanks(
  sheet: WorkbookSheet,
  line: Omit<FilledLine, "sheet" | "strangers">,
  strangers: number,
): boolean {
  if (strangers === 0 || line.length > MOST_LOOKED_AT) return false;
  const places = Array.from({ length: line.length }, (_, at) => line.placeAt(at));
  const filled = places.filter(
    (place) =>
      atFirst(sheet, line, place) === line.pattern &&
      readsOnlyBlanks(sheet, patternAt(line, place)),
  );
  return filled.length >= 2 && filled.length > strangers;
}

/** Whether a formula gives a number though it reads nothing of its own line either: it adds what others multiply by. */
function makesOfNothing(sheet: WorkbookSheet, { row, column }: Place): boolean {
  const { formula, value } = sheet.cellAt(row, column) ?? {};
  const isNumber = typeof value === "number" && value !== 0;
  return formula !== undefined && isNumber && readsOnlyBlanks(sheet, formula);
}

/** The line if most of it follows one formula. */
export function filledLine(sheet: WorkbookSheet, line: Line): FilledLine | null {
  const pattern = line.length < LEAST_CELLS ? null : commonest(sheet, line);
  if (pattern === null) return null;
  const others: Place[] = [];
  const atBlanks: Place[] = [];
  let length = line.length;
  for (let at = 0; at < line.length; at += 1) {
    const place = line.placeAt(at);
    if (atFirst(sheet, line, place) === pattern) continue;
    // Where there is nothing for the formula to read, it is not missed.
    const isBlankLine = readsOnlyBlanks(sheet, patternAt({ ...line, pattern }, place));
    if (isBlankLine && !makesOfNothing(sheet, place)) {
      length -= 1;
      atBlanks.push(place);
    } else others.push(place);
    if (others.length > (1 - LEAST_SHARE) * line.length) return null;
  }
  const isMoving = patternAt({ ...line, pattern }, line.placeAt(1)) !== pattern;
  if (length < (isMoving ? LEAST_CELLS : LEAST_ALIKE) || others.length > (1 - LEAST_SHARE) * length)
    return null;
  const odd = isFilledAtBlanks(sheet, { ...line, pattern }, atBlanks.length) ? atBlanks : [];
  const first = line.placeAt(0);
  const begins = readsBefore(first, pattern);
  const strangers = [...others, ...odd].filter(({ row, column }) => {
    if (begins && row === first.row && column === first.column) return false;
    const cell = sheet.cellAt(row, column);
    return typeof cell?.value === "number" || cell?.formula !== undefined;
  });
  return { ...line, sheet, pattern, strangers };
}

/** The first rows of recipes in rows, and those below as far as formulas go on: shares of the same names. */
function rowsOfNames({ sheet, range, names, headerRow }: RecipeBlock): number[] {
  const isFilled = (row: number) =>
    names.some(({ column }) => sheet.cellAt(row, column)?.formula !== undefined);
  const first = (headerRow ?? range.top) + 1;
  const last = Math.min(range.bottom + MOST_BELOW, first + MOST_ROWS);
  const rows: number[] = [];
  for (let row = first; row <= last && (row <= range.bottom || isFilled(row)); row += 1) {
    if (isFilled(row)) rows.push(row);
  }
  return rows;
}

/** The lines of a block in which formulas may be filled: columns along the names or recipes, rows of totals. */
export function linesOf(block: RecipeBlock): Line[] {
  const { range, names, recipes, layout, totals } = block;
  // Packaging and labour cost what they cost, by the piece or the hour.
  const foods = names.filter(({ item, amountAt }) => !isNoFood(item) && amountAt === undefined);
  const rows = layout === "down" ? foods.map(({ row }) => row) : recipes.map(({ line }) => line);
  const columns = Array.from({ length: range.right - range.left + 2 }, (_, at) => range.left + at);
  const down = columns.map((column) => ({
    length: rows.length,
    placeAt: (at: number) => ({ row: rows[at] ?? 0, column }),
  }));
  const lines =
    layout === "down" ? recipes.map(({ line }) => line) : names.map(({ column }) => column);
  const across = (layout === "down" ? totals : rowsOfNames(block)).map((row) => ({
    length: lines.length,
    placeAt: (at: number) => ({ row, column: lines[at] ?? 0 }),
  }));
  return [...down, ...across];
}

const known = new WeakMap<RecipeBlock, readonly FilledLine[]>();

/** The lines of a recipe block that are filled with a formula; found once for all rules. */
export function filledLines(block: RecipeBlock): readonly FilledLine[] {
  const lines =
    known.get(block) ??
    linesOf(block)
      .map((line) => filledLine(block.sheet, line))
      .filter((line) => line !== null);
  known.set(block, lines);
  return lines;
}
