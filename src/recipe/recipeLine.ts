import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { Cell } from "../foundation/cell";
import type { Item } from "./item";
import { namedItem, shortened, type OwnIngredients } from "./namedItem";
import { passedOn } from "./passedOn";
import { isTotalName } from "./totalRow";

/** What a cell of `items` stands for. */
export type RecipeLine =
  | { readonly kind: "blank" }
  | { readonly kind: "total"; readonly word: string }
  | { readonly kind: "item"; readonly item: Item }
  | { readonly kind: "problem"; readonly word: string; readonly problem: Problem };

/** Reads one cell of `items`; `place` is how a sentence calls it. */
export function recipeLine(cell: Cell, own: OwnIngredients, place: string): RecipeLine {
  if (cell === null) return { kind: "blank" };
  if (isProblem(cell)) return { kind: "problem", word: "", problem: passedOn(cell, place) };
  if (typeof cell !== "string") {
    const problem = badInput(
      `${place}: ${String(cell).toUpperCase()} is not a name; the name of an ingredient is expected.`,
    );
    return { kind: "problem", word: String(cell), problem };
  }
  if (isTotalName(cell)) return { kind: "total", word: shortened(cell.trim()) };
  const item = namedItem(cell, own, place);
  if (isProblem(item)) return { kind: "problem", word: shortened(cell.trim()), problem: item };
  return { kind: "item", item };
}
