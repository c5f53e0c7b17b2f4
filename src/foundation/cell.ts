import type { Problem } from "./problem";

/** One worksheet cell as our functions see it: null is blank, a Problem is an error. */
export type Cell = number | string | boolean | null | Problem;

/** Rows of cells, rectangular, at least 1×1. A scalar answer is a 1×1 matrix. */
export type Matrix = readonly (readonly Cell[])[];
