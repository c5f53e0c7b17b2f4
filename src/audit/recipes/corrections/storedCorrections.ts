import { isProblem } from "../../../foundation/problem";
import type { Workbook, WorkbookSheet } from "../../../workbook/model";
import { readCorrections } from "./readCorrections";
import { CORRECTION_FIELDS, CORRECTIONS_MARK, type RecipeCorrection } from "./recipeCorrection";

const FIRST_ROW = 2;

/** What a workbook keeps of the user's corrections. */
export interface StoredCorrections {
  /** The sheet that keeps them; null when there is none. */
  readonly sheet: string | null;
  readonly entries: readonly RecipeCorrection[];
  /** Rows that cannot be read, in sentences. */
  readonly notes: readonly string[];
}

function entryIn(sheet: WorkbookSheet, row: number): Record<string, string> {
  const entry: Record<string, string> = {};
  for (const [column, field] of CORRECTION_FIELDS.entries()) {
    const value = sheet.cellAt(row, column)?.value ?? null;
    if (value !== null && typeof value !== "object" && value !== "") entry[field] = String(value);
  }
  return entry;
}

/** Reads the corrections that a workbook keeps. A row that is none is told and passed over. */
export function storedCorrections({ sheets }: Workbook): StoredCorrections {
  const sheet = sheets.find((one) => one.cellAt(0, 0)?.value === CORRECTIONS_MARK);
  if (sheet === undefined) return { sheet: null, entries: [], notes: [] };
  const entries: RecipeCorrection[] = [];
  const notes: string[] = [];
  for (let row = FIRST_ROW; row < sheet.rowCount; row += 1) {
    const entry = entryIn(sheet, row);
    if (Object.keys(entry).length === 0) continue;
    const read = readCorrections([entry]);
    if (isProblem(read)) notes.push(`Row ${row + 1} of ${sheet.name}: ${read.message}`);
    else entries.push(...read);
  }
  return { sheet: sheet.name, entries, notes };
}
