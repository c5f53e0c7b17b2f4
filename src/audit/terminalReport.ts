import type { AuditReport } from "./auditWorkbook";
import type { Effect, Finding } from "./finding";

const shown = (value: number | string): string => String(value).replace(/^-/, "−");

/** "freezing point −1.4 instead of −2.3 °C" */
export function effectText({ quantity, from, to, unit }: Effect): string {
  return `${quantity} ${shown(from)} instead of ${shown(to)} ${unit}`;
}

function findingLines({ severity, sheet, cell, message, effect, fix, rule }: Finding): string {
  const lines = [`${severity.toUpperCase()}  ${sheet}!${cell}  ${message}  [${rule}]`];
  lines.push(`       effect: ${effect === null ? "none on the answer" : effectText(effect)}`);
  if (fix !== undefined) lines.push(`       fix: ${fix}`);
  return lines.join("\n");
}

const counted = (number: number, word: string): string =>
  `${number} ${word}${number === 1 ? "" : "s"}`;

/** Control characters in a sheet's texts must not steer the terminal. */
const tame = (text: string): string => text.replace(/[^\P{Cc}\n]/gu, "�");

/** The report as text for a terminal. */
export function terminalReport(name: string, { findings, recipes, summary }: AuditReport): string {
  const found = `${name}: ${counted(summary.sheets, "sheet")}, ${counted(summary.recipes, "recipe")}.`;
  const taken =
    recipes.length === 0
      ? [
          "  No recipe is seen: one has a column or row of known names and amounts beside or below them.",
        ]
      : recipes.map(({ sheet, taken: sentence }) => `  ${sheet}: ${sentence}`);
  const result =
    findings.length === 0
      ? "No findings."
      : `${counted(summary.errors, "error")}, ${counted(summary.warnings, "warning")}, ${counted(summary.notes, "note")}.`;
  const spaced = findings.length > 0 ? [...findings.map(findingLines), ""] : [];
  return tame([found, ...taken, "", ...spaced, result].join("\n"));
}
