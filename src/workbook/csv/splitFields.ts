import Papa from "papaparse";
import { badInput } from "../../foundation/problem";
import type { Result } from "../../foundation/result";

export type Delimiter = "\t" | ";" | "," | "|";

const DELIMITERS: readonly Delimiter[] = ["\t", ";", "|", ","];
const PREVIEW_ROWS = 200;

/** How many rows have the most frequent number of fields, where that is more than one. */
function agreement(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) {
    if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}

const parse = (text: string, delimiter: Delimiter, preview = 0) =>
  Papa.parse<string[]>(text, { delimiter, preview, skipEmptyLines: preview > 0 });

/** The delimiter by which most rows have equally many fields; of two that do, the rarer in plain text. */
function likelyDelimiter(text: string): Delimiter {
  const scores = DELIMITERS.map((delimiter) => ({
    delimiter,
    score: agreement(parse(text, delimiter, PREVIEW_ROWS).data),
  }));
  return scores.reduce((best, each) => (each.score > best.score ? each : best)).delimiter;
}

/** "sep=;" on the first line, as spreadsheets write and read it. */
const SEPARATOR_LINE = /^sep=([\t;,|])\r?\n/i;

/** The fields of a text by row, and the delimiter between them. */
export function splitFields(
  text: string,
): Result<{ readonly rows: readonly (readonly string[])[]; readonly delimiter: Delimiter }> {
  const [line = "", stated] = SEPARATOR_LINE.exec(text) ?? [];
  const body = text.slice(line.length);
  const delimiter = (stated as Delimiter | undefined) ?? likelyDelimiter(body);
  const { data, errors } = parse(body, delimiter);
  const quotes = errors.find(({ type }) => type === "Quotes");
  if (quotes !== undefined) {
    return badInput(`A quotation mark of row ${(quotes.row ?? 0) + 1} is not closed.`);
  }
  return { rows: data, delimiter };
}
