import type { Workbook } from "../../src/workbook/model";
import { headedRanges } from "./headedRanges";

/** A range that looks like one of own ingredients. */
export interface OwnRange {
  readonly sheet: string;
  readonly address: string;
}

const SIGNS = [
  ...["same as", "water", "solids", "brix"],
  ...["wie", "dasselbe wie", "wasser", "trockenmasse"],
];
/** True for a row of lower-case headers that makes a range one of own ingredients. */
export const isOwnHeader = (headers: readonly string[]): boolean =>
  headers.includes("name") && headers.some((header) => SIGNS.includes(header));

/** Every range headed by `name` together with `same as`, `water`, `solids` or `brix`, or the German words. */
export const findOwnIngredients = (workbook: Workbook): readonly OwnRange[] =>
  headedRanges(workbook, isOwnHeader);
