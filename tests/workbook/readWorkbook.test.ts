import { Workbook as WriterWorkbook } from "@cj-tech-master/excelts";
import { isProblem } from "../../src/foundation/problem";
import { eachCell } from "../../src/workbook/eachCell";
import type { Workbook } from "../../src/workbook/model";
import { readWorkbook } from "../../src/workbook/readWorkbook";
import { handMadeXlsx, relationships } from "./handMadeXlsx";

async function read(bytes: Uint8Array): Promise<Workbook> {
  const workbook = await readWorkbook(bytes);
  if (isProblem(workbook)) throw new Error(workbook.message);
  return workbook;
}

/** A book of many kinds of cell, written by an independent library. */
async function writtenBook(): Promise<Uint8Array> {
  const book = new WriterWorkbook();
  const sheet = book.addWorksheet("Kitchen ledger");
  sheet.addRow(["Item", "Grams", "Share"]);
  sheet.addRow(["Apricots", 412.5, 0.5]);
  sheet.addRow(["Sugar", 118, { formula: "B3/SUM(B$2:B$3)", result: 0.2224 }]);
  sheet.addRow([
    { richText: [{ text: "Lemon" }, { text: " juice", font: { bold: true } }] },
    "12,5",
    true,
  ]);
  sheet.addRow(["broken", { error: "#N/A" }, { formula: "1/0", result: { error: "#DIV/0!" } }]);
  sheet.addRow([new Date(Date.UTC(2024, 1, 29)), -0.125, false]);
  sheet.getCell("C2").numFmt = "0.0 %";
  sheet.mergeCells("A9:B10");
  sheet.getRow(4).hidden = true;
  sheet.getColumn(3).hidden = true;
  book.addWorksheet("Old prices", { state: "hidden" }).addRow(["x", 1]);
  sheet.addTable({
    name: "Batch",
    ref: "E1",
    headerRow: true,
    columns: [{ name: "Ingredient" }, { name: "g" }],
    rows: [
      ["Water", 100],
      ["Salt", 2],
    ],
  });
  return new Uint8Array(await book.xlsx.writeBuffer());
}

describe("A workbook written by another library", () => {
  let workbook: Workbook;
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await writtenBook();
    workbook = await read(bytes);
  });
  const at = (row: number, column: number) => workbook.sheets[0]!.cellAt(row, column);

  test("keeps its texts, numbers, booleans and errors", () => {
    expect(at(1, 0)).toEqual({ value: "Apricots" });
    expect(at(1, 1)).toEqual({ value: 412.5 });
    expect(at(3, 0)).toEqual({ value: "Lemon juice" });
    expect(at(3, 1)).toEqual({ value: "12,5" });
    expect(at(3, 2)).toEqual({ value: true });
    expect(at(4, 1)?.value).toEqual({ error: "#N/A" });
    expect(at(7, 7)).toBeUndefined();
  });
  test("keeps formulas with their stored results and number formats", () => {
    expect(at(2, 2)).toEqual({ value: 0.2224, formula: "B3/SUM(B$2:B$3)" });
    expect(at(4, 2)).toEqual({ value: { error: "#DIV/0!" }, formula: "1/0" });
    expect(at(1, 2)).toEqual({ value: 0.5, format: "0.0 %" });
  });
  test("has dates as numbers with a date format: 29 February 2024 is day 45351", () => {
    expect(at(5, 0)?.value).toBe(45351);
    expect(at(5, 0)?.format).toMatch(/d/);
  });
  test("tells what is hidden, merged and a table", () => {
    const sheet = workbook.sheets[0]!;
    expect([...sheet.hiddenRows]).toEqual([3]);
    expect([...sheet.hiddenColumns]).toEqual([2]);
    expect(sheet.merged).toEqual([{ top: 8, left: 0, bottom: 9, right: 1 }]);
    expect(workbook.sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ["Kitchen ledger", false],
      ["Old prices", true],
    ]);
    expect(sheet.tables).toEqual([
      {
        name: "Batch",
        range: { top: 0, left: 4, bottom: 2, right: 5 },
        columns: ["Ingredient", "g"],
        hasTotals: false,
      },
    ]);
  });
  test("tells where a filter is set, not where only its buttons are", async () => {
    const filter = (inside: string) =>
      handMadeXlsx(
        `<sheetData><row r="2" hidden="1"><c r="A2"><v>1</v></c></row></sheetData><autoFilter ref="A1:B9">${inside}</autoFilter>`,
      );
    const condition = `<filterColumn colId="0"><filters><filter val="2"/></filters></filterColumn>`;
    const button = `<filterColumn colId="0" hiddenButton="1"/>`;
    const [set, buttons] = [await read(filter(condition)), await read(filter(button))];
    expect(set.sheets[0]?.filtered).toEqual([{ top: 0, left: 0, bottom: 8, right: 1 }]);
    expect(buttons.sheets[0]?.filtered).toEqual([]);
  });
  test("reads cell by cell as the library that wrote it reads it back", async () => {
    const second = new WriterWorkbook();
    await second.xlsx.load(bytes);
    let compared = 0;
    eachCell(workbook.sheets[0]!, (row, column, cell) => {
      const other = second.worksheets[0]!.getCell(row + 1, column + 1);
      expect(cell.formula).toBe(other.formula);
      if (typeof cell.value === "number" && typeof other.value === "number") {
        expect(cell.value).toBe(other.value);
      }
      if (typeof cell.value === "string") expect(other.text).toBe(cell.value);
      compared += 1;
    });
    expect(compared).toBeGreaterThan(20);
  });
});

