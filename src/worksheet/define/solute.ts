import { findItem } from "../../catalogue/findItem";
import type { Solute } from "../../catalogue/solute";
import { isProblem, outsideValidity } from "../../foundation/problem";
import { namedItem, NO_OWN_INGREDIENTS, shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { textOf } from "./text";

const EXPECTED = "the name of a solute";

/** The name of a pure substance of the catalogue. */
export function solute(description: string): Argument<Solute> {
  return cellArgument<Solute>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: (cell, place) => {
      const name = textOf(cell, place, EXPECTED);
      if (isProblem(name)) return name;
      const match = findItem(name);
      if (match.kind === "solute") return match.solute;
      if (match.kind === "ingredient") {
        return outsideValidity(
          `${place}: "${shortened(name)}" is an ingredient, a mixture; ${EXPECTED} such as "sucrose" is expected.`,
        );
      }
      const item = namedItem(name, NO_OWN_INGREDIENTS, place);
      return isProblem(item)
        ? item
        : outsideValidity(
            `${place}: "${shortened(name)}" is not a solute; ${EXPECTED} is expected.`,
          );
    },
  });
}
