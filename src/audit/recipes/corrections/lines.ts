import { columnIndex, columnName, MAX_COLUMNS, MAX_ROWS } from "../../../workbook/address";

/** Whether lines are columns ("B, D:F") or rows ("4, 6:9"). */
export type LineKind = "columns" | "rows";

const PARTS: Readonly<Record<LineKind, RegExp>> = {
  columns: /^([A-Z]{1,3})(?::([A-Z]{1,3}))?$/i,
  rows: /^(\d{1,7})(?::(\d{1,7}))?$/,
};

function spanFrom(part: string, kind: LineKind): number[] | null {
  const [, first, last = first] = PARTS[kind].exec(part.trim()) ?? [];
  if (first === undefined || last === undefined) return null;
  const lineOf = (text: string) => (kind === "columns" ? columnIndex(text) : Number(text) - 1);
  const [from, to] = [lineOf(first), lineOf(last)].sort((one, other) => one - other);
  if (from === undefined || to === undefined || from < 0) return null;
  if (to >= (kind === "columns" ? MAX_COLUMNS : MAX_ROWS)) return null;
  return Array.from({ length: to - from + 1 }, (_, at) => from + at);
}

/** Zero-based lines of "B, D:F" or "4, 6:9", ascending; null when the text is no such list. */
export function linesFrom(text: string, kind: LineKind): readonly number[] | null {
  const spans = text.split(",", MAX_COLUMNS).map((part) => spanFrom(part, kind));
  if (spans.some((span) => span === null)) return null;
  return [...new Set(spans.flatMap((span) => span ?? []))].sort((one, other) => one - other);
}

/** The list of ascending lines as it is written, neighbours drawn together. */
export function linesText(lines: readonly number[], kind: LineKind): string {
  const nameOf = (line: number) => (kind === "columns" ? columnName(line) : String(line + 1));
  const spans: { from: number; to: number }[] = [];
  for (const line of lines) {
    const last = spans.at(-1);
    if (last !== undefined && last.to + 1 === line) last.to = line;
    else spans.push({ from: line, to: line });
  }
  return spans
    .map(({ from, to }) => (from === to ? nameOf(from) : `${nameOf(from)}:${nameOf(to)}`))
    .join(", ");
}
