import { single } from "../../recipe/lattice";
import type { Argument } from "./argument";

/** Lets any argument be left out or blank; it then is null. */
export const optional = <T>({ parameters, read }: Argument<T>): Argument<T | null> => ({
  parameters: (key) => parameters(key).map((one) => ({ ...one, optional: true })),
  read: (key, given, context) => {
    const [matrix] = given;
    if (matrix === null || matrix === undefined) return single<T | null>(null);
    const { rows, columns, cells } = read(key, given, context);
    const blanks = matrix.flat().map((cell) => cell === null);
    return { rows, columns, cells: cells.map((cell, at) => (blanks[at] === true ? null : cell)) };
  },
});
