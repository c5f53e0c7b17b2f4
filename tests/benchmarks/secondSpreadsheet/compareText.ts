import { isProblem } from "../../../src/foundation/problem";
import { cellName } from "../../../src/workbook/address";
import { isDecimalQuestion } from "../../../src/workbook/csv/decimalQuestion";
import type { DecimalMark } from "../../../src/workbook/csv/decimalMark";
import { readCsv } from "../../../src/workbook/csv/readCsv";
import type { WorkbookSheet, WorkbookValue } from "../../../src/workbook/model";
import { isSame, placesIn } from "../../corpus/bookDifferences";
import type { FileBook } from "../../corpus/fileCorpus";
import { toWorkbook } from "../../corpus/toWorkbook";
import { addTo, newTally, type Tally } from "./tally";

const RELATIVE = 1e-12;

// Delimiter, quotation mark, UTF-8, first row, formats of columns, language, quotes round texts, as shown or not.
const filter = (delimiter: string, language: number): string =>
  `csv:Text - txt - csv (StarCalc):${delimiter.charCodeAt(0)},34,76,1,,${language},false,true,false`;

/** Text files of values, in the languages of the corpus. */
export const TEXTS: readonly {
  readonly title: string;
  readonly options: string;
  readonly mark: DecimalMark;
}[] = [
  { title: "Text, points and commas", options: filter(",", 1033), mark: "." },
  { title: "Text, commas and semicolons", options: filter(";", 1031), mark: "," },
];

/** What a text file can tell of a value: an error is a word, and so is what is true. */
function asText(value: WorkbookValue | undefined): WorkbookValue {
  if (value === undefined || value === null || value === "") return null;
  if (typeof value === "object") return value.error;
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function compareSheet(tally: Tally, title: string, one: WorkbookSheet, other: WorkbookSheet): void {
  for (const { row, column } of placesIn(one, other)) {
    const pair = [one, other].map((each) => asText(each.cellAt(row, column)?.value));
    const [wanted = null, found = null] = pair;
    if (wanted === null && found === null) continue;
    tally.cells += 1;
    if (isSame(wanted, found, RELATIVE)) continue;
    const line = `value ${cellName(row, column)}: ${JSON.stringify(wanted)}, then ${JSON.stringify(found)}`;
    addTo(tally, title, [{ kind: "value", line }]);
  }
}

/** Holds text files that the other spreadsheet wrote of the first sheets against the books. */
export function compareText(
  books: readonly FileBook[],
  files: readonly Uint8Array[],
  mark: DecimalMark,
): Tally {
  const tally = newTally();
  for (const [index, { title, book }] of books.entries()) {
    tally.files += 1;
    const asked = readCsv(files[index]!, "text");
    const read = isDecimalQuestion(asked) ? readCsv(files[index]!, "text", mark) : asked;
    if (isProblem(read)) tally.unread.push(`${title}: ${read.message}`);
    else if (!isDecimalQuestion(read)) {
      const { workbook } = toWorkbook(book);
      compareSheet(tally, title, workbook.sheets[0]!, read.workbook.sheets[0]!);
    }
  }
  return tally;
}
