import { recalculate } from "../../src/workbook/evaluate";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";

// Microsoft's page on SUBTOTAL: 1–11 count rows hidden by hand, 101–111 do not, and rows that a filter leaves
// out are never counted. LibreOffice Calc 7.4 gives the same values for these cells.
const FORMULAS = ["SUM(A2:A5)", "SUBTOTAL(9,A2:A5)", "SUBTOTAL(109,A2:A5)", "AGGREGATE(9,5,A2:A5)"];

const amounts = (formula: string) => [
  ["Grams", { value: 0, formula }],
  ...[500, 150, 45, 110].map((grams) => [grams]),
];

async function answers(extras: Parameters<typeof sheetFromRows>[2]) {
  const sheets = FORMULAS.map((formula) => sheetFromRows(formula, amounts(formula), extras));
  const book = { sheets, names: [], calculation: "automatic", externalLinks: [] } as const;
  const range = { top: 0, left: 1, bottom: 0, right: 1 };
  const blocks = FORMULAS.map((_, sheet) => ({ sheet, range }));
  const { valueAt } = await recalculate(book, blocks, []);
  return FORMULAS.map((_, sheet) => valueAt(sheet, 0, 1));
}

const filtered = [{ top: 0, left: 0, bottom: 4, right: 0 }];

test.each([
  ["nothing is hidden", {}, [805, 805, 805, 805]],
  ["hidden by hand", { hiddenRows: new Set([1, 3]) }, [805, 805, 260, 260]],
  ["hidden by a filter", { hiddenRows: new Set([1, 3]), filtered }, [805, 260, 260, 260]],
])("sums of rows, %s", async (_, extras, wanted) => expect(await answers(extras)).toEqual(wanted));
