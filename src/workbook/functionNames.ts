import { worksheetFunctions } from "../worksheet/functions";
import { NAMESPACE } from "../worksheet/namespace";

/** "RIME_FREEZINGPOINT" → "RIME.FREEZINGPOINT", for our own functions only: the split is never guessed. */
let ours: ReadonlyMap<string, string> | undefined;

function ownNames(): ReadonlyMap<string, string> {
  ours ??= new Map(
    worksheetFunctions.map(({ name }) => [
      `${NAMESPACE}_${name.replaceAll(".", "_")}`.toUpperCase(),
      `${NAMESPACE}.${name}`,
    ]),
  );
  return ours;
}

// Quoted texts and quoted sheet names come first, so that nothing inside them is touched.
const MARKED =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'|_xlfn\.(?:_xlws\.)?|_xlws\.|_xlpm\.|_xll\.(?=RIME\.)|_xldudf_\w+|(?<!\w)RIME\.[\w.]+(?=\()/gi;

/**
 * A formula with the names a user types: `_xldudf_RIME_FREEZINGPOINT(` becomes `RIME.FREEZINGPOINT(`, the
 * marks of newer functions are dropped, and another add-in's `_xldudf_…` is left as it stands. Spreadsheets that
 * do not know our functions write their names small; they become large again.
 */
export function withPlainFunctionNames(formula: string): string {
  if (!/_xl|rime\./i.test(formula)) return formula;
  return formula.replace(MARKED, (token) => {
    if (/^["']/.test(token)) return token;
    if (/^_xldudf_/i.test(token))
      return ownNames().get(token.slice("_xldudf_".length).toUpperCase()) ?? token;
    return token.startsWith("_") ? "" : token.toUpperCase();
  });
}
