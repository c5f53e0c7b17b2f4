import { isProblem, type Problem } from "./problem";

/** Either a value or the reason why there is none; told apart by `isProblem`. T is never a Problem. */
export type Result<T> = T | Problem;

/** Applies `next` to a value, or hands the problem on. */
export function andThen<T, U>(result: Result<T>, next: (value: T) => Result<U>): Result<U> {
  return isProblem(result) ? result : next(result);
}
