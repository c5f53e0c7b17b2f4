import { put, sheetNamed, type Spot } from "../book";
import type { MarkedBook } from "../marks";
import { one, type Mutation, type Variant } from "../mutation";
import type { Chance } from "../random";
import { putStored } from "./formulas";

type Place = (marked: MarkedBook, random: Chance) => Spot | null;

const lines = (marked: MarkedBook): readonly Spot[] =>
  marked.recipes.flatMap((recipe) => (recipe.shared ? [] : recipe.names));

const rightOf = (marked: MarkedBook, spot: Spot): Spot => ({
  ...spot,
  column: sheetNamed(marked.book, spot.sheet).cells[spot.row]!.length,
});

/** An empty cell right of what is on a line of a recipe. */
const besideLine: Place = (marked, random) => {
  const spot = one(random, lines(marked));
  return spot && rightOf(marked, spot);
};

/** The same, or a note. */
const besides: Place = (marked, random) => {
  const spot = one(random, [...marked.notes, ...lines(marked)]);
  return spot === null || marked.notes.includes(spot) ? spot : rightOf(marked, spot);
};

const pasted = (content: string, stored: string, place: Place = besides): Variant => ({
  apply: (marked, random) => {
    const spot = place(marked, random);
    if (spot === null) return null;
    putStored(marked, spot, content, stored);
    return [spot];
  },
});

const runs = (content: string): Variant => ({
  apply: (marked, random) => {
    const spot = besides(marked, random);
    if (spot === null) return null;
    return [
      put(sheetNamed(marked.book, spot.sheet), spot.row, spot.column, { content, isText: true }),
    ];
  },
});

/** The note that is written over may be the only one that told the eater. */
const NOTE_LOST = { "caution-not-named": "a note was written over" } as const;

/** What was pasted in, and would run or ask a server elsewhere. */
export const pastingMutations: readonly Mutation[] = [
  {
    rule: "formula-reaches-out",
    sameLine: ["text-that-would-run"],
    variants: [
      pasted('=WEBSERVICE("https://example.org/price?item=7")', "12.40"),
      // "HYPERLINK in pasted data": in a note a plain link leads to a supplier, say, and is nothing wrong.
      pasted('=HYPERLINK("https://example.org/offer","price list")', "price list", besideLine),
      pasted("=cmd|'/c calc'!A0", "0"),
      pasted('=IMPORTXML("https://example.org/list","//price")', "3.10"),
    ],
    fair: {
      ...{ "value-from-outside": "a value from outside", ...NOTE_LOST },
      "hard-coded-number": "the formula holds a number",
    },
  },
  {
    rule: "text-that-would-run",
    sameLine: ["formula-reaches-out"],
    variants: [
      runs('=HYPERLINK("https://example.org/offer","offer")'),
      runs("=1+1"),
      runs("+cmd|' /C calc'!A0"),
      runs("@SUM(1+1)*2"),
      runs("-2+3+cmd|' /C calc'!A0"),
    ],
    fair: NOTE_LOST,
  },
];
