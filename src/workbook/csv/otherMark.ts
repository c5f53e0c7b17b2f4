import { markOf, type DecimalMark } from "./decimalMark";

const LONGEST = 40;

/**
 * A sentence about the numbers that are written with the mark that the file does not use, as 1.5 among 12,5:
 * they stay texts. Null where there are none.
 */
export function otherMark(rows: readonly (readonly string[])[], mark: DecimalMark): string | null {
  let count = 0;
  let first = "";
  for (const row of rows) {
    for (const field of row) {
      const own = markOf(field.trim());
      if (own === null || own === "either" || own === mark) continue;
      if (count === 0) first = field.trim().slice(0, LONGEST);
      count += 1;
    }
  }
  return count === 0
    ? null
    : `Numbers with the other decimal mark stay texts: ${count}, the first "${first}".`;
}
