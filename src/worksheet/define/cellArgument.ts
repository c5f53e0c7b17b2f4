import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { single, type Lattice } from "../../recipe/lattice";
import { passedOn } from "../../recipe/passedOn";
import { placeIn } from "../../recipe/place";
import type { Parameter } from "../worksheetFunction";
import type { Argument, CallContext } from "./argument";
import type { Given } from "./hostValue";

/** A cell that is neither blank nor an error. */
export type Value = number | string | boolean;

interface CellArgument<T> {
  readonly description: string;
  readonly optional: boolean;
  /** What a blank cell or a left-out argument stands for; undefined when it may not be left out. */
  readonly fallback?: { readonly value: T } | undefined;
  /** What is expected, to complete "…; … is expected." */
  readonly expected: string;
  readonly valueOf: (cell: Value, place: string, context: CallContext) => Result<T>;
}

/** An argument whose every cell stands for one value: it broadcasts, and a bad cell spoils its own answer. */
export function cellArgument<T>(definition: CellArgument<T>): Argument<T> {
  const { description, optional, fallback, expected, valueOf } = definition;
  const blank = (place: string): Result<T> =>
    fallback === undefined
      ? badInput(`${place}: this is blank; ${expected} is expected.`)
      : fallback.value;
  const read = (key: string, [given]: readonly Given[], context: CallContext): Lattice<T> => {
    if (given === null || given === undefined) return single(blank(key));
    const shape = { rows: given.length, columns: given[0]?.length ?? 0 };
    const cells = given.flatMap((row, r) =>
      row.map((cell, c): Result<T> => {
        const place = placeIn(key, shape, r, c);
        if (cell === null) return blank(place);
        return isProblem(cell) ? passedOn(cell, place) : valueOf(cell, place, context);
      }),
    );
    return { ...shape, cells };
  };
  const shown = defaultOf(fallback?.value);
  return { parameters: (key) => [{ name: key, description, optional, ...shown }], read };
}

/** A fallback that the user can be told; null and "" only stand for nothing given. */
const defaultOf = (value: unknown): Pick<Parameter, "default"> =>
  typeof value === "number" || (typeof value === "string" && value !== "")
    ? { default: value }
    : {};
