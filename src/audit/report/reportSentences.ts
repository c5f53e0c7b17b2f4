import type { AuditReport } from "./auditReport";

const counted = (number: number, word: string): string =>
  `${number} ${word}${number === 1 ? "" : "s"}`;

/** "2 sheets, 3 recipes." */
export const extentSentence = ({ summary }: AuditReport): string =>
  `${counted(summary.sheets, "sheet")}, ${counted(summary.recipes, "recipe")}.`;

/** "1 error, 0 warnings, 2 notes, 1 accepted." */
export function resultSentence({ findings, summary }: AuditReport): string {
  const accepted = summary.accepted > 0 ? `, ${summary.accepted} accepted` : "";
  return findings.length === 0
    ? `No findings${accepted}.`
    : `${counted(summary.errors, "error")}, ${counted(summary.warnings, "warning")}, ${counted(summary.notes, "note")}${accepted}.`;
}

/** How the file was read and how far its formulas were calculated anew. */
export function methodSentences({ reading, summary }: AuditReport): string[] {
  const { calculated, reason } = summary.recalculation;
  const fresh =
    calculated > 0 ? [`Formulas behind recipes and results calculated anew: ${calculated}.`] : [];
  return [...reading, ...fresh, ...(reason === null ? [] : [reason])];
}

/** What was taken for what, block by block. */
export const takenSentences = ({ recipes }: AuditReport): string[] =>
  recipes.length === 0
    ? [
        "No recipe is seen: one has a column or row of known names and amounts beside or below them.",
      ]
    : recipes.map(({ sheet, taken }) => `${sheet}: ${taken}`);
