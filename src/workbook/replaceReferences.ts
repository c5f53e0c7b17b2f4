/** A cell or a range as a formula writes it. */
export interface WrittenReference {
  /** All of it: "'Week 1'!$B$3:$B$9". */
  readonly written: string;
  /** The sheet it names; null where it is the formula's own. */
  readonly sheet: string | null;
  /** Without the sheet: "$B$3:$B$9". */
  readonly address: string;
}

/** Texts, cells of other workbooks and columns of tables stay as they are. */
const REFERENCE =
  /"(?:[^"]|"")*"|'(?:[^'[]|'')*\[(?:[^']|'')*'![$A-Z\d:]+|\[[^\]]*\](?:[\p{L}\p{N}_.]+![$A-Z\d:]+)?|((?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(?<![\p{L}\p{N}_.$:])(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?)(?![\p{L}\p{N}_(:!])/gu;

/** A formula with each of its references replaced; null leaves one as it is written. */
export const replaceReferences = (
  formula: string,
  replace: (reference: WrittenReference) => string | null,
): string =>
  formula.replace(REFERENCE, (written: string, prefix?: string, address?: string) => {
    if (address === undefined) return written;
    const name = prefix?.slice(0, -1).replace(/^'|'$/g, "").replaceAll("''", "'");
    return replace({ written, sheet: name ?? null, address }) ?? written;
  });
