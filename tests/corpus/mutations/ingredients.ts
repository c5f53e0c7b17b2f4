import { callFunction } from "../../../src/worksheet/callFunction";
import { retype, type Spot } from "../book";
import type { Prepare } from "../kit";
import type { MarkedBook, MarkedRecipe } from "../marks";
import { FEEDS_ERRORS, one, seededSpots, textAt, type Mutation, type Variant } from "../mutation";
import type { Chance } from "../random";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { line, type StockLine } from "../stock";

const everyName = ({ recipes }: MarkedBook): Spot[] => recipes.flatMap(({ names }) => names);

/** Renames an ingredient on the sheet. */
const renamed = (to: (name: string, random: Chance) => string | null): Variant => ({
  apply: (marked, random) => {
    const able = everyName(marked).flatMap((spot) => {
      const name = to(textAt(marked, spot), random);
      return name === null ? [] : [{ spot, name }];
    });
    const chosen = one(random, able);
    if (chosen === null) return null;
    retype(marked.book, chosen.spot, chosen.name);
    return [chosen.spot];
  },
});

const isKnown = (name: string): boolean =>
  typeof callFunction("COMPONENT", [[name]], [[100]], "water")[0]![0] === "number";

function misspelt(name: string, random: Chance): string | null {
  if (!/^\p{L}{7,}$/u.test(name)) return null;
  const at = random.whole(2, name.length - 3);
  const wrong = name.slice(0, at) + name.slice(at + 1);
  return isKnown(wrong) ? null : wrong;
}

const INVENTED = [
  "moonflower base",
  "Grandma's secret",
  "Zauberpulver",
  "stock no. 17",
  "Hausmischung B",
];

const VAGUE: Readonly<Record<string, string>> = {
  "glucose syrup DE 42": "glucose syrup",
  "Glukosesirup DE 42": "Glukosesirup",
  "whole milk": "milk",
  Vollmilch: "Milch",
  "cream 35 % fat": "cream",
  "Sahne 35 %": "Sahne",
  "skim milk powder": "milk powder",
  Magermilchpulver: "Milchpulver",
};

const WITHOUT_HYDRATE: Readonly<Record<string, string>> = {
  "dextrose monohydrate": "dextrose",
  "Dextrose-Monohydrat": "Dextrose",
  "citric acid monohydrate": "citric acid",
  "Zitronensäure-Monohydrat": "Zitronensäure",
};

/** Adds a line, or puts it in place of one of the same name. */
export const adding =
  (make: (made: MadeRecipe, random: Chance) => StockLine | null): Prepare =>
  (made, random) => {
    const added = make(made, random);
    if (added === null) return null;
    const name = added[made.language];
    const others = made.lines.filter((each) => each[made.language] !== name);
    return { ...withLines(made, [...others, added]), seeded: [name] };
  };

/** Of a pinch it changes nothing at all what water its crystals bring. */
const LEAST_WITH_CRYSTALS = 0.01;

/** Leaves the hydrate of one ingredient unsaid, of which there is more than a pinch in each recipe that has it. */
const withoutHydrate: Variant = {
  apply: (marked, random) => {
    const isPinch = ({ made }: MarkedRecipe, spot: Spot) => {
      const at = made.names.indexOf(textAt(marked, spot));
      return at >= 0 && made.grams[at]! < LEAST_WITH_CRYSTALS * massOf(made);
    };
    const able = everyName(marked).flatMap((spot) => {
      const name = WITHOUT_HYDRATE[textAt(marked, spot)];
      const isWorthIt = marked.recipes.every((recipe) => !isPinch(recipe, spot));
      return name === undefined || !isWorthIt ? [] : [{ spot, name }];
    });
    const chosen = one(random, able);
    if (chosen === null) return null;
    retype(marked.book, chosen.spot, chosen.name);
    return [chosen.spot];
  },
};

const seeded = (prepare: Prepare): Variant => ({ prepare, apply: seededSpots });

