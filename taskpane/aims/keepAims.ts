import { parseRangeName, rangeName } from "../../src/workbook/address";
import type { SheetEdit, SpreadsheetHost } from "../host";
import { asText } from "../office/cellContent";
import type { AimBody, AimPlace } from "./aim";
import { aimRow } from "./aimArgument";
import { AIM_HEADERS, aimColumns, type AimHeader, type AimTable } from "./aimTables";

type Written = string | number;

const written = (aim: AimBody): readonly Written[] =>
  aimRow(aim).map((cell) => (typeof cell === "string" ? asText(cell) : cell));

/** Below a table of targets, in the order of its columns; null where something else stands there. */
async function below(
  host: SpreadsheetHost,
  { sheet, address, cells }: AimTable,
  aims: readonly AimBody[],
): Promise<string | null> {
  const range = parseRangeName(address);
  if (range === null) return null;
  const [top, bottom] = [range.bottom + 1, range.bottom + aims.length];
  const place = await host.read(sheet, rangeName({ ...range, top, bottom }));
  const columns = aimColumns(cells[0]);
  const contents = aims.map((aim) => {
    const row: Written[] = Array.from({ length: range.right - range.left + 1 }, () => "");
    written(aim).forEach((cell, at) => {
      const column = columns.get(AIM_HEADERS[at] ?? "");
      if (column !== undefined) row[column] = cell;
    });
    return row;
  });
  const outcome = await host.insert(place, contents);
  return outcome === "written" ? `${sheet}!${place.address}` : null;
}

/** Writes targets into the workbook: below the table there is, else on a new sheet. Answers where. */
export async function keepAims(
  host: SpreadsheetHost,
  table: AimTable | undefined,
  aims: readonly AimBody[],
  sheetName: string,
): Promise<string> {
  const place = table === undefined ? null : await below(host, table, aims);
  return place ?? (await host.addSheet(sheetName, [AIM_HEADERS, ...aims.map(written)]));
}

/** The cells that change when a kept target does; the header that its table lacks for it. */
export async function aimEdits(
  host: SpreadsheetHost,
  { sheet, address, row }: AimPlace,
  before: AimBody,
  after: AimBody,
): Promise<readonly SheetEdit[] | AimHeader> {
  const range = parseRangeName(address);
  if (range === null) return [];
  const block = await host.read(sheet, address);
  const columns = aimColumns(block.values[0]);
  const [from, to] = [aimRow(before), aimRow(after)];
  const edits: SheetEdit[] = [];
  for (const [at, header] of AIM_HEADERS.entries()) {
    const content = to[at];
    if (content === undefined || content === from[at]) continue;
    const column = columns.get(header);
    if (column === undefined) return header;
    const cell = rangeName({
      ...{ top: range.top + row, bottom: range.top + row },
      ...{ left: range.left + column, right: range.left + column },
    });
    edits.push({ sheet, cell, from: block.formulas[row]?.[column] ?? "", to: content });
  }
  return edits;
}
