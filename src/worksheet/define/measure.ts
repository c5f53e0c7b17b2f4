import { findMeasure } from "../../catalogue/findMeasure";
import { measures, type Measure } from "../../catalogue/measures";
import { isProblem, badInput } from "../../foundation/problem";
import { shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { nearestWord } from "./choice";
import { textOf } from "./text";

const EXPECTED = "a unit such as g, cup, tbsp, mL or piece";

/** A unit of mass, volume or count. */
export function measure(description: string): Argument<Measure> {
  return cellArgument<Measure>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: (cell, place) => {
      const word = textOf(cell, place, EXPECTED);
      if (isProblem(word)) return word;
      const near = nearestWord(
        word,
        measures.map(({ name }) => name),
      );
      return (
        findMeasure(word) ??
        badInput(`${place}: "${shortened(word)}" is not a unit; the nearest is "${near}".`)
      );
    },
  });
}
