import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { excelHost } from "../../taskpane/excelHost";
import { fakeExcel } from "./fakeExcel";

// learn.microsoft.com, "Undo capabilities with the Excel JavaScript API", table "Unsupported APIs": calling
// one of these clears what the user can undo. Listed are those of the kinds of object the pane touches at all.
const CLEARS_UNDO = [
  ...["Worksheet.delete()", "Worksheet.copy()", "Worksheet.name =", "Worksheet.position ="],
  ...["Worksheet.visibility =", "Worksheet.standardWidth =", "NamedItem.comment ="],
  ...["Workbook.save()", "Workbook.close()", "Workbook.insertWorksheetsFromBase64()"],
  ...["WorksheetCollection.addFromBase64()", "DataConnectionCollection.refreshAll()"],
  ...["WorksheetProtection.protect()", "WorksheetProtection.unprotect()"],
  // Not in that table: event handlers, which older versions answer by clearing it, and merged areas.
  ...["Workbook.onSelectionChanged.add()", "Range.getMergedAreasOrNullObject()"],
];

// Office's reference: what moves the selection, turns to another sheet, changes filters, or calculates.
const CHANGES_THE_VIEW = [
  ...[
    "Range.select()",
    "Worksheet.activate()",
    "Application.calculationMode =",
    "Table.clearFilters()",
  ],
  ...[
    "Application.calculate()",
    "Worksheet.calculate()",
    "AutoFilter.apply()",
    "AutoFilter.remove()",
  ],
  ...[
    "Range.rowHidden =",
    "Range.columnHidden =",
    "Table.showTotals =",
    "AutoFilter.clearCriteria()",
  ],
];

// All that a reading may ask: objects that are found, and properties that are loaded.
const ASKS_ONLY =
  /\.load [\w,/]+$|^(Range|Worksheet|AutoFilter)\.get\w+\(\)$|^Table\.getRange\(\)$/;

function book() {
  const fake = fakeExcel({
    sheets: {
      Ices: [
        ["Ingredient", "g"],
        ["water", 200],
        ["sucrose", "70,5"],
        ["Total", "=SUM(B2:B3) → 200"],
      ],
      Old: [
        ["Ingredient", "g"],
        ["mlik", 10],
      ],
      Empty: [],
    },
    tables: [{ name: "Ice", sheet: "Ices", address: "A1:B4", showTotals: true }],
    hiddenRows: { Ices: [1], Old: [1] },
    filters: {
      Ice: { address: "A1:B3", isDataFiltered: true },
      Old: { address: "A1:B2", isDataFiltered: false },
    },
    hiddenSheets: ["Old"],
    names: [{ name: "batch", formula: "=Ices!$B$4" }],
    calculationMode: "Manual",
    selection: { sheet: "Ices", address: "B2" },
  });
  const requirements = { isSetSupported: () => true };
  Object.assign(globalThis, { Excel: fake.Excel, Office: { context: { requirements } } });
  return { host: excelHost(), ...fake };
}

describe("an audit of the open workbook", () => {
  test("asks for nothing that clears undo or changes selection, sheet, filters or calculation", async () => {
    const { host, calls, requests } = book();
    const { findings } = auditWorkbook(await host.readWorkbook());
    expect(findings.map(({ rule }) => rule)).toContain("filtered-rows-in-sum"); // it was a real run
    expect(requests.length).toBeGreaterThan(20);
    const forbidden = new Set([...CLEARS_UNDO, ...CHANGES_THE_VIEW]);
    expect(requests.filter((request) => forbidden.has(request))).toEqual([]);
    expect(calls).toEqual([]);
  });

  test("asks for nothing at all but to read", async () => {
    const { host, requests } = book();
    await host.readWorkbook();
    expect(requests.filter((request) => !ASKS_ONLY.test(request))).toEqual([]);
  });

  test("the record would show it: a jump and an event handler are in it", async () => {
    const { host, requests } = book();
    await host.goTo("Ices", "B2");
    await host.onSelectionChanged(() => undefined);
    expect(requests).toEqual(
      expect.arrayContaining([
        ...["Worksheet.activate()", "Range.select()", "Workbook.onSelectionChanged.add()"],
      ]),
    );
  });
});

describe("what the pane writes", () => {
  test("can be undone: none of its requests is among those that clear undo", async () => {
    const { host, requests } = book();
    await host.writeCells([
      { sheet: "Ices", cell: "B3", from: "70,5", to: 70.5, format: "General" },
    ]);
    await host.addSheet("Report", [["found"]]);
    await host.insert(await host.read("Ices", "D1"), [["note"]]);
    expect(requests).toEqual(
      expect.arrayContaining([
        "Range.formulas =",
        "Range.numberFormat =",
        "WorksheetCollection.add()",
      ]),
    );
    expect(requests.filter((request) => CLEARS_UNDO.includes(request))).toEqual([]);
  });

  test("cells of one fix, and a new sheet, are one sync each: one step to undo in Excel", async () => {
    const { host, state } = book();
    await host.writeCells([
      { sheet: "Ices", cell: "B2", from: 200, to: 210 },
      { sheet: "Ices", cell: "B3", from: "70,5", to: 70.5 },
    ]);
    expect(state.syncs).toBe(3); // read, write, read again
    await host.addSheet("Report", [["found"], [1]]);
    expect(state.syncs).toBe(5); // names, then the sheet with its contents
  });
});
