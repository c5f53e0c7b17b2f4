/** A number typed into a formula. */
export interface FormulaNumber {
  readonly text: string;
  readonly value: number;
  /** The function whose argument it stands in, upper case; "" for none. */
  readonly inFunction: string;
  /** The operator or bracket before and after it; "" at the ends. */
  readonly before: string;
  readonly after: string;
}

// Texts, sheet names, references and whole rows are passed over; then numbers, words and signs.
const TOKEN =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!?|\[[^\]]*\]|\{[^}]*\}|\$?\d+:\$?\d+|\$?[A-Z]{1,3}\$?\d{1,7}(?![\p{L}\p{N}_.(])|\d+(?:\.\d+)?(?:E[-+]?\d+)?|\.\d+|[\p{L}_\\][\p{L}\p{N}_.]*|<>|<=|>=|[^\s]/giu;

const NUMBER = /^(\d|\.\d)/;
const WORD = /^[\p{L}_\\][\p{L}\p{N}_.]*$/u;

const isNumber = (token: string): boolean => NUMBER.test(token) && !token.includes(":");

/** A formula with some of the numbers typed into it changed; the same formula where there is none such. */
export const withNumber = (
  formula: string,
  isMeant: (value: number) => boolean,
  to: number,
): string =>
  formula.replace(TOKEN, (token) =>
    isNumber(token) && isMeant(Number(token)) ? String(to) : token,
  );

/** The numbers that stand in a formula itself, with what is around them. */
export function formulaNumbers(formula: string): FormulaNumber[] {
  const tokens = formula.match(TOKEN) ?? [];
  const open: string[] = [];
  const numbers: FormulaNumber[] = [];
  for (const [at, token] of tokens.entries()) {
    const previous = tokens[at - 1] ?? "";
    if (token === "(") open.push(WORD.test(previous) ? previous.toUpperCase() : "");
    else if (token === ")") open.pop();
    else if (isNumber(token)) {
      const value = Number(token);
      const inFunction = [...open].reverse().find((name) => name !== "") ?? "";
      const after = tokens[at + 1] ?? "";
      if (Number.isFinite(value))
        numbers.push({ text: token, value, inFunction, before: previous, after });
    }
  }
  return numbers;
}
