import type { Problem } from "../foundation/problem";

/** An error that came in with a cell, with the place where it stands. */
export function passedOn({ kind, message }: Problem, place: string): Problem {
  const isCode = /^#[A-Z0-9/!?_]+$/.test(message);
  return {
    kind,
    message: isCode
      ? `${place}: the cell holds the error ${message}; a value is expected.`
      : `${place}: ${message}`,
  };
}
