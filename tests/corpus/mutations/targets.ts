import { retype, type Spot } from "../book";
import type { Prepare } from "../kit";
import type { MarkedRecipe } from "../marks";
import { allPreparedIn, linesOf, one, type Mutation, type Variant } from "../mutation";
import { meets, withLines } from "../recipes";

const OTHER_TARGETS = [
  ["scooped at −13", "Kugeln bei −13"],
  ["scraped granita", "geschabte Granita"],
  ["spread with the spatula", "mit dem Spatel bei −12"],
  ["firm bar at −18", "fester Riegel bei −18"],
  ["tender bar at −18", "zarter Riegel bei −18"],
  ["drinkable slush", "Slush zum Trinken"],
] as const;

const targetSpots = (recipe: MarkedRecipe): Spot[] => [...recipe.targets, ...linesOf(recipe)];

const otherTarget: Variant = {
  apply: (marked, random) => {
    const recipe = one(
      random,
      marked.recipes.filter(({ targets }) => targets.length > 0),
    );
    if (recipe === null) return null;
    const missed = OTHER_TARGETS.filter(([en]) => !meets(recipe.made, en));
    const name = one(random, missed)?.[recipe.made.language === "en" ? 0 : 1];
    if (name === undefined) return null;
    retype(marked.book, recipe.targets[0]!, name);
    return targetSpots(recipe);
  },
};

const SWEET = /^(sugar|sucrose|dextrose|glucose|honey)/;

const sweetened =
  (factor: number): Prepare =>
  (made) => {
    const lines = made.lines.map((each) =>
      SWEET.test(each.en) ? { ...each, grams: Math.round(each.grams * factor) } : each,
    );
    const changed = withLines(made, lines);
    if (made.target === null || meets(changed, made.target)) return null;
    return {
      ...changed,
      seeded: lines.filter(({ en }) => SWEET.test(en)).map((each) => each[made.language]),
    };
  };

const missing = (factor: number): Variant => ({
  prepare: sweetened(factor),
  apply: (marked) => {
    const aimed = allPreparedIn(marked).filter(({ targets }) => targets.length > 0);
    return aimed.length === 0 ? null : aimed.flatMap(targetSpots);
  },
});

/** Serving targets that are missed. */
export const targetMutations: readonly Mutation[] = [
  {
    rule: "misses-its-target",
    inValues: true,
    variants: [otherTarget, missing(0.3), missing(2.2)],
    fair: { "too-much-alcohol-to-set": "less ice than a drier target asks for" },
  },
];
