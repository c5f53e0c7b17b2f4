import { parseRangeName, rangeName } from "../../src/workbook/address";
import { latticeOf, textAt, turned, type Lattice } from "../bowl/lattice";
import type { RecognisedRecipe } from "../bowl/recognised";
import type { SpreadsheetHost } from "../host";

/** So many columns beside the names (or rows below them) are looked through for prices. */
const SEARCHED = 40;

const PRICE_WORD = /price|preis|cost|kosten|[€$£]|\b(eur|usd|chf)\b/i;

/** "Price per kg", "€/kg", "Preis je 100 g" → what makes it a price of 1 kg; null for any other header. */
export function perKgFactor(header: string): number | null {
  if (!PRICE_WORD.test(header)) return null;
  if (/(\/|\bper\b|\bje\b|\bpro\b|\bof\b|\bvon\b)\s*(1\s*)?kg\b/i.test(header)) return 1;
  return /(\/|\bper\b|\bje\b|\bpro\b|\bof\b|\bvon\b)\s*100\s*g\b/i.test(header) ? 10 : null;
}

function pricesIn(lattice: Lattice, rows: readonly number[]): readonly (number | null)[] | null {
  for (let column = 0; column < lattice.columnCount; column += 1) {
    const factor = perKgFactor(textAt(lattice, 0, column));
    if (factor === null) continue;
    return rows.map((row) => {
      const value = lattice.value(row, column);
      return typeof value === "number" && value >= 0 ? value * factor : null;
    });
  }
  return null;
}

/** Prices of 1 kg along the recipe's lines, from a column (or row) whose header says so; null without one. */
export async function readPrices(
  host: SpreadsheetHost,
  recipe: RecognisedRecipe,
): Promise<readonly (number | null)[] | null> {
  const names = parseRangeName(recipe.nameRange);
  if (names === null) return null;
  const isDown = recipe.direction === "down";
  const head = isDown ? Math.max(names.top - 1, 0) : 0;
  const range = isDown
    ? { top: head, bottom: names.bottom, left: names.left, right: names.left + SEARCHED }
    : { left: head, right: names.right, top: names.top, bottom: names.top + SEARCHED };
  const block = latticeOf(await host.read(recipe.sheet, rangeName(range)));
  const rows = recipe.lines.map(({ cell }) => {
    const place = parseRangeName(cell);
    return (isDown ? (place?.top ?? 0) : (place?.left ?? 0)) - head;
  });
  return pricesIn(isDown ? block : turned(block), rows);
}
