import type {
  CellRange,
  DefinedName,
  Workbook,
  WorkbookSheet,
  WorkbookTable,
} from "../../src/workbook/model";
import { eachCell } from "../../src/workbook/eachCell";
import type { ReadingOptions } from "../host";
import { EXTENT_PROPERTIES, cellRange } from "./blockAround";
import { goOnUnless } from "./cancelled";
import { readSheet } from "./readSheet";
import { askFilter } from "./setFilters";

interface LoadedTable extends WorkbookTable {
  readonly sheet: string;
  readonly filtered: readonly CellRange[];
}

async function readTables(context: Excel.RequestContext): Promise<readonly LoadedTable[]> {
  const { tables } = context.workbook;
  tables.load("items/name,items/showTotals");
  await context.sync();
  const loading = tables.items.map((table) => {
    const [range, { worksheet }] = [table.getRange(), table];
    range.load(EXTENT_PROPERTIES);
    worksheet.load("name");
    return { table, range, worksheet, filter: askFilter(table) };
  });
  await context.sync();
  return loading.map(({ table, range, worksheet, filter }) => ({
    sheet: worksheet.name,
    name: table.name,
    range: cellRange(range),
    columns: [],
    hasTotals: table.showTotals,
    filtered: filter() ?? [],
  }));
}

const CALCULATION: Readonly<Record<string, Workbook["calculation"]>> = {
  Manual: "manual",
  AutomaticExceptTables: "automatic except tables",
};

/** Other workbooks that formulas refer to: the host does not list them, so they are read off. */
function linkedFiles(sheets: readonly WorkbookSheet[]): readonly string[] {
  const files = new Set<string>();
  for (const sheet of sheets) {
    eachCell(sheet, (_row, _column, { formula }) => {
      for (const [, file] of (formula ?? "").matchAll(/\[([^[\]]+\.xl\w+)\]/gi)) {
        if (file !== undefined) files.add(file);
      }
    });
  }
  return [...files];
}

const NAME_AND_FORMULA = "items/name,items/formula";

/** The live workbook in the model that the audit reads. Selection, filters, undo and mode stay as they are. */
export async function readWorkbook(
  context: Excel.RequestContext,
  { onSheet, mostRows, signal }: ReadingOptions,
): Promise<Workbook> {
  // Each is asked for once and kept: what was loaded belongs to that object.
  const { worksheets, names, application } = context.workbook;
  worksheets.load("items/name,items/visibility");
  names.load(NAME_AND_FORMULA);
  application.load("calculationMode");
  const tables = await readTables(context);
  const { items } = worksheets;
  // Copied sheets have names of their own, which come with the first sheet's contents.
  const ofSheets = items.map(({ names: own, name }) => {
    own.load(NAME_AND_FORMULA);
    return [own, name] as const;
  });
  const sheets: WorkbookSheet[] = [];
  for (const sheet of items) {
    goOnUnless(signal);
    onSheet?.(sheets.length, items.length);
    const ofSheet = tables.filter((one) => one.sheet === sheet.name);
    sheets.push(await readSheet(context, sheet, ofSheet, { mostRows, signal }));
  }
  const definedNames = [[names, null] as const, ...ofSheets].flatMap(([{ items: named }, sheet]) =>
    named.map(({ name, formula }): DefinedName => ({
      ...{ name, sheet },
      refersTo: String(formula).replace(/^=/, ""),
    })),
  );
  return {
    sheets,
    names: definedNames,
    calculation: CALCULATION[application.calculationMode as string] ?? "automatic",
    externalLinks: linkedFiles(sheets),
  };
}
