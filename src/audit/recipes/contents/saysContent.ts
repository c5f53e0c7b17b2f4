import { plainWords } from "../headings/plainWords";

/** Of what, how: "Wasser [g]", "fat g", "sugar, g/100 g", "% solids". So few words of units that a line of dashes is read at once. */
const UNITS = String.raw`\W*(?:\b(in )?(k?g|gramm|grams|%|per ?cent|prozent|g? ?(\/|per|je|pro|in|auf) ?(100|1000|1)? ?(k?g|l)?)\b\W*){0,4}`;
/** "Fettgehalt". */
const SHARE = "(-?(gehalt|anteil|content)e?)?";

const NEVER_A_MIX = [
  "(milk |milch)?(fat|fett)s?|butterfat|cocoa (fat|butter)|lipids?|proteins?|eiweiß|eiweiss|casein|ash|asche|fib(re|er)|ballaststoffe|starch|stärke|lactose|laktose|carbohydrates?|kohlenhydrate|kh|carbs",
  "(of which )?satur(ated|ates)|msnf|snf|m\\.?s\\.?n\\.?f\\.?|fettfreie (milch)?trocken(masse|substanz)|(milk )?solids[- ]non[- ]?fat|non[- ]?fat (milk )?solids",
  "((total|other|sonst\\.?|sonstige|übrige|rest(liche)?|gesamt|fruit|milk|cocoa|feste?)[- ]?)?(solids|dry (matter|mass|substance)|trocken(masse|substanz|stoffe?)|tm|ts|dm|tr\\.? ?m\\.?|feststoffe)",
  "stabili[sz]ers?|emulsifiers?|hydrocolloids?|(pure |reiner )?(alcohol|alkohol|ethanol)",
];
const PERHAPS_A_MIX = [
  "water|wasser|h2o|moisture|feuchte",
  "((total|added|all|gesamt)[- ]?)?(sugars?|zucker(arten)?|saccharides|sweeteners?)|salt|salz",
];

const headed = (words: readonly string[]): RegExp =>
  new RegExp(
    `^${UNITS}((the|davon|of which|thereof|darin) )?(${words.join("|")})${SHARE}${UNITS}$`,
    "u",
  );

const [SURE, PERHAPS] = [headed(NEVER_A_MIX), headed(PERHAPS_A_MIX)];

/** Whether a heading names what food is made of, as no recipe is called: for sure ("fat", "MSNF"), or beside such ("water"). */
export function saysContent(heading: string): "surely" | "perhaps" | null {
  const words = plainWords(heading);
  if (SURE.test(words)) return "surely";
  return PERHAPS.test(words) ? "perhaps" : null;
}
