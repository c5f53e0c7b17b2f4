import type { Matrix } from "../../src/foundation/cell";
import type { RecipeInGrams } from "../bowl/toGrams";
import { rowsOf } from "../bowl/askMix";

/** A recipe in one line: "water 250 g; sucrose 70 g". */
export const mixText = (mix: RecipeInGrams): string =>
  rowsOf(mix)
    .map(({ name, grams }) => `${name.replace(/;/g, ",")} ${Number(grams.toPrecision(6))} g`)
    .join("; ");

const PART = /^(.+) ([0-9]+(?:\.[0-9]+)?(?:e[+-]?[0-9]+)?) g$/;

/** The recipe of such a line; null when it is none. */
export function mixFromText(text: string): { items: Matrix; grams: Matrix } | null {
  const parts = text.split(";").map((part) => PART.exec(part.trim()));
  if (parts.some((part) => part === null)) return null;
  return {
    items: parts.map((part) => [part?.[1] ?? ""]),
    grams: parts.map((part) => [Number(part?.[2])]),
  };
}
