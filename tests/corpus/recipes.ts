import { callFunction } from "../../src/worksheet/callFunction";
import type { Chance } from "./random";
import { stock, type Language, type StockLine, type StockRecipe } from "./stock";

/** A recipe as a layout gets it, before it is on a sheet. */
export interface MadeRecipe {
  readonly title: string;
  readonly language: Language;
  readonly names: readonly string[];
  readonly grams: readonly number[];
  readonly lines: readonly StockLine[];
  /** A serving target that the recipe met as it was made; null where it met none. */
  readonly target: string | null;
  /** Whether the sheet tells the eater what there is to tell. */
  readonly flagged: boolean;
  /** The names of lines that a mutation put in or changed. */
  readonly seeded?: readonly string[];
}

const TARGETS: readonly Readonly<Record<Language, string>>[] = [
  { en: "scooped at −13", de: "Kugeln bei −13" },
  { en: "scraped granita", de: "geschabte Granita" },
  { en: "spread with the spatula", de: "mit dem Spatel bei −12" },
  { en: "firm bar at −18", de: "fester Riegel bei −18" },
  { en: "tender bar at −18", de: "zarter Riegel bei −18" },
];

const column = <T>(list: readonly T[]): T[][] => list.map((each) => [each]);

export function meets(
  { names, grams }: Pick<MadeRecipe, "names" | "grams">,
  target: string,
): boolean {
  const answer = callFunction("CHECK", column(names), column(grams), target)[0]?.[0];
  return typeof answer === "string" && answer.startsWith("meets");
}

const targetMet = (made: MadeRecipe): string | null =>
  TARGETS.find((target) => meets(made, target.en))?.[made.language] ?? null;

/** The same recipe with other lines; its title, target and flagging stay. */
export const withLines = (made: MadeRecipe, lines: readonly StockLine[]): MadeRecipe => ({
  ...made,
  lines,
  names: lines.map((each) => each[made.language]),
  grams: lines.map(({ grams }) => grams),
});

/** A recipe of the stock in a language, its amounts moved a little, in whole grams. */
export function makeRecipe(random: Chance, language: Language, from: StockRecipe): MadeRecipe {
  const size = random.pick([0.5, 1, 1, 2, 3]);
  const lines = from.lines.map((each) => ({
    ...each,
    grams: Math.max(2, Math.round(each.grams * size * random.between(0.96, 1.04))),
  }));
  const bare = { title: from[language], language, target: null, flagged: true };
  const made = withLines({ ...bare, names: [], grams: [], lines: [] }, lines);
  return { ...made, target: targetMet(made) };
}

/** Several recipes, none twice. */
export function makeRecipes(random: Chance, language: Language, count: number): MadeRecipe[] {
  const left = [...stock];
  return Array.from({ length: count }, () => {
    const [next] = left.splice(random.whole(0, left.length - 1), 1);
    return makeRecipe(random, language, next!);
  });
}

export const massOf = ({ grams }: Pick<MadeRecipe, "grams">): number =>
  grams.reduce((total, amount) => total + amount, 0);

/** The same recipe for 100 g in all, in tenths, the largest line taking what rounding leaves. */
export function perHundred(made: MadeRecipe): MadeRecipe {
  const mass = massOf(made);
  const shares = made.grams.map((amount) => Math.max(0.2, Math.round((1000 * amount) / mass) / 10));
  const largest = shares.indexOf(Math.max(...shares));
  const others = shares.reduce((sum, share, index) => (index === largest ? sum : sum + share), 0);
  shares[largest] = Math.round(10 * (100 - others)) / 10;
  return withLines(
    made,
    made.lines.map((each, index) => ({ ...each, grams: shares[index]! })),
  );
}

type Label = "allergen" | "caution";

/** What the lines of a recipe bring to its label, each once. */
export const labelWords = (made: MadeRecipe, which: Label): string[] => [
  ...new Set(made.lines.flatMap((each) => each[which]?.[made.language] ?? [])),
];
