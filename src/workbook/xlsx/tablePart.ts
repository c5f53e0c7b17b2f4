import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { parseRangeName } from "../address";
import type { WorkbookTable } from "../model";
import type { Archive } from "./archive";
import { plainText } from "./plainText";
import { readXml, type Attributes } from "./readXml";

/** Reads one table part: its name, range and column names. */
export function readTablePart(archive: Archive, partName: string): Result<WorkbookTable> {
  let table: Attributes | undefined;
  const columns: string[] = [];
  const problem = readXml(archive, partName, {
    open: (name, attributes) => {
      if (name === "table") table ??= attributes;
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
  return { name, range, columns, hasTotals: Number(table["totalsRowCount"] ?? 0) > 0 };
}
