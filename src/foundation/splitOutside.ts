const OPENING = "{([";
const CLOSING = "})]";

/** Splits a formula's text at a separator that stands outside of quotes and of brackets of any kind. */
export function splitOutside(text: string, separator: string): string[] {
  const parts = [""];
  let depth = 0;
  let quote: string | null = null;
  for (const sign of text) {
    if (quote !== null) quote = sign === quote ? null : quote;
    else if (sign === '"' || sign === "'") quote = sign;
    else if (OPENING.includes(sign)) depth += 1;
    else if (CLOSING.includes(sign)) depth -= 1;
    if (sign === separator && depth === 0 && quote === null) parts.push("");
    else parts.push(`${parts.pop() ?? ""}${sign}`);
  }
  return parts;
}