const lactoseOf = (made: MadeRecipe): number | null => {
  const grams = callFunction(
    "COMPONENT",
    made.names.map((name) => [name]),
    made.grams.map((each) => [each]),
    "lactose",
  )[0]![0];
  return typeof grams === "number" && grams > 0.02 * massOf(made) ? grams : null;
};

const hydrous = adding((made) => {
  const grams = lactoseOf(made);
  if (grams === null) return null;
  return line("lactose monohydrate", "Laktose-Monohydrat", Math.round(grams / 0.95));
});

const anhydrous = adding((made) => {
  const grams = lactoseOf(made);
  if (grams === null) return null;
  return line("lactose, anhydrous", "Laktose", Math.round(grams));
});

const twice: Prepare = (made, random) => {
  const chosen = random.pick(made.lines);
  const name = chosen[made.language];
  return { ...withLines(made, [...made.lines, chosen]), seeded: [name] };
};

const notShared = (variant: Variant): Variant => ({
  ...variant,
  apply: (marked, random) =>
    marked.recipes.some(({ shared }) => shared) ? null : variant.apply(marked, random),
});

const CYRILLIC: Readonly<Record<string, string>> = { a: "а", e: "е", o: "о", c: "с", p: "р" };

function lookAlike(name: string, random: Chance): string | null {
  const able = Array.from(name).flatMap((letter, index) => (letter in CYRILLIC ? [index] : []));
  const at = one(random, able);
  return at === null ? null : name.slice(0, at) + CYRILLIC[name[at]!]! + name.slice(at + 1);
}

const RECOMPUTED_WITH_IT = {
  "misses-its-target": "the mix with the line may miss the target it met without",
  "lactose-may-feel-sandy": "the line adds lactose",
  // The line may be the spirit, or soften a mix with spirit that just met its target.
  "too-much-alcohol-to-set": "with the line the spirit may leave too little ice for the target",
} as const;

/** Names: unknown, vague, twice, odd. */
export const ingredientMutations: readonly Mutation[] = [
  {
    rule: "unknown-ingredient",
    inValues: true,
    variants: [renamed(misspelt), renamed((_, random) => random.pick(INVENTED))],
    fair: FEEDS_ERRORS,
  },
  {
    rule: "ambiguous-ingredient",
    inValues: true,
    variants: [renamed((name) => VAGUE[name] ?? null)],
    fair: FEEDS_ERRORS,
  },
  {
    rule: "hydrate-not-stated",
    inValues: true,
    variants: [
      withoutHydrate,
      seeded(
        adding((made, random) =>
          line("lactose", "Laktose", Math.round(massOf(made) * random.between(0.01, 0.02))),
        ),
      ),
    ],
    fair: {
      ...FEEDS_ERRORS,
      ...RECOMPUTED_WITH_IT,
      "ambiguous-ingredient": "a name without its hydrate is never guessed",
      "lactose-twice": "a lactose row beside milk",
    },
  },
  {
    rule: "lactose-twice",
    inValues: true,
    variants: [seeded(hydrous), seeded(anhydrous)],
    fair: {
      ...RECOMPUTED_WITH_IT,
      "hydrate-not-stated": "a lactose row may not state its hydrate",
    },
  },
  {
    rule: "ingredient-twice",
    inValues: true,
    variants: [notShared(seeded(twice))],
    fair: {
      ...RECOMPUTED_WITH_IT,
      "caution-not-named": "nothing changes in what is told",
    },
  },
  {
    rule: "name-with-odd-letters",
    variants: [
      renamed((name) => `${name} `),
      renamed(lookAlike),
      renamed((name) => (name.includes(" ") ? name.replace(" ", "\u00a0") : null)),
      renamed((name) => `${name.slice(0, 3)}\u200b${name.slice(3)}`),
    ],
    fair: {
      ...FEEDS_ERRORS,
      "unknown-ingredient": "a name with a look-alike letter is not in the catalogue",
    },
  },
];
