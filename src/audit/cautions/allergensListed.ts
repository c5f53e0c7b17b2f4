import type { Allergen } from "../../catalogue/ingredient";

/** How labels, and those who write by hand, call the allergens that food law names. @source eu1169_2011 */
const CALLED: readonly (readonly [Allergen, string])[] = [
  [
    "milk",
    "(?:cow['’]?s? |kuh)?(?:milk|milch)(?: ?protein|eiwei(?:ß|ss))?|dairy|lactose|laktose|milch(?:produkte|erzeugnisse)",
  ],
  ["egg", "(?:hen['’]?s? |hühner)?(?:eggs?|ei(?:er|ern)?)(?: ?yolks?|gelb|klar)?"],
  [
    "tree nuts",
    "(?:tree ?)?nuts?|n(?:u|ü)(?:ss|ß)(?:en?)?|schalenfr(?:ü|u)chten?|hazelnuts?|walnuts?|almonds?|pistachios?|pecans?|cashews?|hasel(?:nuss|nüssen?)|wal(?:nuss|nüssen?)|mandeln?|pistazien?",
  ],
  ["peanuts", "(?:pea|ground)nuts?|erdn(?:u|ü)ssen?"],
  ["gluten cereals", "gluten|wheat|barley|rye|oats|weizen|gerste|roggen|hafer|dinkel|spelt"],
  ["soy", "soya?(?: ?beans?)?|soja(?:bohnen?)?"],
  ["sesame", "sesame?"],
  ["sulphites", "sul(?:ph|f)it(?:es?|en?)?"],
  ["fish", "fish|fisch"],
  ["celery", "celery|sellerie"],
  ["mustard", "mustard|senf"],
  ["lupin", "lupin(?:e|en|s)?"],
];
const ONE = `(?<!\\p{L})(?:${CALLED.map(([, words]) => words).join("|")})(?!\\p{L})`;
const BETWEEN =
  "(?:[\\s,;/&+·•|*:()!–-]|(?<!\\p{L})(?:cream|sahne|rahm|butter|yogh?urt|joghurt|quark|and|und|or|oder|sowie|plus|with|mit|the|yes|ja|no|nor|kein(?:e[nr]?)?|of|aus|von)(?!\\p{L}))+";
/** Several of them one behind the other, with nothing else between: not "milk ice with nuts". */
const LISTED = new RegExp(
  `${ONE}(?:${BETWEEN}${ONE})+(?!\\s*(?:ice|eis|sorbet|gelato|shake|pudding)(?!\\p{L}))`,
  "giu",
);
const ALONE = new RegExp(`^${ONE}$`, "iu");
const LONGEST_NAME = 30;
const EACH = CALLED.map(
  ([allergen, words]) => [allergen, new RegExp(`(?<!\\p{L})(?:${words})(?!\\p{L})`, "iu")] as const,
);

/** The allergens that a text lists one behind the other, two at least. */
export function allergensListed(text: string): ReadonlySet<Allergen> {
  const lists = text.normalize("NFC").match(LISTED) ?? [];
  return new Set(
    EACH.filter(([, words]) => lists.some((list) => words.test(list))).map(
      ([allergen]) => allergen,
    ),
  );
}

/** The allergen that a text calls by its name and nothing else; null of any other. */
export function allergenCalled(text: string): Allergen | null {
  const name = text.length > LONGEST_NAME ? "" : text.normalize("NFC").trim();
  if (!ALONE.test(name)) return null;
  return EACH.find(([, words]) => words.test(name))?.[0] ?? null;
}
