import type { WorkbookCell } from "../../../src/workbook/model";
import type { MarkedBook } from "../marks";
import type { Restatement } from "./restatement";

/** Cells that hold names of ingredients: those are looked up as they are typed. */
function namePlaces({ recipes, solutions, ownLines }: MarkedBook): ReadonlySet<string> {
  const spots = [
    ...[...recipes, ...solutions].flatMap(({ names }) => names),
    ...ownLines.flatMap((line) => Object.values(line)),
  ];
  return new Set(spots.map(({ sheet, row, column }) => `${sheet}!${row},${column}`));
}

/** Spells every word of a book in another way but the names of ingredients. */
const spelledBy = (name: string, spell: (text: string) => string): Restatement => ({
  name,
  restate: ({ workbook, recalculated }, marked) => {
    const names = namePlaces(marked);
    const sheets = workbook.sheets.map((sheet) => ({
      ...sheet,
      cellAt: (row: number, column: number): WorkbookCell | undefined => {
        const cell = sheet.cellAt(row, column);
        const isName = names.has(`${sheet.name}!${row},${column}`);
        if (typeof cell?.value !== "string" || cell.formula !== undefined || isName) return cell;
        return cell.value === "" ? cell : { ...cell, value: spell(cell.value) };
      },
    }));
    return { workbook: { ...workbook, sheets }, recalculated };
  },
});

/** A label with a colon, or without where it had one. */
const withColon = (text: string): string =>
  /[.!?;,)°%€$]$|\d$/u.test(text) ? text : text.endsWith(":") ? text.slice(0, -1) : `${text}:`;

/** The same words as other people type them. */
export const spelled: readonly Restatement[] = [
  spelledBy("in capitals", (text) => text.replaceAll(/\p{L}{4,}/gu, (word) => word.toUpperCase())),
  spelledBy("in two lines", (text) => text.replaceAll(" (", "\n(")),
  spelledBy("with spaces that do not break", (text) => text.replaceAll(" ", "\u00a0")),
  spelledBy("with a space behind", (text) => `${text} `),
  spelledBy("with colons", withColon),
];
