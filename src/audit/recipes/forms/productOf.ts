import { parseCellName } from "../../../workbook/address";
import type { Place } from "../recipeBlock";

/** What a formula that only multiplies and divides has above and below its line. */
export interface Product {
  readonly above: readonly Place[];
  readonly below: readonly Place[];
  /** Numbers that it multiplies by. */
  readonly factors: readonly number[];
  readonly isNegative: boolean;
}

const CELL = "\\$?[A-Z]{1,3}\\$?\\d{1,7}";
const TOKEN = new RegExp(
  `\\s*(?:SUM\\((${CELL}):${CELL}\\)|(${CELL})(?![\\w(!:.])|(\\d+(?:\\.\\d+)?|\\.\\d+)|([-*/()]))\\s*`,
  "iy",
);
const LONGEST = 120;
/** "0-C15": so much below 0 °C. */
const FROM_ZERO = /^\s*\+?\s*0\s*-/;

function tokensOf(formula: string): string[] | null {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < formula.length) {
    const found = TOKEN.exec(formula);
    if (found === null) return null;
    tokens.push(found.slice(1).join("").replaceAll("$", ""));
  }
  return tokens;
}

/**
 * The cells that a formula like "B4/B5*1000/B8" multiplies and divides; of a sum among them the first. Null for any
 * other formula.
 */
export function productOf(formula: string): Product | null {
  const tokens = formula.length > LONGEST ? null : tokensOf(formula.replace(FROM_ZERO, "-"));
  if (tokens === null) return null;
  const sides = { above: [] as Place[], below: [] as Place[], factors: [] as number[] };
  let [at, isNegative, isWhole] = [0, false, true];
  const factor = (isBelow: boolean): void => {
    const token = tokens[at++] ?? "";
    if (token === "-") {
      isNegative = !isNegative;
      factor(isBelow);
    } else if (token === "(") {
      term(isBelow);
      isWhole &&= tokens[at++] === ")";
    } else if (/^[A-Z]/i.test(token)) {
      const place = parseCellName(token);
      if (place !== null) sides[isBelow ? "below" : "above"].push(place);
    } else {
      isWhole &&= /^[\d.]/.test(token);
      if (!isBelow) sides.factors.push(Number(token));
    }
  };
  const term = (isBelow: boolean): void => {
    factor(isBelow);
    while (tokens[at] === "*" || tokens[at] === "/") factor(isBelow !== (tokens[at++] === "/"));
  };
  term(false);
  return isWhole && at === tokens.length ? { ...sides, isNegative } : null;
}
