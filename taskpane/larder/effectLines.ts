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

/** A computed value to the digits that its uncertainty leaves. */
export const rounded = (value: number, uncertainty: number): number =>
  uncertainty > 0 ? Number(value.toFixed(decimalsFor(uncertainty))) : Number(value.toPrecision(4));

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
            value: rounded(effect.shows, effect.uncertainty),
            unit: "",
            uncertainty: effect.uncertainty,
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
