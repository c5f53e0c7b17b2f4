import type { DefinedName, Workbook } from "../../../src/workbook/model";
import { reformulated } from "./reformulated";
import type { Restatement } from "./restatement";
import { replaceReferences, type WrittenReference } from "../../../src/workbook/replaceReferences";

const FIXED_CELL = /^\$([A-Z]+)\$(\d+)$/;

/** The name for a cell that formulas read by a fixed address. */
function nameFor(
  { sheets }: Workbook,
  home: string,
  { sheet, address }: WrittenReference,
): DefinedName | null {
  const [, letters, digits] = FIXED_CELL.exec(address) ?? [];
  const on = sheets.findIndex(({ name }) => name === (sheet ?? home));
  if (letters === undefined || on < 0) return null;
  const refersTo = `'${sheets[on]!.name.replaceAll("'", "''")}'!${address}`;
  return { name: `given_${on + 1}_${letters}_${digits}`, refersTo, sheet: null };
}

/** Every cell that formulas read by a fixed address has a name, and formulas use it. */
export const cellsByName: Restatement = {
  name: "cells by name",
  restate: ({ workbook, recalculated }) => {
    const names = new Map<string, DefinedName>();
    const named = reformulated(workbook, (formula, home) =>
      replaceReferences(formula, (reference) => {
        const name = nameFor(workbook, home.name, reference);
        if (name !== null) names.set(name.name, name);
        return name?.name ?? null;
      }),
    );
    for (const { cellAt, rowCount, columnCount } of named.sheets) {
      for (let row = 0; row < rowCount; row += 1) {
        for (let column = 0; column < columnCount; column += 1) cellAt(row, column);
      }
    }
    return { workbook: { ...named, names: [...workbook.names, ...names.values()] }, recalculated };
  },
};
