import { strFromU8, unzipSync } from "fflate";
import { Workbook as OtherReader } from "@cj-tech-master/excelts";
import type { Book } from "../../src/bench/book";
import { sheet } from "../../src/bench/demo/cells";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { xlsxToBook } from "../../src/bench/xlsx/xlsxToBook";
import { isProblem } from "../../src/foundation/problem";
import { readWorkbook } from "../../src/workbook/readWorkbook";

const book: Book = {
  name: "Counter",
  names: [
    { name: "Stock", refersTo: "'Cold shelf'!$A$2:$A$3", sheet: null },
    { name: "Rate", refersTo: "0.19", sheet: null },
    { name: "Colder", refersTo: "RIME.DEPRESSION('Cold shelf'!$A$2,1)&\"<\"", sheet: null },
    { name: "Here", refersTo: "'Cold shelf'!$B$2", sheet: "Cold shelf" },
    { name: "Here", refersTo: "Old!$A$1", sheet: "Old" },
  ],
  sheets: [
    sheet(
      "Cold shelf",
      [
        [
          { value: "Item", look: { bold: true, fill: "#e8eef3", align: "right" } },
          { value: "Price", look: { wrap: true, colour: "#9a2b1f" } },
        ],
        [{ value: "Lemons" }, { value: 3.25, look: { numberFormat: "0.00" } }, { value: true }],
        [{ value: "'7" }, { value: 2 }, { value: { error: "#N/A" } }, { value: "_x0041_ <b>" }],
        [undefined, { value: 5.25, formula: "SUM(B2:B3)" }],
        [
          {
            value: -1.5,
            formula: "RIME.FREEZINGPOINT(A1:B1,A2:B3)",
            spills: { top: 4, left: 0, bottom: 5, right: 0 },
          },
          { value: -2, formula: "RIME.DEPRESSION(A1:B1,A2:B2)" },
        ],
        [{ value: -2.5 }],
      ],
      [140, 96],
      {
        frozenRows: 1,
        hiddenRows: new Set([3]),
        hiddenColumns: new Set([4]),
        merged: [{ top: 8, left: 0, bottom: 8, right: 2 }],
        tables: [
          {
            name: "Shelf",
            range: { top: 0, left: 0, bottom: 2, right: 1 },
            columns: ["Item", "Price"],
            hasTotals: false,
          },
        ],
      },
    ),
    sheet("Old", [[{ value: 1 }]], [], { hidden: true }),
  ],
};

async function written(): Promise<Uint8Array> {
  return bookToXlsx(book);
}

describe("A saved copy", () => {
  let parts: Record<string, string>;
  beforeAll(async () => {
    const files = unzipSync(await written());
    parts = Object.fromEntries(
      Object.entries(files).map(([name, part]) => [name, strFromU8(part)]),
    );
  });

  test("stores functions of ours as Excel stores an add-in's, and lets them spill", () => {
    const xml = parts["xl/worksheets/sheet1.xml"]!;
    expect(xml).toMatch(
      /<c r="A5"[^>]* cm="1"><f t="array" ref="A5:A6">_xldudf_RIME_FREEZINGPOINT\(A1:B1,A2:B3\)<\/f><v>-1.5<\/v>/,
    );
    expect(xml).toMatch(/<c r="B5"[^>]* cm="1"><f t="array" ref="B5">_xldudf_RIME_DEPRESSION/);
    expect(xml).toContain("<f>SUM(B2:B3)</f>");
  });

  test("names the part that the spill mark points to, in the list of types and of relations", () => {
    expect(parts["xl/metadata.xml"]).toContain('fDynamic="1"');
    expect(parts["[Content_Types].xml"]).toContain("/xl/metadata.xml");
    expect(parts["xl/_rels/workbook.xml.rels"]).toContain('Target="metadata.xml"');
  });

  test("shows the first sheet that is not hidden", async () => {
    const hiddenFirst = { ...book, sheets: [...book.sheets].reverse() };
    const { "xl/workbook.xml": part } = unzipSync(await bookToXlsx(hiddenFirst));
    expect(strFromU8(part!)).toMatch(/<workbookView[^>]* activeTab="1"/);
    expect(parts["xl/workbook.xml"]).not.toMatch(/activeTab="[1-9]"/);
  });

  test("is read by an independent reader with the same values", async () => {
    const other = new OtherReader();
    await other.xlsx.load((await written()).slice().buffer);
    const read = other.getWorksheet("Cold shelf")!;
    expect(read.getCell("B2").value).toBe(3.25);
    expect(read.getCell("B4").result).toBe(5.25);
    expect(read.getCell("C3").value).toEqual({ error: "#N/A" });
    expect(other.getWorksheet("Old")!.state).toBe("hidden");
  });
});

describe("A copy opened again", () => {
  let opened: Book;
  beforeAll(async () => {
    const result = await xlsxToBook("Counter copy.xlsx", await written());
    if (isProblem(result)) throw new Error(result.message);
    opened = result.book;
  });
  const first = () => opened.sheets[0]!;

  test("has the same values, formulas and number formats", () => {
    const { rows } = first();
    expect(rows[1]!.slice(0, 3).map((cell) => cell?.value)).toEqual(["Lemons", 3.25, true]);
    expect(rows[1]![1]!.look?.numberFormat).toBe("0.00");
    const third = ["'7", 2, { error: "#N/A" }, "_x0041_ <b>"];
    expect(rows[2]!.map((cell) => cell?.value)).toEqual(third);
    expect(rows[3]![1]).toMatchObject({ value: 5.25, formula: "SUM(B2:B3)" });
  });

  test("has a filling formula once, not what it filled as constants", () => {
    const { rows } = first();
    expect(rows[4]![0]).toMatchObject({
      formula: "RIME.FREEZINGPOINT(A1:B1,A2:B3)",
      spills: { top: 4, left: 0, bottom: 5, right: 0 },
    });
    expect(rows[5]![0]?.value ?? null).toBeNull();
  });

  test("looks as before", () => {
    const { rows, columnWidthsPx, frozenRows } = first();
    expect(rows[0]![0]!.look).toEqual({ bold: true, fill: "#e8eef3", align: "right" });
    expect(rows[0]![1]!.look).toEqual({ wrap: true, colour: "#9a2b1f" });
    expect(columnWidthsPx.get(0)).toBe(140);
    expect(columnWidthsPx.get(1)).toBe(96);
    expect(frozenRows).toBe(1);
  });

  test("keeps hidden rows, columns and sheets, merged cells, tables and names", () => {
    expect([...first().hiddenRows]).toContain(3);
    expect([...first().hiddenColumns]).toContain(4);
    expect(opened.sheets.map(({ hidden }) => hidden)).toEqual([false, true]);
    expect(first().merged).toEqual(book.sheets[0]!.merged);
    expect(first().tables).toEqual(book.sheets[0]!.tables);
    expect(opened.names).toEqual(book.names);
    expect(opened.name).toBe("Counter copy");
  });

  test("is a workbook for the guarded reader too", async () => {
    expect(isProblem(await readWorkbook(await written()))).toBe(false);
  });
});

describe("A file that is no workbook", () => {
  test.each([
    ["text", new TextEncoder().encode("Sugar;120\nMilk;700\n")],
    ["nothing", new Uint8Array()],
    ["half a workbook", new Uint8Array([0x50, 0x4b, 3, 4, 0, 0, 0, 0])],
  ])("%s is refused in one sentence", async (_, bytes) => {
    const result = await xlsxToBook("x.xlsx", bytes);
    expect(isProblem(result) && result.message).toMatch(/^[A-Z].*\.$/);
  });
});
