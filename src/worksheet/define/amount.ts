import { badInput } from "../../foundation/problem";
import { shortened } from "../../recipe/namedItem";
import { readAmount } from "../../recipe/readAmount";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { numberWithin } from "./number";

const RANGE = { from: 0, to: 1e9 };

/** A number or a written fraction such as "1 1/2"; blank is null. */
export function amount(description: string): Argument<number | null> {
  return cellArgument<number | null>({
    description,
    optional: false,
    fallback: { value: null },
    expected: "a number from 0 up",
    valueOf: (cell, place) => {
      if (typeof cell !== "string") return numberWithin(cell, place, RANGE);
      return (
        readAmount(cell) ??
        badInput(
          `${place}: this is the text "${shortened(cell)}"; a number from 0 to 1e9 or a fraction such as 1 1/2 is expected.`,
        )
      );
    },
  });
}
