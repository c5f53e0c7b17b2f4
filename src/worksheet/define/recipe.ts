import { badInput } from "../../foundation/problem";
import { single } from "../../recipe/lattice";
import type { Mix } from "../../recipe/mix";
import { readRecipes } from "../../recipe/readRecipes";
import type { Argument } from "./argument";
import { isBlankCell } from "./hostValue";

const ITEMS = {
  name: "items",
  description: "Names of the ingredients, one row or one column",
  optional: false,
};
const GRAMS = {
  name: "grams",
  description:
    "Their amounts in g, lying along items; further rows (or columns) are further recipes",
  optional: false,
};

/** Two parameters, items and grams, that make a mix for every recipe. */
export function recipe(): Argument<Mix> {
  return {
    parameters: () => [ITEMS, GRAMS],
    read: (_key, [items, grams], { own }) => {
      if (!items)
        return single<Mix>(
          badInput("items: this is left out; the names of the ingredients are expected."),
        );
      if (isBlankCell(items))
        return single<Mix>(
          badInput("items: this is blank; the names of the ingredients are expected."),
        );
      if (!grams)
        return single<Mix>(badInput("grams: this is left out; the amounts in g are expected."));
      return readRecipes(items, grams, own);
    },
  };
}
