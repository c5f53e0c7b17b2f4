import { decimalQuestion, type DecimalQuestion } from "./decimalQuestion";

export type DecimalMark = "," | ".";

const ONE_MARK = /^[-+−]?(\d+)([.,])(\d+)\s?%?$/;
const BOTH_MARKS = /^[-+−]?\d{1,3}(?:([.,])\d{3})+([.,])\d+\s?%?$/;
const GROUPED = /^[-+−]?\d{1,3}([.,])\d{3}(?:\1\d{3})+\s?%?$/;

const other = (mark: string): DecimalMark => (mark === "," ? "." : ",");

/** Which mark a field uses for decimals; "either" for "1,234", null when it does not tell. */
export function markOf(field: string): DecimalMark | "either" | null {
  const [, group, last] = BOTH_MARKS.exec(field) ?? [];
  if (last !== undefined && last !== group) return last as DecimalMark;
  const [, grouping] = GROUPED.exec(field) ?? [];
  if (grouping !== undefined) return other(grouping);
  const [, before, mark, after] = ONE_MARK.exec(field) ?? [];
  if (before === undefined || mark === undefined) return null;
  const mayGroup = after?.length === 3 && before.length <= 3 && !before.startsWith("0");
  return mayGroup ? "either" : (mark as DecimalMark);
}

/**
 * The mark that a file's numbers use for decimals, by the fields that leave no doubt. Where none does, a comma
 * between the fields speaks for the point; else it is asked, not guessed.
 */
export function decimalMark(
  rows: readonly (readonly string[])[],
  delimiter: string,
): DecimalMark | DecimalQuestion {
  const counts = { ",": 0, ".": 0 };
  let doubtful: string | null = null;
  for (const row of rows) {
    for (const field of row) {
      const mark = markOf(field.trim());
      if (mark === "either") doubtful ??= field.trim();
      else if (mark !== null) counts[mark] += 1;
    }
  }
  if (counts[","] !== counts["."]) return counts[","] > counts["."] ? "," : ".";
  if (counts[","] > 0) {
    return decimalQuestion(
      `The file has as many numbers with a decimal comma as with a decimal point (${counts[","]} each).`,
    );
  }
  if (doubtful === null || delimiter === ",") return ".";
  const [comma, point] = doubtful.includes(",")
    ? [doubtful, doubtful.replaceAll(",", "")]
    : [doubtful.replaceAll(".", ""), doubtful];
  return decimalQuestion(
    `"${doubtful.slice(0, 20)}" can mean ${comma.slice(0, 20)} with a decimal comma or ${point.slice(0, 20)} with a decimal point, and nothing else in the file tells.`,
  );
}
