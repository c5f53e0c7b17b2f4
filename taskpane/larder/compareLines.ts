import type { Words } from "../words/words";
import { effectLines } from "./effectLines";
import type { LarderEntry } from "./entries";
import type { FigureLine } from "./figureLine";
import { ingredientLines, measureLines } from "./ingredientLines";
import { inMixLines, sweetnessLine } from "./inMixLines";
import { soluteLines } from "./soluteLines";

/** All figures of an entry under labels that a solute and an ingredient have in common where they can. */
export function linesOf({ kind, item }: LarderEntry, words: Words): readonly FigureLine[] {
  const effect = effectLines(item.name, words);
  if (kind === "ingredient") {
    const [inMix, parts] = [inMixLines(item, words), ingredientLines(item, words)];
    return [...effect, ...inMix, ...parts, ...measureLines(item, words)];
  }
  // Its sweetness is asked of the function, as an ingredient's is.
  const constants = soluteLines(item, words).filter(
    ({ label }) => label !== words.soluteFigures.sweetness,
  );
  return [...effect, ...sweetnessLine(item.name, words), ...constants];
}

/** One figure of two entries; null where one of them has none. */
export interface ComparedLine {
  readonly label: string;
  readonly unit: string;
  readonly one: FigureLine | null;
  readonly other: FigureLine | null;
}

/** The figures of two entries, each under its label once: those of the first in its order, then the rest. */
export function compareLines(
  ones: readonly FigureLine[],
  others: readonly FigureLine[],
): readonly ComparedLine[] {
  const labels = new Set([...ones, ...others].map(({ label }) => label));
  return [...labels].map((label) => {
    const has = (line: FigureLine) => line.label === label;
    const [one, other] = [ones.find(has) ?? null, others.find(has) ?? null];
    return { label, unit: one?.unit ?? other?.unit ?? "", one, other };
  });
}
