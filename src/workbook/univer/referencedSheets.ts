const SHEET =
  /"(?:[^"]|"")*"|'((?:[^']|'')+)'!|(?<![#\p{L}\p{N}_.])((?:\[[^\]]*\])?[\p{L}_][\p{L}\p{N}_.]*)!(?!["'\s])/gu;

/** Names of the sheets a formula refers to, as written; "[1]Costs" for a sheet of another workbook. */
export function referencedSheets(formula: string): readonly string[] {
  const found = [...formula.matchAll(SHEET)].map(
    ([, quoted, plain]) => plain ?? quoted?.replaceAll("''", "'"),
  );
  return found.filter((name) => name !== undefined);
}
