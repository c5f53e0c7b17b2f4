import { cellName, parseCellName } from "../../workbook/address";
import type { Effect } from "../finding";
import { rounded } from "../effect";
import type { Reader } from "./numericReaders";
import type { TextNumber } from "./textNumbersElsewhere";

const PLAIN_SUM = /^\s*SUM\s*\([^()]*\)\s*$/i;
const PRODUCT = /^\s*[$A-Z0-9.]+(\s*[*/]\s*[$A-Z0-9.]+)*\s*$/i;

/** The product that a formula of references and numbers makes once the text is a number; null for other formulas. */
function productOf({ sheet, formula }: Reader, text: TextNumber): number | null {
  if (!PRODUCT.test(formula)) return null;
  let result = 1;
  for (const [, sign = "*", term = ""] of `*${formula}`.matchAll(/([*/])\s*([$A-Z0-9.]+)/gi)) {
    const place = parseCellName(term.replaceAll("$", ""));
    const isText = place?.row === text.row && place.column === text.column && sheet === text.sheet;
    const value = place === null ? Number(term) : sheet.cellAt(place.row, place.column)?.value;
    const number = isText ? text.read.number : value;
    if (typeof number !== "number" || !Number.isFinite(number)) return null;
    result = sign === "*" ? result * number : result / number;
  }
  return Number.isFinite(result) ? result : null;
}

function effectOn(reader: Reader, text: TextNumber): Effect | null {
  const { value, formula } = reader;
  if (PLAIN_SUM.test(formula) && typeof value === "number")
    return {
      quantity: "total",
      from: rounded(value, 3),
      to: rounded(value + text.read.number, 3),
      unit: "",
    };
  const product = typeof value === "object" && value !== null ? productOf(reader, text) : null;
  return product === null || typeof value !== "object" || value === null
    ? null
    : {
        quantity: `value of ${cellName(reader.row, reader.column)}`,
        from: value.error,
        to: rounded(product, 3),
        unit: "",
      };
}

/** What it does to a sum or a product that the text is no number; null where that cannot be told. */
export function effectOfText(text: TextNumber): Effect | null {
  for (const reader of text.readers) {
    const effect = effectOn(reader, text);
    if (effect !== null) return effect;
  }
  return null;
}
