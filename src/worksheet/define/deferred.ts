import type { Result } from "../../foundation/result";
import type { Argument } from "./argument";

/** A value whose problem counts only if the value is used at all. */
export interface Deferred<T> {
  readonly value: Result<T>;
}

/** An argument that may be wrong as long as it is not needed: the name beside a blank amount. */
export const deferred = <T>({ parameters, read }: Argument<T>): Argument<Deferred<T>> => ({
  parameters,
  read: (key, given, context) => {
    const { rows, columns, cells } = read(key, given, context);
    return { rows, columns, cells: cells.map((value) => ({ value })) };
  },
});
