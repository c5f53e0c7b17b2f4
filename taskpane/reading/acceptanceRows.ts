import type { AcceptedFinding, Acceptance, AuditReport } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import type { KeptRow, KeptSheet } from "./keptSheet";
import type { Kept } from "./useKept";

/** The sheet of accepted findings: key, reason, place, finding, date. */
export const acceptanceSheet: KeptSheet = {
  mark: "Rimeline: accepted findings",
  columns: 5,
  keyOf: (cells) => String(cells[0] ?? ""),
};

const FIRST_ROW = 2;

/** What the workbook keeps of accepted findings. */
export function storedAcceptances({ sheets }: Workbook): Kept<Acceptance> {
  const sheet = sheets.find((one) => one.cellAt(0, 0)?.value === acceptanceSheet.mark);
  if (sheet === undefined) return { sheet: null, entries: [] };
  const entries: Acceptance[] = [];
  for (let row = FIRST_ROW; row < sheet.rowCount; row += 1) {
    const [key, reason] = [sheet.cellAt(row, 0)?.value, sheet.cellAt(row, 1)?.value];
    if (typeof key === "string" && key !== "") {
      entries.push({ finding: key, reason: typeof reason === "string" ? reason : "" });
    }
  }
  return { sheet: sheet.name, entries };
}

const saysReason = (reason: string): KeptRow["isSaidBy"] => {
  return (cells) => cells[1] === reason;
};

const rowOf = ({ finding, reason }: AcceptedFinding, date: string): KeptRow => ({
  key: finding.key,
  cells: [finding.key, reason, `${finding.sheet}!${finding.cell}`, finding.message, date],
  isSaidBy: saysReason(reason),
});

/** What is kept of a report: what was accepted; of what fits nothing any more the rows that are there. */
export const acceptanceRows = (
  { accepted, staleAcceptances }: AuditReport,
  date: string,
): readonly KeptRow[] => [
  ...accepted.map((one) => rowOf(one, date)),
  ...staleAcceptances.map(({ finding, reason }) => ({
    key: finding,
    cells: null,
    isSaidBy: saysReason(reason),
  })),
];
