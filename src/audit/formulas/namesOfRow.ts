import type { WorkbookSheet } from "../../workbook/model";
import { unitFromWord } from "../recipes/amounts/unit";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** A name, and where it stands. */
export interface NameInRow extends Place {
  readonly text: string;
}

/** The words left of a cell in its row, the nearest first; a unit is no name. */
export function namesLeftOf(sheet: WorkbookSheet, { row, column }: Place): NameInRow[] {
  const names: NameInRow[] = [];
  for (let at = column - 1; at >= 0; at -= 1) {
    const text = textAt(sheet, row, at);
    if (text !== "" && unitFromWord(text) === null) names.push({ row, column: at, text });
  }
  return names;
}

/** A name stands at most so far right of its number. */
const REACH_RIGHT = 3;

/** The nearest words right of a cell in its row. */
function nameRightOf(sheet: WorkbookSheet, { row, column }: Place): NameInRow[] {
  for (let at = column + 1; at <= column + REACH_RIGHT; at += 1) {
    const text = textAt(sheet, row, at);
    if (text !== "" && unitFromWord(text) === null) return [{ row, column: at, text }];
  }
  return [];
}

/**
 * What a cell that another row reads is about: the nearest words left of it, on another sheet its row's first, too;
 * where none stand there, those right of it: "3.50 | sugar".
 */
export function namesOfRead(sheet: WorkbookSheet, place: Place, home: WorkbookSheet): NameInRow[] {
  const names = namesLeftOf(sheet, place);
  if (names.length === 0) return nameRightOf(sheet, place);
  return [...names.slice(0, 1), ...(sheet === home ? [] : names.slice(1).slice(-1))];
}

/** Whether two names stand one below the other: what both rows say does not tell one from the other. */
const isNextRow = (one: Place, other: Place): boolean =>
  one.column === other.column && Math.abs(one.row - other.row) <= 1;

/** Whether what a cell reads has the name that stands in the cell's own row, too, and not just that very one or the next. */
export function isOfOwnName(
  home: WorkbookSheet,
  place: Place,
  read: Place & { readonly sheet: WorkbookSheet },
): boolean {
  const names = namesOfRead(read.sheet, read, home);
  return namesLeftOf(home, place).some((own) =>
    names.some((name) => name.text === own.text && (read.sheet !== home || !isNextRow(name, own))),
  );
}