const valuesAndFormulas = async (sheetData: string) => {
  const sheet = (await read(handMadeXlsx(`<sheetData>${sheetData}</sheetData>`))).sheets[0]!;
  return (row: number, column: number) => sheet.cellAt(row, column);
};

describe("What the file format allows", () => {
  test("a shared formula moves its relative references and keeps the fixed ones", async () => {
    const at = await valuesAndFormulas(
      `<row r="1"><c r="B1"><f t="shared" ref="B1:C2" si="0">A1*$A$1+LOG10(A1)&amp;"A1"</f><v>1</v></c><c r="C1"><f t="shared" si="0"/><v>2</v></c></row>` +
        `<row r="2"><c r="B2"><f t="shared" si="0"/><v>3</v></c></row>`,
    );
    expect(at(0, 1)?.formula).toBe('A1*$A$1+LOG10(A1)&"A1"');
    expect(at(0, 2)?.formula).toBe('B1*$A$1+LOG10(B1)&"A1"');
    expect(at(1, 1)).toMatchObject({ value: 3, formula: 'A2*$A$1+LOG10(A2)&"A1"' });
  });
  test("an array formula tells the block it fills", async () => {
    const at = await valuesAndFormulas(
      `<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">_xldudf_RIME_FREEZINGPOINT(_xlfn._xlws.SORT(B1:B3),C1:C3)</f><v>-1.5</v></c></row>`,
    );
    expect(at(0, 0)?.spills).toEqual({ top: 0, left: 0, bottom: 2, right: 0 });
    expect(at(0, 0)?.formula).toBe("RIME.FREEZINGPOINT(SORT(B1:B3),C1:C3)");
  });
  test("rows and cells may leave their places out, texts may be inline or results", async () => {
    const at = await valuesAndFormulas(
      `<row><c><v>1</v></c><c t="inlineStr"><is><r><t>a</t></r><r><t>_x0041_</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c></row><row><c t="str"><f>"x"</f><v>x</v></c><c t="b"><v>1</v></c><c t="d"><v>2024-02-29</v></c></row>`,
    );
    expect(at(0, 0)?.value).toBe(1);
    expect(at(0, 1)?.value).toBe("aA");
    expect(at(1, 0)).toEqual({ value: "x", formula: '"x"' });
    expect(at(1, 1)?.value).toBe(true);
    expect(at(1, 2)?.value).toBe(45351);
  });
  test("element names may carry a prefix", async () => {
    const bytes = handMadeXlsx("", {
      "xl/worksheets/sheet1.xml": `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="2"><x:c r="C2"><x:v>4.5</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
    });
    expect((await read(bytes)).sheets[0]!.cellAt(1, 2)).toEqual({ value: 4.5 });
  });
  test("calculation mode, names with their sheet, and external links are kept", async () => {
    const R = `xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"`;
    const workbook = await read(
      handMadeXlsx("<sheetData/>", {
        "xl/workbook.xml": `<workbook ${R}><sheets><sheet name="Sheet1" r:id="rId1"/></sheets><externalReferences><externalReference r:id="rId2"/></externalReferences><definedNames><definedName name="Kf">Sheet1!$B$1</definedName><definedName name="Sugar" localSheetId="0">'Sheet1'!$B$2</definedName></definedNames><calcPr calcMode="manual"/></workbook>`,
        "xl/_rels/workbook.xml.rels": relationships(
          ["rId1", "worksheet", "/xl/worksheets/sheet1.xml"],
          ["rId2", "externalLink", "externalLinks/externalLink1.xml"],
        ),
        "xl/externalLinks/_rels/externalLink1.xml.rels": `<Relationships><Relationship Id="rId1" Type="x/externalLinkPath" Target="prices%20old.xlsx" TargetMode="External"/></Relationships>`,
      }),
    );
    expect(workbook.calculation).toBe("manual");
    expect(workbook.externalLinks).toEqual(["prices%20old.xlsx"]);
    expect(workbook.names).toEqual([
      { name: "Kf", refersTo: "Sheet1!$B$1", sheet: null },
      { name: "Sugar", refersTo: "'Sheet1'!$B$2", sheet: "Sheet1" },
    ]);
  });
});
