/** The whole numbers from one to another, both included. */
export const rangeLines = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => from + at);
