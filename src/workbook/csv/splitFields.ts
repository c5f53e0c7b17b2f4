import Papa from "papaparse";
import { badInput } from "../../foundation/problem";
import type { Result } from "../../foundation/result";

export type Delimiter = "\t" | ";" | "," | "|";

const DELIMITERS: readonly Delimiter[] = ["\t", ";", "|", ","];
const PREVIEW_ROWS = 200;

type Agreement = readonly [number, number];

/** How many rows a delimiter splits at all, and how many of those into the most frequent number of fields. */
function agreement(rows: readonly (readonly string[])[]): Agreement {
  const split = rows.filter(({ length }) => length > 1);
  const counts = new Map<number, number>();
  for (const { length } of split) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [split.length, Math.max(0, ...counts.values())];
}

const parse = (text: string, delimiter: Delimiter, preview = 0) =>
  Papa.parse<string[]>(text, { delimiter, preview, skipEmptyLines: preview > 0 });

/**
 * The delimiter that splits most rows, for a decimal comma stands in some only; then the one by which most have
 * equally many fields; of two that do, the rarer in plain text.
 */
function likelyDelimiter(text: string): Delimiter {
  const scores = DELIMITERS.map((delimiter) => ({
    delimiter,
    score: agreement(parse(text, delimiter, PREVIEW_ROWS).data),
  }));
  const isBetter = ([split, alike]: Agreement, [most, best]: Agreement) =>
    split === most ? alike > best : split > most;
  return scores.reduce((best, each) => (isBetter(each.score, best.score) ? each : best)).delimiter;
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
