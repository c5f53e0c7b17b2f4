import { bibliography } from "../../src/foundation/bibliography";
import type { Matrix } from "../../src/foundation/cell";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { decimalsFor } from "../words/numberFormat";
import type { Words } from "../words/words";
import type { FigureLine } from "./figureLine";
import { effectPerDissolvedGram, effectPerGram, type FreezingEffect } from "./freezingEffect";

/** What the functions named rest on. */
export function sourcesOf(...names: readonly string[]): string {
  const keys = worksheetFunctions.flatMap(({ name, sources }) =>
    names.includes(name) ? sources : [],
  );
  return [...new Set(keys)].map((key) => bibliography[key]).join(" · ");
}

/** A computed value to the digits that its uncertainty leaves, with that. */
export function rounded(value: number, uncertainty: number) {
  if (!(uncertainty > 0)) return { value: Number(value.toPrecision(4)), uncertainty };
  const decimals = decimalsFor(uncertainty);
  return { value: Number(value.toFixed(decimals)), uncertainty, decimals };
}

/** How it lowers the freezing point against sucrose: gram for gram as it is, and by what is dissolved in it. */
export function effectLines(
  name: string,
  words: Words,
  own: Matrix | null = null,
): readonly FigureLine[] {
  const texts = words.larder.effect;
  const line = (label: string, basis: string, effect: FreezingEffect | null): FigureLine[] =>
    effect === null
      ? []
      : [
          {
            label,
            ...rounded(effect.shows, effect.uncertainty),
            unit: "",
            source: `${basis} ${sourcesOf("DEPRESSION")}`,
            obtained: "computed here",
            basis: texts.band,
            cell: own === null ? effect : null,
          },
        ];
  return [
    ...line(texts.perGram, texts.perGramBasis, effectPerGram(name, own)),
    ...line(texts.perDissolved, texts.perDissolvedBasis, effectPerDissolvedGram(name, own)),
  ];
}
