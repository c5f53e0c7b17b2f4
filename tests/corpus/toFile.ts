import {
  Workbook,
  type CellErrorValue,
  type CellValue,
  type Worksheet,
} from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { withFileFunctionNames } from "../../src/bench/xlsx/functionPrefixes";
import { rangeName } from "../../src/workbook/address";
import type { WorkbookValue } from "../../src/workbook/model";
import { isFormula, type CorpusBook, type CorpusSheet, type Typed } from "./book";
import { calculate } from "./calculate";

const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml";
const CALCULATION = {
  automatic: "auto",
  manual: "manual",
  "automatic except tables": "autoNoTable",
};

const isError = (value: WorkbookValue): value is { readonly error: string } =>
  typeof value === "object" && value !== null;

const constant = (value: WorkbookValue): CellValue =>
  isError(value) ? ({ error: value.error } as CellErrorValue) : value;

/** A formula as the file holds it: our functions with an add-in's mark, another file by its number. */
function fileFormula(book: CorpusBook, content: string): string {
  const numbered = book.externalLinks.reduce(
    (formula, link, index) => formula.replaceAll(`[${link}]`, `[${index + 1}]`),
    content.slice(1),
  );
  return withFileFunctionNames(numbered);
}

function cellContent(book: CorpusBook, cell: Typed, fresh: () => WorkbookValue): CellValue {
  if (!isFormula(cell)) return constant(cell.content);
  const result = constant(cell.stored === undefined ? fresh() : cell.stored);
  const formula = fileFormula(book, cell.content);
  return result === null ? { formula } : ({ formula, result } as CellValue);
}

function writeTables(target: Worksheet, { tables }: CorpusSheet): void {
  for (const { name, range, columns, hasTotals } of tables) {
    target.addTable({
      ...{ name, ref: rangeName({ ...range, bottom: range.top, right: range.left }) },
      ...{
        headerRow: true,
        totalsRow: hasTotals,
        columns: columns.map((title) => ({ name: title })),
      },
      rows: Array.from({ length: range.bottom - range.top - Number(hasTotals) }, () =>
        columns.map(() => null),
      ),
    });
  }
}

type Fresh = ReturnType<typeof calculate>;

function writeSheet(workbook: Workbook, book: CorpusBook, sheet: CorpusSheet, fresh: Fresh): void {
  const state = sheet.hidden ? "hidden" : "visible";
  const target = workbook.addWorksheet(sheet.name, { state });
  writeTables(target, sheet); // first, for it writes its headings itself
  sheet.cells.forEach((line, row) => {
    line.forEach((cell, column) => {
      if (cell === undefined) return;
      const written = target.getCell(row + 1, column + 1);
      written.value = cellContent(book, cell, () => fresh(sheet.name, row, column));
      if (cell.format !== undefined) written.numFmt = cell.format;
    });
  });
  for (const row of sheet.hiddenRows) target.getRow(row + 1).hidden = true;
  for (const column of sheet.hiddenColumns) target.getColumn(column + 1).hidden = true;
  for (const range of sheet.merged) target.mergeCells(rangeName(range));
}

const relationshipTo = (id: string, type: string, target: string, more = ""): string =>
  `<Relationship Id="${id}" Type="${RELATION}/${type}" Target="${target}"${more}/>`;

/** A filter of a table, or else of its sheet, whose first column keeps what is not blank. */
function filterEdits({
  sheets,
}: CorpusBook): (readonly [part: string, mark: RegExp, text: string])[] {
  const tables = sheets.flatMap((sheet) => sheet.tables.map(({ range }) => ({ sheet, range })));
  const column = `<filterColumn colId="0"><customFilters><customFilter operator="notEqual" val=" "/></customFilters></filterColumn>`;
  return sheets.flatMap((sheet, index) =>
    sheet.filtered.map((range) => {
      const isOfTable = (table: (typeof tables)[number]) =>
        table.sheet === sheet && table.range.top === range.top && table.range.left === range.left;
      const text = `<autoFilter ref="${rangeName(range)}">${column}</autoFilter>`;
      const table = tables.findIndex(isOfTable);
      return table < 0
        ? ([`xl/worksheets/sheet${index + 1}.xml`, /(?<=<\/sheetData>)/, text] as const)
        : ([`xl/tables/table${table + 1}.xml`, /<autoFilter.*<\/autoFilter>/, text] as const);
    }),
  );
}

/** Adds what the library does not write: how the workbook calculates, filters, links to other workbooks. */
function completed(bytes: Uint8Array, book: CorpusBook): Uint8Array {
  const { calculation, externalLinks } = book;
  const parts = unzipSync(bytes);
  const edit = (name: string, mark: string | RegExp, text: string): void => {
    const before = strFromU8(parts[name]!);
    const after = before.replace(mark, text);
    if (after === before) throw new Error(`The library's part ${name} has no ${String(mark)}.`);
    parts[name] = strToU8(after);
  };
  edit("xl/workbook.xml", /<calcPr\b/, `<calcPr calcMode="${CALCULATION[calculation]}"`);
  for (const [part, mark, text] of filterEdits(book)) edit(part, mark, text);
  externalLinks.forEach((link, index) => {
    const [id, name] = [`rIdLink${index + 1}`, `externalLink${index + 1}.xml`];
    const part = `xl/externalLinks/${name}`;
    parts[part] = strToU8(
      `<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${RELATION}" r:id="rId1"><sheetNames><sheetName val="Stock"/></sheetNames></externalBook></externalLink>`,
    );
    parts[`xl/externalLinks/_rels/${name}.rels`] = strToU8(
      `<Relationships xmlns="${PACKAGE}">${relationshipTo("rId1", "externalLinkPath", link, ` TargetMode="External"`)}</Relationships>`,
    );
    edit(
      "[Content_Types].xml",
      "</Types>",
      `<Override PartName="/${part}" ContentType="${CONTENT}"/></Types>`,
    );
    edit(
      "xl/_rels/workbook.xml.rels",
      "</Relationships>",
      `${relationshipTo(id, "externalLink", `externalLinks/${name}`)}</Relationships>`,
    );
    const place = index === 0 ? "</sheets>" : "</externalReferences>";
    const reference = `<externalReference r:id="${id}"/></externalReferences>`;
    edit(
      "xl/workbook.xml",
      place,
      index === 0 ? `</sheets><externalReferences>${reference}` : reference,
    );
  });
  return zipSync(parts, { level: 6, mtime: "2024-02-29T12:00:00" });
}

/** A corpus book as an .xlsx file, written by a library that is not ours. */
export async function toFile(book: CorpusBook): Promise<Uint8Array> {
  const [workbook, fresh] = [new Workbook(), calculate(book)];
  for (const sheet of book.sheets) writeSheet(workbook, book, sheet, fresh);
  for (const { name, refersTo } of book.names) workbook.definedNames.add(refersTo, name);
  return completed(new Uint8Array(await workbook.xlsx.writeBuffer()), book);
}
