import type { Place } from "../recipeBlock";
import type { LabelledPair } from "./labelledPairs";

/** A pair's value in one of several solutions; one value alone holds for all. */
export const valueIn = ({ values }: LabelledPair, column: number): Place | undefined =>
  values.length === 1 ? values[0] : values.find((value) => value.column === column);
