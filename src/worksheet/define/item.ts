import type { Item } from "../../recipe/item";
import { isProblem } from "../../foundation/problem";
import { namedItem } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { textOf } from "./text";

const EXPECTED = "the name of an ingredient";

/** The name of anything a recipe can hold, own ingredients included. */
export function item(description: string): Argument<Item> {
  return cellArgument<Item>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: (cell, place, { own }) => {
      const name = textOf(cell, place, EXPECTED);
      return isProblem(name) ? name : namedItem(name, own, place);
    },
  });
}
