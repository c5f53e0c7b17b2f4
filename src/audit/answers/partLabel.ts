import { headerRole, type Role } from "../recipes/headerRole";
import { PER_WATER } from "../recipes/perWater";
import { plainWords } from "../recipes/plainWords";

export type Part = "water" | "dissolved solids" | "solids" | "sugars" | "sucrose" | "ethanol";

/** The more particular first. What is said of milk's own solids is another thing. */
const PARTS: readonly (readonly [Part, RegExp])[] = [
  [
    "dissolved solids",
    /dissolved (solids|matter)|solids (in solution|dissolved)|gelöste[nr]? (feststoffe|trockenmasse|stoffe)|\bgelöstes\b/,
  ],
  ["solids", /\bsolids\b|dry (matter|mass)|trocken(masse|substanz|stoffe)|feststoffe/],
  ["ethanol", /\b(pure )?(alcohol|ethanol)\b|alkohol/],
  ["sugars", /\bsugars?\b|zucker/],
  ["sucrose", /\bsucrose\b|saccharose/],
  ["water", /\bwater\b|wasser/],
  ["dissolved solids", /\b(dissolved|solutes?|gelöste[sn]?|gelöst)\b/],
];
/** What a label names without saying of what may be an ingredient, or a solute of a class. */
const MAY_BE_ONE = new Set<Part>(["water", "sugars", "sucrose"]);
const SOLUTES = /solids|matter|gelöste[nr]? (feststoffe|trockenmasse|stoffe)|gelöstes/;
const OTHER_THING =
  /milk solids|non-?fat|msnf|milchtrocken|fettfrei|% ?vol|abv|by volume|frozen|\b(as|is) ice\b|eisanteil|gefroren|free of|per bar|je (riegel|stück|portion)|lost|verlust|activity|aktivität|price|cost|added|temperature|sweet|süß/;
/** Grams in each kilogram, of the mix where nothing else is said. */
export const PER_KG =
  /(?:\bper|\bpro|\bje|\bauf|\/) ?(?:1 ?)?kg\b(?: (?:of )?(?:the )?(water|wasser))?/;
/** Grams in 100 g, which is the mix where nothing else is said. */
export const PER_100 =
  /(?:\bin|\bper|\bpro|\bje|\bauf|\/) ?100 ?g\b(?! ?(?:of )?(?:the )?(?:water|wasser|h2o))/;
export const SHARE = /%|per ?cent|prozent|\bshare\b|anteil|fraction|w\/w/;
/** "Water (g)" may be an ingredient; "Water in the mix" is not. */
const OF_ALL =
  /\b(total|all|in (the )?(mix|recipe|batch|whole)|of the (mix|recipe|batch)|whole|gesamt|insgesamt)\b|gesamt|in der (mischung|masse)|im (mix|ansatz)|\b(in|of|from|aus|von|auf) \d+ ?k?g (of |the )*(mix|recipe|batch|base|mischung|masse|ansatz|rezept|grundmasse)\b|\b(in (it|the|der|dem|einem|einer|one|each|every|jeder|jedem)|darin|davon|enthalten)\b/;
const NOT_PARTS = new Set<Role | null>([
  "freezing point",
  "depression",
  "molality",
  "ice fraction",
  "price",
  "temperature",
  "molar mass",
  "moles",
  "particles",
  "measured",
  "target",
  "name",
]);

/** What a label says is how much of in a recipe; null when it says no such thing. */
export function partOf(label: string): Part | null {
  const plain = plainWords(label);
  const isAbout100Water = PER_WATER.test(plain);
  if ((OTHER_THING.test(plain) && !isAbout100Water) || NOT_PARTS.has(headerRole(label)))
    return null;
  const words = plain.replace(PER_WATER, "");
  const part = PARTS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
  const isOfAll =
    [OF_ALL, SHARE, PER_KG, PER_100].some((words) => words.test(plain)) || isAbout100Water;
  const isPlain = part !== null && !MAY_BE_ONE.has(part);
  const isSaid = part !== "dissolved solids" || SOLUTES.test(plain);
  return part === null || (isPlain && isSaid) || isOfAll ? part : null;
}
