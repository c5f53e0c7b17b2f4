import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Finding } from "../../src/audit/finding";
import { isProblem } from "../../src/foundation/problem";
import { eachCell } from "../../src/workbook/eachCell";
import type { Workbook } from "../../src/workbook/model";
import { readWorkbook } from "../../src/workbook/readWorkbook";
import { bookDifferences } from "./bookDifferences";
import { fileCorpus } from "./fileCorpus";
import { toFile } from "./toFile";
import { toWorkbook } from "./toWorkbook";

/** A file is written and read more slowly than a book is made: a third of the layouts is enough. */
const files = fileCorpus(2, 3, 3);

/** A finding's key hashes the formula, in which a file numbers other workbooks. */
const withoutKey = (finding: Finding) => ({ ...finding, key: undefined });

async function compare({ title, book }: (typeof files)[number]) {
  const file = await readWorkbook(await toFile(book));
  if (isProblem(file)) throw new Error(`${title}: ${file.message}`);
  const { workbook, recalculated } = toWorkbook(book);
  const [wanted, found] = [workbook, file].map((each) =>
    auditWorkbook(each, { recalculated }).findings.map(withoutKey),
  );
  return { title, workbook, file, differences: bookDifferences(workbook, file), wanted, found };
}

function contentsOf(books: readonly Workbook[]) {
  const sheets = books.flatMap((book) => book.sheets);
  const counts = { cells: 0, formulas: 0, formats: 0, errors: 0 };
  for (const sheet of sheets) {
    eachCell(sheet, (_row, _column, { formula, format, value }) => {
      counts.cells += 1;
      counts.formulas += Number(formula !== undefined);
      counts.formats += Number(format !== undefined);
      counts.errors += Number(typeof value === "object" && value !== null);
    });
  }
  const some = (has: (sheet: Workbook["sheets"][number]) => number) =>
    sheets.filter((sheet) => has(sheet) > 0).length;
  return {
    ...counts,
    tables: some(({ tables }) => tables.length),
    filters: some(({ filtered = [] }) => filtered.length),
    hidden: some(
      ({ hidden, hiddenRows, hiddenColumns }) =>
        Number(hidden) + hiddenRows.size + hiddenColumns.size,
    ),
    names: books.filter(({ names }) => names.length > 0).length,
    links: books.filter(({ externalLinks }) => externalLinks.length > 0).length,
    manual: books.filter(({ calculation }) => calculation === "manual").length,
  };
}

describe("Books of the corpus as .xlsx files, written by a library that is not ours", () => {
  let compared: Awaited<ReturnType<typeof compare>>[];
  beforeAll(async () => {
    compared = [];
    for (const file of files) compared.push(await compare(file));
  }, 240_000);

  test("are of many layouts, and hold all kinds of content", () => {
    expect(new Set(files.map(({ layout }) => layout)).size).toBeGreaterThanOrEqual(100);
    const contents = contentsOf(compared.map(({ file }) => file));
    expect(contents.cells).toBeGreaterThan(10_000);
    expect(contents.formulas).toBeGreaterThan(2_000);
    expect(Object.entries(contents).filter(([, count]) => count === 0)).toEqual([]);
  });

  test("are read as they were in memory: values, formulas, formats, names, tables, filters, what is hidden", () => {
    const different = compared.filter(({ differences }) => differences.length > 0);
    expect(
      different.map(({ title, differences }) => [
        title,
        differences.slice(0, 5).map(({ line }) => line),
      ]),
    ).toEqual([]);
  });

  test("have the findings that they had in memory", () => {
    expect(compared.flatMap(({ wanted }) => wanted ?? []).length).toBeGreaterThan(100);
    for (const { title, wanted, found } of compared)
      expect([title, found]).toEqual([title, wanted]);
  });

  test("would not pass for another's", () => {
    const [one, other] = compared;
    expect(bookDifferences(one!.workbook, other!.file)).not.toEqual([]);
  });
});
