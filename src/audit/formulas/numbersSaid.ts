/** "Recipe for 50 (g)", "je 12 Stück": for how many or how much the numbers below are. */
const FOR_SO_MANY =
  /\b(?:for|per|makes|serves|für|je|pro|auf)(?: (?:every|each|the))? (\d+(?:[.,]\d+)?)\b/giu;
/** "3 buckets", "6 Formen", "84 guests": counted by their name, and no date. */
const COUNTED =
  /(?<![\p{L}\d.,:/–-])(\d+)\s?(?!(?:of|von|bis|to|and|und|or|oder|mm?|cm|min|std|uhr|ml|mol|kg|mg|grad|degrees?|percent|prozent|jan|feb|mar|mär|apr|mai|may|jun|jul|aug|sep|oct|okt|nov|dec|dez)(?![\p{Ll}])|(?:jan|feb|mar|mär|apr|jun|jul|aug|sept|oct|okt|nov|dec|dez)\p{L}+(?!\p{L}))\p{L}{2,}/giu;
/** "Fair day (8)". */
const IN_BRACKETS = /\((\d+)\)/g;
/** "At 2.80 € per kg", "takings at £3.50", "£4 each": what one of what a formula counts costs. */
const MONEY =
  /(?<![\p{L}\d.,])((?<=\p{Sc} ?)\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)?(?= ?(?:\p{Sc}|eur|euros?|usd|chf|gbp|cents?|ct|pence|p)(?!\p{L})))/giu;
/** "Tubs of 500 g", "Becher à 120 ml", "80-g-Kugeln": how much each has of what a formula counts. */
const GRAMS =
  /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?)[ -]?(?:g|[mc]?l|oz|lb|grams?|gramm|lit(?:re|er)s?)(?!\p{L})/giu;
const KILOS = /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?)[ -]?(?:kg|kilos?)(?!\p{L})/giu;

/** "Out of 50", "von 40 Punkten", "max. 30": the most that the numbers of a row can come to. */
const OUT_OF =
  /\b(?:out of|of|von|aus|max\.?|maximum|maximal|höchstens)(?: (?:a |the )?(?:possible |maximum |insgesamt |total of ))?\s*(\d+(?:[.,]\d+)?)(?![\d\s]*[°%]|\s*k?g\b)/giu;

/** "30 % overrun", "mango 16.5, pear 13.5, plum 16.7 %": shares, the last of a row of them with its sign. */
const SHARES =
  /(?<![\p{L}\d.,])\d+(?:[.,]\d+)?(?:(?: ?%)?(?:,| and| und|;) (?:[\p{L} -]{1,30} )?\d+(?:[.,]\d+)?)* ?(?:%|per ?cent(?!\p{L})|prozent(?!\p{L}))/giu;
const NUMBERS = /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?)/gu;

function numbersIn(words: string, pattern: RegExp): readonly number[] {
  return [...words.matchAll(pattern)].map((found) => {
    const digits = found.slice(1).find(Boolean) ?? "";
    return Number(digits.replace(",", "."));
  });
}

/** How much it is, in grams. */
const grams = (words: string): readonly number[] => [
  ...numbersIn(words, GRAMS),
  ...numbersIn(words, KILOS).map((kilos) => 1000 * kilos),
];

/** Grams as a formula takes them: as they are, as kilograms, or of a hundred grams. */
const asTaken = (mass: number): readonly number[] => [mass, mass / 1000, mass / 100];

const percents = (words: string): readonly number[] =>
  (words.match(SHARES) ?? []).flatMap((shares) => numbersIn(shares, NUMBERS));

/** Shares as a formula takes them: which part of the whole it is, and what is left without it. */
const asParts = (percent: number): readonly number[] => [percent / 100, 1 - percent / 100];

/** The numbers that words say of something. */
export const numbersSaid = {
  /** For how many or of how many it is: "for 12", "6 moulds". */
  counts: (words: string): readonly number[] =>
    [FOR_SO_MANY, COUNTED, IN_BRACKETS].flatMap((pattern) => numbersIn(words, pattern)),
  grams,
  /** How much it is, as a formula takes it. */
  masses: (words: string): readonly number[] => grams(words).flatMap(asTaken),
  asTaken,
  /** Which part of the whole it is and what is left without it, as a formula takes them. */
  shares: (words: string): readonly number[] => percents(words).flatMap(asParts),
  /** The same of shares with a decimal, which no other number is by chance. */
  exactShares: (words: string): readonly number[] =>
    percents(words)
      .filter((percent) => !Number.isInteger(percent))
      .flatMap(asParts),
  /** How much more there is with it, as with overrun. */
  more: (words: string): readonly number[] => percents(words).map((percent) => 1 + percent / 100),
  /** What it is sold for. */
  money: (words: string): readonly number[] => numbersIn(words, MONEY),
  /** Out of how many. */
  outOf: (words: string): readonly number[] => numbersIn(words, OUT_OF),
};
