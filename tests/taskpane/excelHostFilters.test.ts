import type { BlockValue } from "../../taskpane/host";
import { excelHost } from "../../taskpane/excelHost";
import { fakeExcel } from "./fakeExcel";

// Excel.AutoFilter (isDataFiltered, getRangeOrNullObject) is of ExcelApi 1.9, by Office's published reference.

const ice = (): BlockValue[][] => [
  ["Ingredient", "g"],
  ["water", 200],
  ["sucrose", 70],
  ["Total", "=SUM(B2:B3) → 270"],
];

const book = () => ({
  sheets: { Table: ice(), Empty: [], Buttons: ice(), Plain: ice() },
  tables: [{ name: "Ice", sheet: "Table", address: "A1:B4", showTotals: true }],
  filters: {
    Ice: { address: "A1:B3", isDataFiltered: true },
    Empty: { address: "A1:B3", isDataFiltered: true },
    Buttons: { address: "A1:B3", isDataFiltered: false },
    Plain: { address: "A3:B9", isDataFiltered: true },
  },
  hiddenRows: { Table: [2], Plain: [3] },
  selection: { sheet: "Table", address: "A1" },
});

async function readWith(latestSet: number) {
  const { Excel, state } = fakeExcel(book());
  const isSetSupported = (_: string, set: string) => Number(set.slice(2)) <= latestSet;
  Object.assign(globalThis, { Excel, Office: { context: { requirements: { isSetSupported } } } });
  const { sheets } = await excelHost().readWorkbook();
  return { syncs: state.syncs, filtered: sheets.map(({ filtered }) => filtered), sheets };
}

test("the blocks whose filter has a condition set are told, a table's or a sheet's", async () => {
  const ofTable = { top: 0, left: 0, bottom: 2, right: 1 };
  const ofSheet = { top: 2, left: 0, bottom: 8, right: 1 };
  const { filtered, sheets } = await readWith(9);
  expect(filtered).toEqual([[ofTable], undefined, [], [ofSheet]]);
  expect(sheets.map(({ hiddenRows }) => [...hiddenRows])).toEqual([[2], [], [], [3]]);
});

test("they are asked for along with the rest, and not where the spreadsheet cannot tell", async () => {
  const [asked, old] = [await readWith(9), await readWith(8)];
  expect(old.filtered).toEqual([undefined, undefined, undefined, undefined]);
  expect(asked.syncs).toBe(old.syncs);
});
