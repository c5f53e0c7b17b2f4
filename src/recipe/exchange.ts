import { badInput, isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { mixOf, mixOfItem } from "./mixOf";
import type { Item } from "./item";
import type { Mix, MixPart } from "./mix";
import { sucroseEquivalentGrams } from "./sweetness";

export const HOLDS = [...(["others", "mass", "sweetness"] as const)];
export type Hold = (typeof HOLDS)[number];

/** A way to change a recipe by the amount of one item. */
export interface Exchange {
  readonly mostGrams: number;
  readonly mixWith: (grams: number) => Result<Mix>;
}

/** So many times the rest of the recipe is enough of anything. */
const MOST_TIMES = 1000;

const without = (parts: readonly MixPart[], items: readonly Item[]): MixPart[] =>
  parts.filter(({ item }) => !items.some(({ name }) => name === item.name));

const gramsOf = (parts: readonly MixPart[], { name }: Item): number =>
  parts.reduce((sum, { item, grams }) => (item.name === name ? sum + grams : sum), 0);

const sum = (parts: readonly MixPart[]): number =>
  parts.reduce((total, { grams }) => total + grams, 0);

/** The rest stays as it is. */
function added({ parts }: Mix, item: Item): Exchange {
  const others = without(parts, [item]);
  return {
    mostGrams: MOST_TIMES * Math.max(sum(others), gramsOf(parts, item)),
    mixWith: (grams) => mixOf([...others, { item, grams }]),
  };
}

/** The rest shrinks or grows in proportion, so that the mass stays. */
function inProportion({ parts }: Mix, item: Item): Exchange {
  const others = without(parts, [item]);
  const mass = sum(parts);
  return {
    mostGrams: mass,
    mixWith: (grams) => {
      const scale = (mass - grams) / sum(others);
      return mixOf([
        ...others.map((part) => ({ ...part, grams: part.grams * scale })),
        { item, grams },
      ]);
    },
  };
}

/** Another item gives way, so many grams of it for one gram. */
function replaced({ parts }: Mix, item: Item, replacing: Item, rate: number): Exchange {
  const others = without(parts, [item, replacing]);
  const [there, away] = [gramsOf(parts, item), gramsOf(parts, replacing)];
  return {
    mostGrams: rate > 0 ? there + away / rate : MOST_TIMES * sum(parts),
    mixWith: (grams) =>
      mixOf([
        ...others,
        { item, grams },
        { item: replacing, grams: Math.max(away - rate * (grams - there), 0) },
      ]),
  };
}

/** Sucrose-equivalent grams of one gram of an item. */
function sweetnessPerGram(item: Item): Result<number> {
  const mix = mixOfItem(item, 100);
  if (isProblem(mix)) return mix;
  const grams = sucroseEquivalentGrams(mix);
  return isProblem(grams) ? grams : grams / 100;
}

function sweetnessHeld(mix: Mix, item: Item, replacing: Item): Result<Exchange> {
  const given = sweetnessPerGram(item);
  const taken = sweetnessPerGram(replacing);
  if (isProblem(given)) return given;
  if (isProblem(taken)) return taken;
  if (!(taken > 0)) {
    return badInput(
      `replacing: "${replacing.name}" is not sweet, so it cannot hold the sweetness; something sweet is expected.`,
    );
  }
  return replaced(mix, item, replacing, given / taken);
}

/** How the amount of an item may be changed: what is held, and what gives way. */
export function exchangeOf(
  mix: Mix,
  item: Item,
  replacing: Item | null,
  hold: Hold,
): Result<Exchange> {
  if (item.origin.kind === "water lost") {
    return badInput('item: "water lost" cannot be solved for; an ingredient is expected.');
  }
  if (replacing === null) {
    if (hold === "sweetness") {
      return badInput(
        'hold: "sweetness" needs an item that gives way; a name in replacing is expected.',
      );
    }
    return hold === "mass" ? inProportion(mix, item) : added(mix, item);
  }
  if (replacing.name === item.name) {
    return badInput(`replacing: "${replacing.name}" is the item itself; another one is expected.`);
  }
  return hold === "sweetness"
    ? sweetnessHeld(mix, item, replacing)
    : replaced(mix, item, replacing, 1);
}
