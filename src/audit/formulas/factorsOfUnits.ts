/** How many of one unit make the next, which words that name one of them say (NIST Handbook 44, appendix C). */
const MADE_OF: readonly (readonly [RegExp, readonly number[]])[] = [
  [/(?<!\p{L})(lbs?|pounds?|oz|ounces?)(?!\p{L})/iu, [16, 1 / 16]],
  [/(?<!\p{L})(gal(lons?)?|quarts?|qts?|pints?|pts?)(?!\p{L})/iu, [4, 8, 128]],
  [/(?<!\p{L})(weeks?|weekly|days?|daily|wochen?|wöchentlich|tage?|täglich)(?!\p{L})/iu, [7]],
];

/** The factors between units that words which name one of them explain: sixteen of what is "in lb". */
export const factorsOfUnits = (words: string): readonly number[] =>
  MADE_OF.flatMap(([unit, factors]) => (unit.test(words) ? factors : []));
