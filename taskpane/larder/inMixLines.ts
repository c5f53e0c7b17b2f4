import { isProblem } from "../../src/foundation/problem";
import type { Ingredient } from "../../src/catalogue/ingredient";
import { solutes } from "../../src/catalogue/solutes";
import { callFunction } from "../../src/worksheet/callFunction";
import type { Words } from "../words/words";
import { cellFormula } from "./cellFormula";
import { rounded, sourcesOf } from "./effectLines";
import type { FigureLine } from "./figureLine";
import { soluteLines } from "./soluteLines";

const AS_IT_IS_GRAMS = 100;

/** As GLASSTRANSITION and MAXFREEZECONCENTRATED state it: sugars, and syrups with their long chains. */
const GLASS_BAND_K = { sugars: 5, syrups: 10 };

/** A line whose value a function gives for the thing as it is; nothing where the function declines. */
function computedLine(
  [name, functionName]: readonly [string, string],
  label: string,
  unit: string,
  band: { readonly uncertainty: number; readonly basis: string },
): readonly FigureLine[] {
  const cell = cellFormula(functionName, name, AS_IT_IS_GRAMS);
  if (typeof cell?.shows !== "number") return [];
  return [
    {
      label,
      unit,
      ...band,
      ...rounded(cell.shows, band.uncertainty),
      source: sourcesOf(functionName),
      obtained: "computed here",
      cell,
    },
  ];
}

const bandOf = (name: string, quantity: string, basis: string) => {
  const found = callFunction("UNCERTAINTY", name, AS_IT_IS_GRAMS, quantity)[0]?.[0];
  return { uncertainty: typeof found === "number" ? found : 0, basis };
};

/** How sweet it is as it is; nothing where nothing in it is known to be sweet. */
export const sweetnessLine = (name: string, words: Words): readonly FigureLine[] =>
  computedLine(
    [name, "SWEETNESS"],
    words.larder.effect.sweetness,
    words.larder.effect.sweetnessUnit,
    bandOf(name, "sweetness", words.larder.effect.sweetnessBand),
  ).filter(({ value }) => value !== 0);

/** Where it freezes by itself, or the reason why it does not. */
function freezingLines(name: string, words: Words): readonly FigureLine[] {
  const { freezesFrom, never, band } = words.larder.effect;
  const point = callFunction("FREEZINGPOINT", name, AS_IT_IS_GRAMS)[0]?.[0] ?? null;
  if (typeof point === "number") {
    const stated = bandOf(name, "freezing point", band);
    return computedLine([name, "FREEZINGPOINT"], freezesFrom, "°C", stated);
  }
  // Dry things have no freezing point to speak of: only a liquid that does not freeze is news.
  if (!isProblem(point) || point.kind !== "outsideValidity") return [];
  const source = words.said(point.message.replace(/^grams: /, ""));
  const why = { source, obtained: null, basis: "" };
  return [{ label: freezesFrom, value: never, unit: "", uncertainty: null, cell: null, ...why }];
}

/** The glass it becomes: as it is where no ice forms, else where freezing ends. */
function glassLines(ingredient: Ingredient, isIcy: boolean, words: Words): readonly FigureLine[] {
  const { name, composition } = ingredient;
  const { glass, freezingEnds, glassBand } = words.larder.effect;
  const isSyrup = composition.higherSaccharides !== undefined;
  const band = {
    uncertainty: isSyrup ? GLASS_BAND_K.syrups : GLASS_BAND_K.sugars,
    basis: glassBand,
  };
  return isIcy
    ? computedLine([name, "MAXFREEZECONCENTRATED"], freezingEnds, "°C", band)
    : computedLine([name, "GLASSTRANSITION"], glass, "°C", band);
}

/** How much of each of its main solutes water can take up. */
function solubilityLines({ composition }: Ingredient, words: Words): readonly FigureLine[] {
  const LEAST_GRAMS = 1;
  return Object.entries(composition.solutes ?? {}).flatMap(([name, grams]) => {
    const solute = solutes.find((one) => one.name === name);
    if (solute === undefined || grams < LEAST_GRAMS) return [];
    return soluteLines(solute, words)
      .filter(({ label }) => label === words.soluteFigures.solubility20)
      .map((line) => ({ ...line, label: `${line.label}, ${name}` }));
  });
}

/** What an ingredient is in a mix and by itself, as the functions have it. */
export function inMixLines(ingredient: Ingredient, words: Words): readonly FigureLine[] {
  const freezing = freezingLines(ingredient.name, words);
  const isIcy = freezing.some(({ value }) => typeof value === "number");
  return [
    ...sweetnessLine(ingredient.name, words),
    ...freezing,
    ...glassLines(ingredient, isIcy, words),
    ...solubilityLines(ingredient, words),
  ];
}
