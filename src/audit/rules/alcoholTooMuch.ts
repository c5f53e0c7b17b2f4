import { componentPer100, compositionGrams, iceFraction } from "../answers/answers";
import { isListOfDrinks } from "../alcohol/isListOfDrinks";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Mix } from "../mix";
import { isWater } from "../recipes/forms/isWater";
import { pureSolute } from "../solutions/pureSolute";
import { namedTargets } from "../targets/namedTargets";
import type { AuditContext } from "../context";
import type { Rule } from "../rule";
import { judgedRecipes, mainSource, titleOf, type JudgedRecipe } from "../solutions/solubility";
import type { WantedIce } from "../temperatures/wantedIce";

const identity = { id: "too-much-alcohol-to-set", severity: "warning" } as const;

/** Without a target: a tender bar from the freezer, the softest thing that is still held in the hand. */
const TENDER: Omit<WantedIce, "iceTo"> = { temperatureC: -18, iceFrom: 0.28, basis: "mix" };
/** Traces of alcohol in vanilla or fruit do not soften. */
const LEAST_SHARE = 0.005;

/** The same mix with water in the place of everything that brings alcohol. */
const withoutAlcohol = ({ items, grams, ownIngredients }: Mix): Mix => ({
  items: items.map((item) =>
    (componentPer100(item, "ethanol", ownIngredients) ?? 0) > 1 ? "water" : item,
  ),
  grams,
  ownIngredients,
});

/** Alcohol in nothing but water cools, or is a solution of a class: nobody holds it in the hand. */
const isBrine = ({ items, ownIngredients }: Mix): boolean =>
  items.every((item) => isWater(item) || pureSolute(item, ownIngredients)?.name === "ethanol");

function findIn(context: AuditContext, judged: JudgedRecipe): Finding[] {
  const { mix, block, recipe } = judged;
  const grams = compositionGrams(mix).get("ethanol") ?? 0;
  if (isListOfDrinks(block)) return [];
  const total = mix.grams.reduce((sum, value) => sum + value, 0);
  if (grams <= LEAST_SHARE * total) return [];
  const named = namedTargets(context, block).find((one) => one.recipe === recipe)?.wanted;
  if (named === undefined && isBrine(mix)) return [];
  const wanted = named ?? TENDER;
  const ice = iceFraction(mix, wanted.temperatureC, wanted.basis);
  if (ice === null || ice >= wanted.iceFrom) return [];
  const without = iceFraction(withoutAlcohol(mix), wanted.temperatureC, wanted.basis);
  if (without === null || without < wanted.iceFrom) return [];
  const at = String(wanted.temperatureC).replace("-", "−");
  return [
    findingAt(identity, block.sheet, mainSource(judged, "ethanol"), {
      message: `${titleOf(recipe)} has ${rounded((100 * grams) / total, 1)} % of alcohol by mass: at ${at} °C only ${rounded(100 * ice, 0)} % of the ${wanted.basis} is ice${named === undefined ? ", too little to be held in the hand" : ""}.`,
      effect: {
        quantity: `share of the ${wanted.basis} that is ice at ${at} °C`,
        from: rounded(100 * ice, 1),
        to: rounded(100 * wanted.iceFrom, 1),
        unit: "%",
      },
      fix: "Take less of the spirit, or boil part of it off before.",
    }),
  ];
}

export const alcoholTooMuch: Rule = {
  ...identity,
  title: "So much alcohol that too little of the mix freezes",
  find: (context) => judgedRecipes(context).flatMap((judged) => findIn(context, judged)),
};
