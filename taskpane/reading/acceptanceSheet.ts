import type { AcceptedFinding, Acceptance } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import type { CellBlock, Contents } from "../host";
import { asReadAgain, asText } from "../office/cellContent";

/** In the first cell of the sheet, in every language: so that it is found again whatever the sheet is called. */
const MARK = "Rimeline: accepted findings";
const FIRST_ROW = 2;
const COLUMNS = 5; // key, reason, place, finding, date

export interface StoredAcceptances {
  /** The name of the sheet they are kept on; null when the workbook has none. */
  readonly sheet: string | null;
  readonly acceptances: readonly Acceptance[];
}

/** What the workbook keeps of accepted findings. */
export function storedAcceptances({ sheets }: Workbook): StoredAcceptances {
  const sheet = sheets.find((one) => one.cellAt(0, 0)?.value === MARK);
  if (sheet === undefined) return { sheet: null, acceptances: [] };
  const acceptances: Acceptance[] = [];
  for (let row = FIRST_ROW; row < sheet.rowCount; row += 1) {
    const [key, reason] = [sheet.cellAt(row, 0)?.value, sheet.cellAt(row, 1)?.value];
    if (typeof key === "string" && key !== "") {
      acceptances.push({ finding: key, reason: typeof reason === "string" ? reason : "" });
    }
  }
  return { sheet: sheet.name, acceptances };
}

export const isAcceptanceSheet = ({ formulas, top, left }: CellBlock): boolean =>
  top === 0 && left === 0 && formulas[0]?.[0] === MARK;

const row = ({ finding, reason }: AcceptedFinding, date: string): string[] =>
  [finding.key, reason, `${finding.sheet}!${finding.cell}`, finding.message, date].map(asText);

/** The whole sheet, when there is none yet. */
export const acceptanceContents = (
  accepted: readonly AcceptedFinding[],
  headers: readonly string[],
  date: string,
): Contents => [[MARK], [...headers], ...accepted.map((one) => row(one, date))];

const kept = (cells: CellBlock["formulas"][number]): (string | number)[] => cells.map(asReadAgain);

/**
 * The five columns of a sheet that is there, brought up to date: a row stays in its place, one that was taken
 * back is blanked, new ones follow. `block` reaches down beneath all filled rows by as many as are accepted.
 */
export function updatedContents(
  block: CellBlock,
  accepted: readonly AcceptedFinding[],
  stale: readonly Acceptance[],
  date: string,
): Contents {
  const wanted = new Map(accepted.map((one) => [one.finding.key, one]));
  const reasons = new Map(stale.map(({ finding, reason }) => [finding, reason]));
  const rows = block.formulas.slice(FIRST_ROW).map((cells) => {
    const key = String(cells[0] ?? "");
    const one = wanted.get(key);
    wanted.delete(key);
    if (key === "" || (one?.reason ?? reasons.get(key)) === cells[1]) return kept(cells);
    return one === undefined ? new Array<string>(COLUMNS).fill("") : row(one, date);
  });
  // Beneath all that stood there: beside a row that was blanked may be someone's own note.
  const filled = rows.length - accepted.length;
  rows.splice(filled, wanted.size, ...[...wanted.values()].map((one) => row(one, date)));
  return [...block.formulas.slice(0, FIRST_ROW).map(kept), ...rows];
}

/** "A1:E12": the rows that are filled and as many more as could be added. */
export const acceptanceAddress = (filledRows: number, added: number): string =>
  `A1:E${Math.max(filledRows, FIRST_ROW) + added}`;
