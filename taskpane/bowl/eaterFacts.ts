import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import { NONE_NAMED } from "./noneNamed";
import type { RecipeInGrams } from "./toGrams";

/** One thing to tell the eater, and the ingredients it comes from. */
export interface EaterFact {
  readonly text: string;
  readonly items: readonly string[];
}

export interface EaterFacts {
  readonly allergens: readonly EaterFact[];
  readonly cautions: readonly (EaterFact & { readonly source: string })[];
  /** What holds for everything frozen, whatever is in it. */
  readonly general: readonly string[];
  /** Ingredients of whose allergens nothing is known: never passed over in silence. */
  readonly unknown: readonly string[];
}

const ALLERGENS = /^Allergens: (.*)\.$/;
const EVERY = "every recipe";
const UNKNOWN = "unknown";

function grouped(pairs: readonly (readonly [text: string, item: string])[]): readonly EaterFact[] {
  const groups = new Map<string, string[]>();
  for (const [text, item] of pairs) groups.set(text, [...(groups.get(text) ?? []), item]);
  return [...groups].map(([text, items]) => ({ text, items }));
}

/** What RIME.CAUTIONS says of a recipe, sorted for showing: empty where it declines. */
export function eaterFacts({ items, grams }: RecipeInGrams, own: Matrix | null): EaterFacts {
  const rows = callFunction("CAUTIONS", items, grams, own)
    .slice(1)
    .flatMap(([text, because, source]) =>
      typeof text === "string" && typeof because === "string" && typeof source === "string"
        ? [{ text, because, source }]
        : [],
    );
  const allergens = rows.flatMap(({ text, because }) => {
    const [, named] = ALLERGENS.exec(text) ?? [];
    return named === undefined ? [] : [[named, because] as const];
  });
  return {
    allergens: grouped(allergens.filter(([named]) => named !== UNKNOWN && named !== NONE_NAMED)),
    unknown: allergens.filter(([named]) => named === UNKNOWN).map(([, item]) => item),
    cautions: rows
      .filter(({ text, because }) => because !== EVERY && !ALLERGENS.test(text))
      .map(({ text, because, source }) => ({ text, items: [because], source })),
    general: rows.filter(({ because }) => because === EVERY).map(({ text }) => text),
  };
}
