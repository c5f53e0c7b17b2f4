import { MIX_NOUNS } from "../recipes/roles/mixNouns";

/** What a number is per: so many grams of the mix or of its water, or a share of the mix. */
export type Per = { readonly grams: number; readonly of: "mix" | "water" } | "share";

const OF_WATER =
  /(?:\b(?:per|pro|je|auf|to|for|on|with|mit|bezogen auf|in relation to|im verhältnis zu[mr]?|in)|\/)\W{0,3}(?:every |each |the |its |dem |das )?(?:(\d+) ?(?:k?g\b|grams?\b|gramm\b)? ?(?:of |the |its |their |reines |seines |ihres |in )*)?(?:the )?(?:water|wasser|h2o|w\.)/;
const OF_MIX =
  /(?:\b(?:per|pro|je|auf|in|for|für|von|of|aus)|\/) ?(?:every |each )?(?:(100|1000) ?g|(?:(?:1|einem|one|a|each) ?)?(kg|kilo(?:gramm?)?))\b/;
/** "Per 10 kg formula, g": so much of what may be another thing needs the word for the mix. */
const OF_SO_MUCH = new RegExp(
  `\\b(?:per|pro|je|auf) (\\d+(?:[.,]\\d+)?)[ -]?(kg|kilos?|g)[ -](?:of |an |von |der |des |dem |the )*${MIX_NOUNS}\\b`,
);
const SHARE =
  /%|per ?cent|\bpct\b|prozent|\bshare\b|\bproportion\b|fraction|anteil|percentage|w\/w|gehalt|content|by weight|im ganzen/;
const PERCENT = /%|per ?cent|\bpct\b|prozent/;
const IN_GRAMS = /[([,] ?(in )?(k?g|grams?|gramm) ?[)\]]?$/;
const MASS = /\bk?g(?!\p{L})|\bgrams?\b|gramm|\bkilos?\b/u;

/** What plain words say that a number is per; null where they do not. */
export function perOf(plain: string): Per | null {
  const ofWater = OF_WATER.exec(plain);
  if (ofWater !== null && !/^(water|wasser)/.test(plain) && !isWhere(ofWater[0], plain))
    return { grams: isKilogram(ofWater[0]) ? 1000 : 100, of: "water" };
  // "Alcohol by weight in the batch, g", "Water content (g)": the unit says that it is no share.
  const isShare = (IN_GRAMS.test(plain) ? PERCENT : SHARE).test(plain);
  if (isShare && !MASS.test(plain)) return "share";
  const ofMix = OF_MIX.exec(plain);
  if (ofMix !== null) return { grams: ofMix[1] === "100" ? 100 : 1000, of: "mix" };
  const [, number, unit] = OF_SO_MUCH.exec(plain) ?? [];
  if (number !== undefined)
    return { grams: Number(number.replace(",", ".")) * (unit === "g" ? 1 : 1000), of: "mix" };
  return isShare ? "share" : null;
}

/** "Dissolved in the water (g)" is where it is, not per how much. */
const isWhere = (words: string, plain: string): boolean =>
  /^in\b(?!.*\d)/.test(words) && IN_GRAMS.test(plain);

const isKilogram = (words: string): boolean => /1000|(?<!\d ?)kg|1 ?kg/.test(words);

/** Plain words without what they are per so much water. */
export const withoutPerWater = (plain: string): string => plain.replace(OF_WATER, "");
