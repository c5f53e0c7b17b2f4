import { bibliography } from "../../src/foundation/bibliography";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { allergenText } from "../bowl/allergenText";
import { eaterFacts } from "../bowl/eaterFacts";
import { askMix, firstNumber, rowsOf, type RecipeMix } from "../bowl/askMix";
import type { PaneContext } from "../view";
import { householdAmount } from "./household";

/** A recipe card as text, in the order in which it is read. */
export interface RecipeCard {
  readonly title: string;
  readonly amounts: readonly {
    readonly name: string;
    readonly grams: string;
    /** The same for a cell, which shows it in its own way. */
    readonly gramsRounded: number;
    readonly household: string;
  }[];
  readonly expected: readonly (readonly [name: string, value: string])[];
  readonly germs: string;
  readonly cautions: readonly string[];
  readonly assumptions: readonly string[];
  readonly sources: readonly string[];
  readonly made: string;
}

const USED = ["FREEZINGPOINT", "ICEFRACTION", "TEXTURE", "UNCERTAINTY", "CAUTIONS"];

function expectedOf(mix: RecipeMix, servingC: number, { words, numbers }: PaneContext) {
  const texts = words.batch.card;
  const temperature = numbers.plain(servingC);
  const point = firstNumber(askMix(mix, "FREEZINGPOINT"));
  const bandK = firstNumber(askMix(mix, "UNCERTAINTY", "freezing point", null));
  const ice = firstNumber(askMix(mix, "ICEFRACTION", servingC, "water"));
  const band = firstNumber(askMix(mix, "UNCERTAINTY", "ice fraction", servingC));
  const word = askMix(mix, "TEXTURE", servingC)[0]?.[0];
  return [
    ...(point === null || bandK === null
      ? []
      : [[texts.firstIce, numbers.withBand(point, bandK, "°C")] as const]),
    ...(ice === null || band === null
      ? []
      : [[texts.ice(temperature), numbers.share(ice, band)] as const]),
    ...(typeof word === "string" ? [[texts.texture(temperature), words.said(word)] as const] : []),
  ];
}

/** What stands on the card of a recipe. A number without its uncertainty is left out. */
export function recipeCard(
  mix: RecipeMix,
  servingC: number,
  date: string,
  context: PaneContext,
): RecipeCard {
  const { words, numbers } = context;
  const texts = words.batch.card;
  const facts = eaterFacts(mix, mix.own);
  const sources = worksheetFunctions
    .filter(({ name }) => USED.includes(name))
    .flatMap((each) => each.sources.map((key) => bibliography[key]));
  return {
    title: mix.title,
    amounts: rowsOf(mix).map(({ name, grams }) => {
      const measure = householdAmount(name, grams);
      const decimals = grams < 10 ? 1 : 0;
      return {
        name,
        grams: numbers.fixed(grams, decimals),
        gramsRounded: Number(grams.toFixed(decimals)),
        household:
          measure === null ? "" : `${numbers.plain(measure.count)} ${texts.units[measure.unit]}`,
      };
    }),
    expected: expectedOf(mix, servingC, context),
    germs: texts.germs,
    cautions: [
      ...facts.cautions.map(({ text }) => words.said(text)),
      ...facts.allergens.map(
        ({ text, items }) =>
          `${words.eater.allergens} ${allergenText(text, words)} (${items.join(", ")})`,
      ),
      ...(facts.unknown.length > 0 ? [words.eater.unknown(facts.unknown.join(", "))] : []),
      words.eater.defer,
    ],
    assumptions: texts.assumed,
    sources: [...new Set(sources)],
    made: texts.made(date),
  };
}
