import { auditWorkbook } from "../../../src/audit/auditWorkbook";
import { isProblem } from "../../../src/foundation/problem";
import { eachCell } from "../../../src/workbook/eachCell";
import type { Workbook } from "../../../src/workbook/model";
import { readWorkbook } from "../../../src/workbook/readWorkbook";
import type { Recalculation } from "../../../src/workbook/recalculation";
import { bookDifferences, type Difference } from "../../corpus/bookDifferences";
import type { FileBook } from "../../corpus/fileCorpus";
import { toWorkbook } from "../../corpus/toWorkbook";
import { addTo, newTally, type Tally } from "./tally";

/** The other spreadsheet writes 15 digits. */
const RELATIVE = 1e-12;

function count({ sheets }: Workbook): number {
  let cells = 0;
  for (const sheet of sheets) eachCell(sheet, () => (cells += 1));
  return cells;
}

const findingsIn = (workbook: Workbook, recalculated: Recalculation): string[] =>
  auditWorkbook(workbook, { recalculated }).findings.map(
    ({ rule, sheet, cell, message }) => `${rule} ${sheet}!${cell} "${message}"`,
  );

function findingDifferences(one: readonly string[], other: readonly string[]): Difference[] {
  const told = (list: readonly string[], without: readonly string[], how: string) =>
    list
      .filter((line) => !without.includes(line))
      .map((line) => ({ kind: `finding ${how}`, line: `finding ${how}: ${line}` }));
  return [...told(one, other, "lost"), ...told(other, one, "new")];
}

/** Functions of ours, and of add-ins, have no value there. */
const withoutName = ({ kind, line }: Difference): Difference =>
  kind === "value" && line.endsWith('then {"error":"#NAME?"}')
    ? { kind: "function not known there", line }
    : { kind, line };

/** Holds files that the other spreadsheet saved, without calculating, against the books they were. */
export async function compareKept(
  books: readonly FileBook[],
  files: readonly Uint8Array[],
): Promise<Tally> {
  const tally = newTally();
  for (const [index, { title, book }] of books.entries()) {
    tally.files += 1;
    const read = await readWorkbook(files[index]!);
    if (isProblem(read)) {
      tally.unread.push(`${title}: ${read.message}`);
      continue;
    }
    const { workbook, recalculated } = toWorkbook(book);
    tally.cells += count(workbook);
    addTo(tally, title, bookDifferences(workbook, read, RELATIVE).map(withoutName));
    const [one, other] = [workbook, read].map((each) => findingsIn(each, recalculated));
    addTo(tally, title, findingDifferences(one!, other!));
  }
  return tally;
}
