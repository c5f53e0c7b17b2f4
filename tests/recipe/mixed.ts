import { isProblem } from "../../src/foundation/problem";
import type { Mix } from "../../src/recipe/mix";
import { mixOf } from "../../src/recipe/mixOf";
import { namedItem, NO_OWN_INGREDIENTS } from "../../src/recipe/namedItem";

/** A recipe given as grams by name. */
export function mixed(grams: Readonly<Record<string, number>>): Mix {
  const parts = Object.entries(grams).map(([name, amount]) => {
    const item = namedItem(name, NO_OWN_INGREDIENTS, "items");
    if (isProblem(item)) throw new Error(item.message);
    return { item, grams: amount };
  });
  const mix = mixOf(parts);
  if (isProblem(mix)) throw new Error(mix.message);
  return mix;
}
