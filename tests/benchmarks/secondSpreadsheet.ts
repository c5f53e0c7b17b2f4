/**
 * Holds reader, recalculation and audit against another spreadsheet (LibreOffice Calc, which has to be
 * installed; SOFFICE may name its command). Books of every layout of the corpus are written to files; the
 * other spreadsheet opens and saves them, as they are, through its own format and as copies saved by the bench,
 * calculates them anew, and writes them as text in English and in German. Prints files, cells compared and differences by kind.
 *
 *   npx tsx tests/benchmarks/secondSpreadsheet.ts                     the counts
 *   npx tsx tests/benchmarks/secondSpreadsheet.ts --differences       each difference as one line
 *   npx tsx tests/benchmarks/secondSpreadsheet.ts --count 4 --seed 7  more books with a mistake in them
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { parseArgs } from "node:util";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { xlsxToBook } from "../../src/bench/xlsx/xlsxToBook";
import { isProblem } from "../../src/foundation/problem";
import { fileCorpus, type FileBook } from "../corpus/fileCorpus";
import { toFile } from "../corpus/toFile";
import { compareFresh } from "./secondSpreadsheet/compareFresh";
import { compareKept } from "./secondSpreadsheet/compareKept";
import { compareText, TEXTS } from "./secondSpreadsheet/compareText";
import { converted, findSoffice, versionOf } from "./secondSpreadsheet/soffice";
import type { Tally } from "./secondSpreadsheet/tally";

const { values: asked } = parseArgs({
  options: {
    differences: { type: "boolean", default: false },
    count: { type: "string", default: "2" },
    seed: { type: "string", default: "3" },
  },
});

/** What the bench makes of the files when it opens and saves them. */
async function benchCopies(files: string, folder: string): Promise<string> {
  const copies = path.join(folder, "copies");
  mkdirSync(copies);
  for (const name of readdirSync(files)) {
    const opened = await xlsxToBook(name, readFileSync(path.join(files, name)));
    if (isProblem(opened)) throw new Error(opened.message);
    writeFileSync(path.join(copies, name), await bookToXlsx(opened.book));
  }
  return copies;
}

async function writeBooks(books: readonly FileBook[], folder: string): Promise<string> {
  const files = path.join(folder, "books");
  mkdirSync(files);
  for (const [index, { book }] of books.entries()) {
    writeFileSync(path.join(files, `book${index}.xlsx`), await toFile(book));
  }
  return files;
}

function print(title: string, { files, unread, cells, differences }: Tally): void {
  const kinds = new Map<string, number>();
  for (const { kind } of differences) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const counts = [...kinds].map(([kind, count]) => `${kind} ${count}`).join(", ");
  const read = `${files - unread.length} of ${files} files read, ${cells} cells compared`;
  console.log(`${title}: ${read}; different: ${counts || "none"}`);
  for (const line of unread) console.log(`  not read: ${line}`);
  if (asked.differences) for (const { line } of differences) console.log(`  ${line}`);
}

async function run(soffice: string, folder: string): Promise<void> {
  const books = fileCorpus(Number(asked.count), Number(asked.seed));
  const files = await writeBooks(books, folder);
  const layouts = new Set(books.map(({ layout }) => layout)).size;
  console.log(`${versionOf(soffice)}, ${books.length} books of ${layouts} layouts`);
  const kept = { soffice, folder, to: "xlsx", recalculates: false };
  const bytes = (at: string, ending = "xlsx") =>
    books.map((_, index) => readFileSync(path.join(at, `book${index}.${ending}`)));
  const again = converted(files, "again", kept);
  print("Saved again", await compareKept(books, bytes(again)));
  const own = converted(files, "own", { ...kept, to: "ods" });
  print("Through its own format", await compareKept(books, bytes(converted(own, "back", kept))));
  const copied = converted(await benchCopies(files, folder), "copied", kept);
  print("Saved by the bench, then there", await compareKept(books, bytes(copied)));
  const fresh = converted(files, "fresh", { ...kept, recalculates: true });
  for (const [title, tally] of await compareFresh(books, bytes(fresh))) print(title, tally);
  for (const { title, options, mark } of TEXTS) {
    const text = converted(files, title, { ...kept, to: options });
    print(title, compareText(books, bytes(text, "csv"), mark));
  }
}

const soffice = findSoffice();
if (soffice === null) {
  console.log("LibreOffice Calc is not installed (no command soffice; SOFFICE may name it).");
  process.exitCode = 1;
} else {
  const folder = mkdtempSync(path.join(tmpdir(), "second-spreadsheet-"));
  void run(soffice, folder).finally(() => {
    rmSync(folder, { recursive: true });
  });
}
