import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { parseRangeName } from "../address";
import type { CellRange, WorkbookTable } from "../model";
import type { Archive } from "./archive";
import { plainText } from "./plainText";
import { readXml, type Attributes } from "./readXml";
import { SetFilters } from "./setFilters";

export interface TablePart {
  readonly table: WorkbookTable;
  /** The block that the table's filter hides rows of; empty when it has none set. */
  readonly filtered: readonly CellRange[];
}

/** Reads one table part: its name, range, column names and filter. */
export function readTablePart(archive: Archive, partName: string): Result<TablePart> {
  const filters = new SetFilters();
  let table: Attributes | undefined;
  const columns: string[] = [];
  const problem = readXml(archive, partName, {
    open: (name, attributes) => {
      if (name === "table") table ??= attributes;
      filters.open(name, attributes);
      if (name === "tableColumn") columns.push(plainText(attributes["name"] ?? ""));
      return null;
    },
  });
  if (isProblem(problem)) return problem;
  const range = parseRangeName(table?.["ref"] ?? "");
  if (table === undefined || range === null) {
    return badInput(`The file is damaged: its part "${partName}" describes no table.`);
  }
  const name = table["displayName"] ?? table["name"] ?? "";
  const hasTotals = Number(table["totalsRowCount"] ?? 0) > 0;
  return { table: { name, range, columns, hasTotals }, filtered: filters.ranges };
}
