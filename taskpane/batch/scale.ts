import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import { rowsOf, type MixRow } from "../bowl/askMix";
import type { RecipeInGrams } from "../bowl/toGrams";

/** How large the batch is to be. Moulds are filled by mass or, with the mix's density, by volume. */
export type BatchSize =
  | { readonly kind: "grams"; readonly grams: number }
  | { readonly kind: "pieces"; readonly pieces: number; readonly gramsEach: number }
  | {
      readonly kind: "moulds";
      readonly pieces: number;
      readonly millilitresEach: number;
      /** Air beaten in, as a fraction of the mix's own volume. */
      readonly overrunFraction: number;
    };

export interface ScaledBatch {
  readonly factor: number;
  readonly rows: readonly (MixRow & { readonly before: number })[];
  readonly totalGrams: number;
  /** g/mL of the mix with its air, when moulds were filled by volume. */
  readonly density: number | null;
}

/** What a filled mould gains while it freezes: water takes up a tenth more room as ice. Fill moulds only so far. */
export const HEADROOM_FRACTION = 0.92;

function gramsAskedFor(size: BatchSize, density: number | null): number | null {
  if (size.kind === "grams") return size.grams;
  if (size.kind === "pieces") return size.pieces * size.gramsEach;
  return density === null ? null : size.pieces * size.millilitresEach * HEADROOM_FRACTION * density;
}

/** All amounts by one factor, so that the batch is as large as asked; null where no density is known. */
export function scaleBatch(
  { items, grams }: RecipeInGrams,
  own: Matrix | null,
  size: BatchSize,
): ScaledBatch | null {
  const rows = rowsOf({ items, grams });
  const total = rows.reduce((sum, row) => sum + row.grams, 0);
  const asked =
    size.kind === "moulds"
      ? callFunction("DENSITY", items, grams, size.overrunFraction, own)[0]?.[0]
      : null;
  const density = typeof asked === "number" ? asked : null;
  const wished = gramsAskedFor(size, density);
  if (wished === null || total <= 0) return null;
  const factor = wished / total;
  return {
    factor,
    rows: rows.map((row) => ({ ...row, before: row.grams, grams: row.grams * factor })),
    totalGrams: wished,
    density,
  };
}
