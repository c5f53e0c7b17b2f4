import { put, putRow, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { block } from "./lines";

interface Listing {
  readonly top: number;
  readonly left: number;
  readonly headings: readonly string[];
  /** What stands in the row of an ingredient. */
  readonly line: (index: number) => readonly Content[];
  /** Where names and amounts stand in that row. */
  readonly name: number;
  readonly amount: number;
  readonly sum: string;
  readonly format?: string;
}

interface Listed {
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  readonly total: Spot;
  /** The row of the sum. */
  readonly row: number;
}

/** Headings, a line for each ingredient, and what they add up to. */
export function listed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: Listing): Listed {
  const { top, left, headings, line, name, amount, sum, format } = plan;
  const heads = putRow(sheet, top, left, headings);
  const place = { row: top + 1, column: left };
  const rows = block(
    ...([sheet, place] as const),
    made.names.map((_, index) => line(index)),
  );
  const row = top + 1 + rows.length;
  put(sheet, row, left + name, sum);
  const [names, amounts] = [columnOf(rows, name), columnOf(rows, amount)];
  const total = sumOf(kit, sheet, { row, column: left + amount }, amounts, format);
  return { heads, rows, names, amounts, total, row };
}
