import type { Workbook, WorkbookSheet, WorkbookTable } from "../model";

/** Where a name or a table stands. */
export interface Named<T> {
  /** As the workbook spells it. */
  readonly name: string;
  readonly sheet: WorkbookSheet;
  readonly target: T;
}

/** The words by which the formulas of a workbook can reach cells without an address, in lower case. */
export interface AddressBook {
  readonly tables: ReadonlyMap<string, Named<WorkbookTable>>;
  /** Names for a cell or a range of the workbook; those of one sheet as "sheet!name". */
  readonly names: ReadonlyMap<string, Named<string>>;
}

const CELLS =
  /^=?(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)(\$[A-Z]{1,3}\$\d{1,7}(?::\$[A-Z]{1,3}\$\d{1,7})?)$/iu;

const unquoted = (name: string): string =>
  name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;

/** The key of a name that only one sheet knows. */
export const localKey = (sheet: string, name: string): string => `${sheet}!${name}`.toLowerCase();

/** Lists a workbook's tables and the names that stand for fixed cells of its own. */
export function addressBook({ sheets, names }: Workbook): AddressBook {
  const sheetNamed = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const targets = names.flatMap(({ name, refersTo, sheet: local }) => {
    const [, on = "", target = ""] = CELLS.exec(refersTo.trim()) ?? [];
    const sheet = sheetNamed.get(unquoted(on).toLowerCase());
    const key = local === null ? name.toLowerCase() : localKey(local, name);
    return sheet === undefined
      ? []
      : [[key, { name, sheet, target: target.toUpperCase() }] as const];
  });
  const tables = sheets.flatMap((sheet) =>
    sheet.tables.map(
      (table) => [table.name.toLowerCase(), { name: table.name, sheet, target: table }] as const,
    ),
  );
  return { tables: new Map(tables), names: new Map(targets) };
}
