import type { WorkbookSheet } from "../../../workbook/model";
import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import type { Place } from "../recipeBlock";

/** Where a line of a list has what it says of each ingredient, in their order. */
type Line = readonly Place[];

/** A recipe told in so many amounts is a balance at most; more are a ledger. */
const MOST_LINES = 50;

/** How far apart two shares may be and still be the same. */
const SAME = 0.01;

function numberAt(sheet: WorkbookSheet, place: Place | undefined): number {
  const value = place === undefined ? 0 : sheet.cellAt(place.row, place.column)?.value;
  return typeof value === "number" ? value : 0;
}

/** Which of some lines a formula reads for the same ingredient. */
function linesRead(
  sheet: WorkbookSheet,
  place: Place,
  at: number,
  lines: readonly Line[],
): readonly Line[] {
  const ranges = rangesReadHere(sheet, place);
  return lines.filter((line) => {
    const other = line[at];
    if (other === undefined || other === place) return false;
    return ranges.some((range) => contains(range, other.row, other.column));
  });
}

/** Whether most lines have the same share, as those of a smaller batch or of another version have. */
function areAlike(shares: readonly number[]): boolean {
  const isSame = (one: number, other: number) =>
    Math.abs(one - other) <= SAME * Math.max(one, other);
  return shares.some(
    (one) => one > 0 && shares.filter((other) => isSame(one, other)).length * 2 > shares.length,
  );
}

/** What is known of a table when its lines are looked at. */
interface Table {
  readonly sheet: WorkbookSheet;
  readonly lines: readonly Line[];
  /** Lines that are known to be contents. */
  readonly contents: readonly Line[];
}

/**
 * Whether one line says how much of each amount of another is water, fat or sugar: a part of it, each another one, worked
 * out of that amount and of nothing else but other contents.
 */
function isContentOf({ sheet, lines, contents }: Table, one: Line, base: Line): boolean {
  const parts = one
    .map((place, at) => ({ place, at, whole: numberAt(sheet, base[at]) }))
    .filter(({ whole }) => whole > 0);
  const shares = parts.map(({ place, whole }) => numberAt(sheet, place) / whole);
  const filled = parts.filter(({ place }) => numberAt(sheet, place) !== 0);
  const isWorkedOut = (place: Place, at: number) => {
    const read = linesRead(sheet, place, at, lines);
    return read.includes(base) && read.every((line) => line === base || contents.includes(line));
  };
  return (
    filled.length > 0 &&
    shares.every((share) => share >= 0 && share <= 1 + SAME) &&
    Math.min(...shares) < 1 / 2 &&
    !areAlike(shares) &&
    filled.every(({ place, at }) => isWorkedOut(place, at))
  );
}

/** Whether a line puts contents together again, amount by amount; "200 g" is no number that does. */
const addsContents = ({ sheet, lines, contents }: Table, one: Line): boolean =>
  one.some((place) => numberAt(sheet, place) !== 0) &&
  one.every((place, at) => {
    const read = linesRead(sheet, place, at, lines);
    const isOfContents = read.length >= 2 && read.every((line) => contents.includes(line));
    return numberAt(sheet, place) === 0 || isOfContents;
  });

/**
 * Which of so many lines of a balance say by their formulas what each amount of another line holds of water, fat, sugars
 * or solids, or put those together again. Of a ledger no line is asked for.
 */
export function contentsByFormula(
  sheet: WorkbookSheet,
  count: number,
  lineAt: (at: number) => Line,
): ReadonlySet<number> {
  if (count < 2 || count > MOST_LINES) return new Set();
  const lines = Array.from({ length: count }, (_, at) => lineAt(at));
  const among = (contents: readonly Line[]) =>
    lines.filter((one) =>
      lines.some((base) => base !== one && isContentOf({ sheet, lines, contents }, one, base)),
    );
  const contents = among(among([]));
  const others = lines.filter((one) => !contents.includes(one));
  const added = others.filter((one) => addsContents({ sheet, lines, contents }, one));
  return new Set([...contents, ...added].map((line) => lines.indexOf(line)));
}
