import type { Matrix } from "../../src/foundation/cell";
import { normalName } from "../../src/catalogue/normalName";
import { callFunction } from "../../src/worksheet/callFunction";
import { rowsOf, type RecipeMix, type MixRow } from "../bowl/askMix";

/** A recipe with one of its rows, a base mix, written out as what that is made of; equal names are added up. */
export function writeOut(
  recipe: readonly MixRow[],
  base: { readonly title: string; readonly rows: readonly MixRow[] },
): readonly MixRow[] {
  const total = base.rows.reduce((sum, { grams }) => sum + grams, 0);
  const parts = recipe.flatMap((row) =>
    normalName(row.name) === normalName(base.title) && total > 0
      ? base.rows.map(({ name, grams }) => ({ name, grams: (grams / total) * row.grams }))
      : [row],
  );
  const sums = new Map<string, MixRow>();
  for (const { name, grams } of parts) {
    const known = sums.get(normalName(name));
    sums.set(normalName(name), { name: known?.name ?? name, grams: (known?.grams ?? 0) + grams });
  }
  return [...sums.values()];
}

/** A mix with a base among its rows written out; the mix itself when it names none. */
export function withBaseWrittenOut(mix: RecipeMix, base: RecipeMix): RecipeMix {
  const rows = rowsOf(mix);
  if (!rows.some(({ name }) => normalName(name) === normalName(base.title))) return mix;
  const out = writeOut(rows, { title: base.title, rows: rowsOf(base) });
  return {
    ...mix,
    items: out.map(({ name }) => [name]),
    grams: out.map(({ grams }) => [grams]),
  };
}

/** Header words of own ingredients there are for every component but these. */
const WITHOUT_HEADER = new Set(["higher saccharides"]);

/**
 * A mix as one own ingredient, g per 100 g, header row first: a base that other recipes then name. Null where a
 * function declines, or where a part has no header of its own (the long chains of a glucose syrup).
 */
export function asOwnIngredient(mix: RecipeMix, allergens: string): Matrix | null {
  const [, ...rows] = callFunction("COMPOSITION", mix.items, mix.grams, mix.own);
  const parts = rows.flatMap(([name, , share]) =>
    typeof name === "string" && typeof share === "number" && name !== "total"
      ? [[name, share * 100] as const]
      : [],
  );
  if (parts.length === 0 || parts.some(([name]) => WITHOUT_HEADER.has(name))) return null;
  return [
    ["name", ...parts.map(([name]) => name), "allergens"],
    [mix.title, ...parts.map(([, grams]) => grams), allergens],
  ];
}
