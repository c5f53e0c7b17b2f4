import { a1, calledFrom, retype } from "../book";
import { PER_GRAM } from "../list";
import { trueValue, type MarkedRecipe } from "../marks";
import {
  numberAt,
  one,
  resultsWhere,
  rightValue,
  WRONG_RESULT,
  type Mutation,
  type Variant,
} from "../mutation";
import { insteadOf, mistyped, rewritten, sign, type Pair } from "./mistyped";
import { withNuts, withSpirit } from "./preparing";

const seededGrams = ({ made }: MarkedRecipe): number =>
  made.grams.reduce(
    (sum, grams, index) => (made.seeded?.includes(made.names[index]!) ? sum + grams : sum),
    0,
  );

const plainWater = ({ made }: MarkedRecipe): number =>
  made.lines.reduce((sum, { en, grams }) => (en === "water" ? sum + grams : sum), 0);

const withoutWet = ({ recipe }: Pair, right: number): number | null => {
  const plain = plainWater(recipe);
  return plain === 0 || right - plain < 0.1 * right ? null : plain;
};

/** Says the water line's own cell for the water in the mix. */
const waterLineOnly: Variant = {
  apply: (marked, random) => {
    const able = resultsWhere(
      marked,
      (result, recipe) =>
        result.states === "water" &&
        withoutWet({ recipe, result }, rightValue(recipe, result) ?? 0) !== null,
    );
    const pair = one(random, able);
    if (pair === null) return null;
    const { made, amounts, unit } = pair.recipe;
    const at = made.lines.findIndex(({ en }) => en === "water");
    // In a cell of grams: kilograms there would be a mistake of the unit, not of the water.
    const grams = Math.round(1 / PER_GRAM[unit]);
    const water = calledFrom(pair.result.spot, amounts[at]!);
    retype(marked.book, pair.result.spot, `=${water}${grams === 1 ? "" : `*${grams}`}`);
    return [pair.result.spot];
  },
};

const byVolume: Variant = {
  apply: (marked, random) => {
    const chosen = one(random, marked.alcohols);
    if (chosen === null) return null;
    const { grams, abv, alcohol } = chosen;
    const asMass = `=${a1(grams)}*${a1(abv)}/100`;
    retype(
      marked.book,
      alcohol,
      random.next() < 0.7
        ? asMass
        : Number(((numberAt(marked, grams) * numberAt(marked, abv)) / 100).toFixed(1)),
    );
    return [alcohol];
  },
};

const strengthSwapped: Variant = {
  apply: (marked, random) => {
    const able = marked.strengths.filter(
      ({ perWater, share }) => Math.abs(numberAt(marked, perWater) - numberAt(marked, share)) > 3,
    );
    const chosen = one(random, able);
    if (chosen === null) return null;
    const [to, from] =
      random.next() < 0.5 ? [chosen.perWater, chosen.share] : [chosen.share, chosen.perWater];
    retype(marked.book, to, numberAt(marked, from));
    return [to];
  },
};

const abvOf = (recipe: MarkedRecipe): number =>
  Number(recipe.made.seeded![0]!.replace(",", ".").match(/[\d.]+/)![0]) / 100;

const strips = (formula: string): string => formula.replace(/^=/, "=-");

/** The sign of a class sheet's answer. */
const classSign: Variant = {
  apply: (marked, random) => {
    const chosen = one(
      random,
      marked.solutions.filter(({ freezingPoint }) => freezingPoint !== null),
    );
    if (chosen === null) return null;
    retype(marked.book, chosen.freezingPoint!, `=${a1(chosen.depression)}`);
    return [chosen.freezingPoint!];
  },
};

/** Wrong statements about a recipe. */
export const resultMutations: readonly Mutation[] = [
  {
    rule: "result-differs",
    inValues: true,
    variants: [
      mistyped(["freezing point"], (_, right, random) => {
        const value = right + sign(random) * random.between(0.8, 1.8);
        return value < -0.2 ? value : right - 1.2;
      }),
      mistyped(["depression"], (_, right, random) => right * random.between(1.35, 1.7)),
      mistyped(["ice of water", "ice of mix"], (pair, right, random) => {
        const { scale } = pair.result;
        const value = right + scale * random.between(0.13, 0.2) * (right > 0.75 * scale ? -1 : 1);
        const basis = pair.result.states === "ice of mix" ? "ice of water" : "ice of mix";
        const other = (trueValue(pair.recipe.made, basis, pair.result.temperatureC) ?? 0) * scale;
        return Math.abs(other - value) < 0.05 * scale ? null : value;
      }),
      // In the row of totals it is a wrong total, and told as one.
      mistyped(["water", "dissolved"], ({ recipe, result }, right, random) =>
        result.spot.row === recipe.total?.row ? null : right * random.between(1.2, 1.4),
      ),
    ],
    fair: { "formula-overwritten": "a typed number where other results are formulas" },
  },
  {
    rule: "freezing-point-sign",
    variants: [
      mistyped(["freezing point", "depression"], (_, right) => -right),
      rewritten(["freezing point", "depression"], strips),
      classSign,
    ],
    fair: {
      ...WRONG_RESULT,
      "inconsistent-formula": "one row of a column",
      "formula-overwritten": "a typed number among formulas",
    },
  },
  {
    rule: "ice-of-water-or-mix",
    variants: [
      mistyped(["ice of water"], insteadOf("ice of mix", 0.05)),
      mistyped(["ice of mix"], insteadOf("ice of water", 0.05)),
      rewritten(["ice of water"], (formula) => formula.replace('"water"', '"mix"')),
      rewritten(["ice of mix"], (formula) => formula.replace('"mix"', '"water"')),
    ],
    // Where each recipe has its row, the formula with the other basis is also unlike those above and below it.
    fair: { ...WRONG_RESULT, "inconsistent-formula": "one row of a column" },
  },
  {
    rule: "per-water-or-per-mix",
    variants: [
      strengthSwapped,
      mistyped(["sugar per 100 g water"], insteadOf("sugar share", 0)),
      mistyped(["sugar share"], insteadOf("sugar per 100 g water", 0)),
    ],
    fair: WRONG_RESULT,
  },
  {
    rule: "water-not-counted",
    variants: [mistyped(["water"], withoutWet), waterLineOnly],
    fair: WRONG_RESULT,
  },
  {
    rule: "inclusion-as-solute",
    variants: [
      mistyped(["dissolved"], ({ recipe }, right) => right + seededGrams(recipe), withNuts),
    ],
    fair: {
      ...WRONG_RESULT,
      "misses-its-target": "nuts leave the share of ice in the mix lower",
      "formula-overwritten": "a typed number where other results are formulas",
    },
  },
  {
    rule: "abv-as-mass",
    variants: [
      byVolume,
      mistyped(["alcohol"], ({ recipe }) => seededGrams(recipe) * abvOf(recipe), withSpirit),
    ],
    fair: {
      ...WRONG_RESULT,
      "inconsistent-formula": "one row of a column",
      "formula-overwritten": "a number among formulas",
      "misses-its-target": "the spirit may soften the mix",
      // 4 to 8 % of spirit are put into a mix that met its target: then its alcohol is too much for that.
      "too-much-alcohol-to-set": "the spirit that is added may leave too little ice for the target",
    },
  },
];
