import type { Matrix } from "../foundation/cell";
import { plainWords } from "./recipes/headings/plainWords";

/**
 * The catalogue's name for an item of a recipe: what the own-ingredients range says it is the same as, else
 * the name itself. Null for an ingredient that the user describes by its parts.
 */
export function catalogueName(item: string, ownIngredients: Matrix | null): string | null {
  const [headers = [], ...rows] = ownIngredients ?? [];
  const at = (wanted: string) =>
    headers.findIndex((header) => typeof header === "string" && plainWords(header) === wanted);
  const [nameAt, sameAt] = [at("name"), at("same as")];
  const plain = plainWords(item);
  const own = rows.find((row) => {
    const name = row[nameAt];
    return typeof name === "string" && plainWords(name) === plain;
  });
  if (own === undefined) return item;
  const same = own[sameAt];
  return typeof same === "string" && same.trim() !== "" ? same : null;
}
