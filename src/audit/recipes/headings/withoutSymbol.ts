/** "ms, mass dissolved", "Kf: constant of water": the letters of a quantity before its name, which are no unit; not "Kf, water". */
const SYMBOL =
  /^(?!(?:k?g|mg|k|m?l|cl|dl|oz|lb|nr|no|pc|in|ei|öl)\b|kf[,:] wa)\p{L}[\p{L}\d₀-₉]?(?:, |: | – | - )(?=\p{L}{4})/u;

/** Plain words of a label without the letters that stand for it in formulas. */
export const withoutSymbol = (plain: string): string => plain.replace(SYMBOL, "");
