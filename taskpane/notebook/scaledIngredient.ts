import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";

/** What is not dissolved and stays as it is. */
const UNDISSOLVED = new Set(["water", "fat", "protein", "ash", "inert", "total"]);

const [LEAST_FACTOR, MOST_FACTOR] = [0.02, 20];
const HALVINGS = 60;

type Part = readonly [name: string, grams: number];

function partsOf(item: string, own: Matrix | null): readonly Part[] {
  const [, ...rows] = callFunction("COMPOSITION", [[item]], [[100]], own);
  return rows.flatMap(([name, grams]) =>
    typeof name === "string" && typeof grams === "number" ? [[name, grams] as const] : [],
  );
}

/** The ingredient with all that is dissolved in it scaled, at the cost of its water; null past all its water. */
function scaledRows(
  item: string,
  parts: readonly Part[],
  factor: number,
  source: string,
): Matrix | null {
  const scaled = parts
    .filter(([name]) => name !== "total" && name !== "water")
    .map(([name, grams]): Part => [name, UNDISSOLVED.has(name) ? grams : grams * factor]);
  const water = 100 - scaled.reduce((sum, [, grams]) => sum + grams, 0);
  if (water < 0) return null;
  const allergens = callFunction("INGREDIENT", item, "allergens")[0]?.[0];
  const known = typeof allergens === "string" ? allergens : "";
  return [
    ["name", "water", ...scaled.map(([name]) => name), "allergens", "source"],
    [item, water, ...scaled.map(([, grams]) => grams), known, source],
  ];
}

/** An ingredient made to agree with a measurement. */
export interface ScaledIngredient {
  /** Its dissolved matter counts so many times what it counted. */
  readonly factor: number;
  /** Own ingredients, header row first: the ingredient as corrected. */
  readonly rows: Matrix;
}

export interface Measurement {
  readonly item: string;
  readonly own: Matrix | null;
  /** Goes into the source column. */
  readonly source: string;
  readonly measured: number;
  /** What the functions answer when the ingredient is as these rows say; null where they decline. */
  readonly answer: (rows: Matrix) => number | null;
}

/**
 * Scales what is dissolved in an ingredient until a function answers what was measured. The shares among its
 * sugars, salts and acids stay. Null where no factor from 0.02 to 20 does that.
 */
export function scaledIngredient(measurement: Measurement): ScaledIngredient | null {
  const { item, own, source, measured, answer } = measurement;
  const parts = partsOf(item, own);
  const offAt = (factor: number): number | null => {
    const rows = scaledRows(item, parts, factor, source);
    const found = rows === null ? null : answer(rows);
    return found === null ? null : found - measured;
  };
  let [low, high] = [LEAST_FACTOR, MOST_FACTOR];
  const atLow = offAt(low);
  if (parts.length === 0 || atLow === null) return null;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = Math.sqrt(low * high);
    const off = offAt(middle);
    // Beyond what the functions answer lies too much of it.
    if (off === null || Math.sign(off) !== Math.sign(atLow)) high = middle;
    else low = middle;
  }
  const rows = scaledRows(item, parts, low, source);
  const left = offAt(low);
  const isReached = left !== null && Math.abs(left) < 1e-6 * Math.max(1, Math.abs(measured));
  return rows === null || !isReached ? null : { factor: low, rows };
}
