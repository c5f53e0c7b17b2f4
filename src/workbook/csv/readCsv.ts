import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { MAX_COLUMNS, MAX_ROWS } from "../address";
import type { Workbook } from "../model";
import { sheetFromRows } from "../sheetFromRows";
import { fileSizeProblem, LIMITS } from "../xlsx/limits";
import { csvCell } from "./csvCell";
import { decimalMark, type DecimalMark } from "./decimalMark";
import type { DecimalQuestion } from "./decimalQuestion";
import { decodeText } from "./decodeText";
import { otherMark } from "./otherMark";
import { splitFields, type Delimiter } from "./splitFields";

export interface ReadCsv {
  readonly workbook: Workbook;
  /** How the file was read, in sentences. */
  readonly reading: readonly string[];
}

const WORDS: Readonly<Record<Delimiter, string>> = {
  "\t": "tabs",
  ";": "semicolons",
  ",": "commas",
  "|": "bars",
};

function tooLarge(rows: readonly (readonly string[])[]) {
  const columns = rows.reduce((widest, { length }) => Math.max(widest, length), 0);
  if (rows.length > MAX_ROWS || columns > MAX_COLUMNS) {
    return badInput(
      `The file has ${rows.length} rows and ${columns} columns; a sheet has at most ${MAX_ROWS} and ${MAX_COLUMNS}.`,
    );
  }
  const cells = rows.reduce((sum, { length }) => sum + length, 0);
  return cells > LIMITS.cells
    ? badInput(`The file has more than ${LIMITS.cells} cells, the most that are read.`)
    : null;
}

/**
 * Reads a text file of rows and fields (CSV, TSV) as a workbook of one sheet. Delimiter, quotes and encoding
 * are told from the file, and so is the decimal mark, unless it is given; where the file leaves it open, the
 * answer is the question.
 */
export function readCsv(
  bytes: Uint8Array,
  sheetName: string,
  givenMark: DecimalMark | null = null,
): Result<ReadCsv> | DecimalQuestion {
  if (bytes.length === 0) return badInput("The file is empty.");
  const size = fileSizeProblem(bytes.length);
  if (size !== null) return size;
  const decoded = decodeText(bytes);
  if (isProblem(decoded)) return decoded;
  const split = splitFields(decoded.text);
  if (isProblem(split)) return split;
  const { rows, delimiter } = split;
  const large = tooLarge(rows);
  if (large !== null) return large;
  const mark = givenMark ?? decimalMark(rows, delimiter);
  if (typeof mark !== "string") return mark;
  const cells = rows.map((row) => row.map((field) => csvCell(field, mark)));
  const how = `Fields were split at ${WORDS[delimiter]}; the decimal mark is the ${mark === "," ? "comma" : "point"}.`;
  return {
    workbook: {
      sheets: [sheetFromRows(sheetName, cells)],
      names: [],
      calculation: "automatic",
      externalLinks: [],
    },
    reading: [how, otherMark(rows, mark), decoded.assumed].filter((sentence) => sentence !== null),
  };
}
