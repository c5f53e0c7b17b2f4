import type { ReportedFinding } from "../../src/audit/report/auditReport";
import { parseCellName } from "../../src/workbook/address";
import type { Workbook } from "../../src/workbook/model";
import type { SheetEdit } from "../host";
import { asReadAgain } from "../office/cellContent";

/** A change of a finding's fix, with the number format the cell has before it. */
export interface FixEdit extends SheetEdit {
  readonly formatBefore: string;
}

const AS_TEXT = "@";

/** What a finding's fix would write. A cell formatted as text gets another format, or it would take no number. */
export function fixEdits(finding: ReportedFinding, { sheets }: Workbook): readonly FixEdit[] {
  return (finding.edits ?? []).map((edit) => {
    const at = parseCellName(edit.cell);
    const sheet = sheets.find(({ name }) => name === edit.sheet);
    const formatBefore =
      (at === null ? undefined : sheet?.cellAt(at.row, at.column)?.format) ?? "General";
    const isText = typeof edit.to === "string" && !edit.to.startsWith("=");
    return formatBefore === AS_TEXT && !isText
      ? { ...edit, formatBefore, format: "General" }
      : { ...edit, formatBefore };
  });
}

/** The changes that take written ones back: again only where the cell still holds what was written. */
export const undoingEdits = (written: readonly FixEdit[]): readonly SheetEdit[] =>
  written.map(({ sheet, cell, from, to, format, formatBefore }) => ({
    sheet,
    cell,
    from: to,
    to: typeof from === "boolean" ? asReadAgain(from) : from,
    ...(format === undefined ? {} : { format: formatBefore }),
  }));
