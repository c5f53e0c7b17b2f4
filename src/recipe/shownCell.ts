import { shortened } from "./namedItem";

/** A cell's value as a sentence shows it: the text "12,5", TRUE, 3. */
export const shownCell = (value: number | string | boolean): string =>
  typeof value === "string" ? `the text "${shortened(value)}"` : String(value).toUpperCase();
