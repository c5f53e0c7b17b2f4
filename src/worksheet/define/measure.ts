import { findMeasure } from "../../catalogue/findMeasure";
import { measures, type Measure } from "../../catalogue/measures";
import { isProblem, badInput } from "../../foundation/problem";
import { shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { nearestText } from "./nearestName";
import { textOf } from "./text";

const EXPECTED = "a unit such as g, cup, tbsp, mL or piece";
const NAMES = measures.map(({ name }) => name);

/** A unit of mass, volume or count. */
export function measure(description: string): Argument<Measure> {
  return cellArgument<Measure>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: (cell, place) => {
      const word = textOf(cell, place, EXPECTED);
      if (isProblem(word)) return word;
      const known = findMeasure(word);
      if (known !== undefined) return known;
      const meant = nearestText(word, NAMES, `${EXPECTED} is expected`);
      return badInput(`${place}: "${shortened(word)}" is not a unit; ${meant}.`);
    },
  });
}
