import type { LabelledPair } from "./labelledPairs";
import { keyOf } from "./rolesByFormula";

/** Pairs of which no value is that of another; the values of a row are its label's before a heading's. */
export function eachValueOnce(pairs: readonly LabelledPair[]): LabelledPair[] {
  const labelled = new Set<string>();
  const isNew = ({ values }: LabelledPair) => {
    const keys = values.map(keyOf);
    const isFirst = keys.every((key) => !labelled.has(key));
    for (const key of keys) labelled.add(key);
    return isFirst;
  };
  const beside = pairs.filter(({ isBelow }) => !isBelow).filter(isNew);
  const below = pairs.filter(({ isBelow }) => isBelow).filter(isNew);
  const kept = new Set([...beside, ...below]);
  return pairs.filter((pair) => kept.has(pair));
}
