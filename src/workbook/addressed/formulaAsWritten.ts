import { columnName } from "../address";
import type { WorkbookSheet } from "../model";
import { replaceReferences } from "../replaceReferences";
import { localKey, type AddressBook } from "./addressBook";
import { addressOn, tableAt, type ByAddress } from "./formulaByAddress";
import { addressInTable } from "./tableReference";

/** A column's name as brackets take it. */
const escaped = (column: string): string => column.replaceAll(/[[\]#'@]/g, "'$&");

/** By address, the word that the formulas of one sheet can use instead; a table's column goes before a name. */
function wordsOn(home: WorkbookSheet, { names, tables }: AddressBook): ReadonlyMap<string, string> {
  const words = new Map<string, string>();
  for (const [key, { name, sheet, target }] of names) {
    const address = addressOn(home, sheet, target);
    const isKnownHere = !key.includes("!") || key === localKey(home.name, name);
    if (isKnownHere && !words.has(address)) words.set(address, name);
  }
  for (const { sheet, target } of tables.values()) {
    for (const column of target.columns) {
      const brackets = `[${escaped(column)}]`;
      const address = addressInTable(target, brackets);
      if (address !== null) words.set(addressOn(home, sheet, address), `${target.name}${brackets}`);
    }
  }
  return words;
}

/** Puts names and table columns back where a formula by address reads exactly their cells. */
export function asWrittenOn(home: WorkbookSheet, book: AddressBook): ByAddress {
  const words = wordsOn(home, book);
  return (formula, row, column) => {
    const own = tableAt(home, row, column);
    const ownCells = new Map(
      own?.columns.map((name, at) => [
        `${columnName(own.range.left + at)}${row + 1}`,
        `${own.name}[@[${escaped(name)}]]`,
      ]),
    );
    return replaceReferences(
      formula,
      ({ written }) => words.get(written) ?? ownCells.get(written) ?? null,
    );
  };
}
