import { findItem } from "../../../src/catalogue/findItem";
import { normalName } from "../../../src/catalogue/normalName";
import type { WorkbookCell } from "../../../src/workbook/model";
import type { Spot } from "../book";
import type { MarkedBook } from "../marks";
import type { Restatement } from "./restatement";

type IsName = (spot: Spot, text: string) => boolean;

const placeOf = ({ sheet, row, column }: Spot): string => `${sheet}!${row},${column}`;

/** Cells that hold names of ingredients: those are looked up as they are typed. */
const nameSpots = ({ recipes, solutions, ownLines }: MarkedBook): readonly Spot[] => [
  ...[...recipes, ...solutions].flatMap(({ names }) => names),
  ...ownLines.flatMap((line) => Object.values(line)),
];

/** Names in the lists of a book that a mistake was put into. */
function inLists(marked: MarkedBook): IsName {
  const places = new Set(nameSpots(marked).map(placeOf));
  return (spot) => places.has(placeOf(spot));
}

/** Names wherever they stand: a blank that is not seen is told of any, since a look-up trips over it. */
function anywhere(marked: MarkedBook, textAt: (spot: Spot) => string): IsName {
  const isMarked = inLists(marked);
  const names = new Set(nameSpots(marked).map((spot) => normalName(textAt(spot))));
  return (spot, text) =>
    isMarked(spot, text) || names.has(normalName(text)) || findItem(text).kind !== "unknown";
}

/** Spells every word of a book in another way but the names of ingredients. */
const spelledBy = (
  name: string,
  spell: (text: string) => string,
  namesOf: typeof anywhere = inLists,
): Restatement => ({
  name,
  restate: ({ workbook, recalculated }, marked) => {
    const isName = namesOf(marked, ({ sheet, row, column }) => {
      const value = workbook.sheets.find(({ name }) => name === sheet)?.cellAt(row, column)?.value;
      return typeof value === "string" ? value : "";
    });
    const sheets = workbook.sheets.map((sheet) => ({
      ...sheet,
      cellAt: (row: number, column: number): WorkbookCell | undefined => {
        const cell = sheet.cellAt(row, column);
        if (typeof cell?.value !== "string" || cell.formula !== undefined) return cell;
        const spot = { sheet: sheet.name, row, column };
        if (cell.value === "" || isName(spot, cell.value)) return cell;
        return { ...cell, value: spell(cell.value) };
      },
    }));
    return { workbook: { ...workbook, sheets }, recalculated };
  },
});

/** A label with a colon, or without where it had one; a number that is typed as text is no label. */
const withColon = (text: string): string =>
  /^\d|[.!?;,)°%€$]$|\d$/u.test(text) ? text : text.endsWith(":") ? text.slice(0, -1) : `${text}:`;

/** The same words as other people type them. */
export const spelled: readonly Restatement[] = [
  spelledBy("in capitals", (text) => text.replaceAll(/\p{L}{4,}/gu, (word) => word.toUpperCase())),
  spelledBy("in two lines", (text) => text.replaceAll(" (", "\n(")),
  spelledBy("with spaces that do not break", (text) => text.replaceAll(" ", "\u00a0"), anywhere),
  spelledBy("with a space behind", (text) => `${text} `, anywhere),
  spelledBy("with colons", withColon),
  spelledBy("with colons before the unit", (text) => text.replace(/ (?=\([^()]+\)$)/, ": ")),
  spelledBy("with a mark of a note", (text) => (/^\d|[.!?;]$/.test(text) ? text : `${text}*`)),
  spelledBy("in small letters", (text) =>
    text.replaceAll(/\p{L}{4,}/gu, (word) => word.toLowerCase()),
  ),
];
