import { titlesForEngine } from "./tableTitles";

/** Splits a formula into its quoted texts (odd places, quotes included) and what stands between them. */
function splitQuoted(formula: string): string[] {
  return formula.split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/);
}

/** The place of the bracket that closes the one at `open`, or -1; quoted texts are skipped. */
function closingBracket(formula: string, open: number): number {
  let depth = 0;
  let quote = "";
  for (let place = open; place < formula.length; place += 1) {
    const character = formula.charAt(place);
    if (quote !== "") quote = character === quote ? "" : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === "(") depth += 1;
    else if (character === ")" && --depth === 0) return place;
  }
  return -1;
}

/** `@F(…)`, the top left value of an answer, as the function the file format writes for it: SINGLE(F(…)). */
function expandSingle(formula: string): string {
  const found = /@([A-Z_][A-Z0-9_.]*\()/i.exec(maskQuoted(formula));
  if (found === null) return formula;
  const close = closingBracket(formula, found.index + found[0].length - 1);
  if (close < 0) return formula;
  const before = formula.slice(0, found.index);
  const call = formula.slice(found.index + 1, close + 1);
  return expandSingle(`${before}SINGLE(${call})${formula.slice(close + 1)}`);
}

const maskQuoted = (formula: string): string =>
  splitQuoted(formula)
    .map((part, index) => (index % 2 === 1 ? "_".repeat(part.length) : part))
    .join("");

/** `Table[@col]` and `Table[@[a col]]` as the engine reads them: `Table[[#This Row],[col]]`. */
const expandThisRow = (formula: string): string =>
  splitQuoted(formula)
    .map((part, index) =>
      index % 2 === 1 ? part : part.replace(/\[@\[?([^[\]]+)\]?\]/g, "[[#This Row],[$1]]"),
    )
    .join("");

const SPILLED = /"(?:[^"]|"")*"|((?:'(?:[^']|'')+'!|[\w.]+!)?\$?[A-Z]{1,3}\$?\d{1,7})#(?![\w/])/gi;

/** `A1#`, all that the formula in A1 fills, as the function the file format writes for it. */
const expandSpilled = (formula: string): string =>
  formula.replace(SPILLED, (token: string, cell?: string) =>
    cell === undefined ? token : `ANCHORARRAY(${cell})`,
  );

/** A formula as users of spreadsheets write it, in the words of the file format. */
export function formulaForFile(formula: string): string {
  const spelled = formula.includes("#") ? expandSpilled(formula) : formula;
  return spelled.includes("@") ? expandSingle(expandThisRow(spelled)) : spelled;
}

/** A formula as users of spreadsheets write it, in the words the grid's engine understands. */
export const formulaForEngine = (formula: string): string =>
  formulaForFile(formula.includes("[") ? titlesForEngine(formula) : formula);
