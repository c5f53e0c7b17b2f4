import { isProblem } from "../../foundation/problem";
import type { Workbook } from "../../workbook/model";
import { openArchive } from "../../workbook/xlsx/archive";
import type { SheetLooks } from "./readLooks";

/** Parts of a file that the grid has no place for: what they are called, and how their part is named. */
const PARTS: readonly (readonly [what: string, part: RegExp])[] = [
  ["charts", /^xl\/charts\/chart/],
  ["pictures", /^xl\/media\//],
  ["comments", /^xl\/(comments|threadedcomments)/],
  ["pivot tables", /^xl\/pivottables\//],
  ["macros", /vbaproject\.bin$/],
];

function lostThings(
  bytes: Uint8Array,
  workbook: Workbook,
  looks: ReadonlyMap<string, SheetLooks> | null,
): string[] {
  const archive = openArchive(bytes);
  const names = isProblem(archive) ? [] : [...archive.entries.keys()];
  const lost = PARTS.filter(([, part]) => names.some((name) => part.test(name))).map(
    ([what]) => what,
  );
  lost.push(...new Set([...(looks?.values() ?? [])].flatMap((sheet) => sheet.notCarried)));
  if (workbook.sheets.some(({ filtered = [] }) => filtered.length > 0)) {
    lost.push("filters (what they hide stays hidden)");
  }
  if (workbook.externalLinks.length > 0)
    lost.push("links to other workbooks (their last values are there)");
  if (workbook.sheets.some(({ tables }) => tables.some(({ hasTotals }) => hasTotals))) {
    lost.push("the totals rows of tables as such (their cells are there)");
  }
  if (looks === null) lost.push("fonts, colours and column widths");
  return lost;
}

/** Sentences about what of a file is not shown here. */
export function notCarried(
  bytes: Uint8Array,
  workbook: Workbook,
  looks: ReadonlyMap<string, SheetLooks> | null,
): readonly string[] {
  const lost = lostThings(bytes, workbook, looks);
  const notes: string[] = [];
  if (lost.length > 0) {
    notes.push(`Not carried over: ${lost.join(", ")}. Your file itself is unchanged.`);
  }
  if (workbook.calculation !== "automatic") {
    notes.push("The workbook is set to manual calculation; here everything is calculated at once.");
  }
  if (workbook.datesFrom1904 === true) {
    notes.push(
      "The workbook counts its days from 1904: dates show four years and a day too early here and in saved copies.",
    );
  }
  return notes;
}
