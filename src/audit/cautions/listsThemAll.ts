import type { Allergen } from "../../catalogue/ingredient";
import { allergensListed } from "./allergensListed";

/** What is to be done or bought with them, not told: "Add milk, egg", "Still to buy: milk, eggs", "Fridge: …". */
const TO_COOK = [
  /\b(add|stir|pour|whisk|beat|mix|blend|warm|heat|boil|cook|simmer|churn|weigh|buy|bought|shop(ping)?|fetch|missing|short of|price|cost|deliver\w*|supplier|fridge|store|swap|replace|instead|substitut\w*|without)\b/i,
  /(^|[.;!:] ?)(first|then|last|take|use|get|bring|step|order|stock|needs?|left|base|no(?!\s*!)|not in|for the)\b/i,
  /(?<!\p{L})((zu|dazu)geben|(ein|unter|ver)?(rühr|misch|schlag|koch|erhitz|erwärm|wieg|gieß|giess)(en|t|e)?|holen|besorgen|mitbringen|markt|laden|lager|vorrat|schritt|zuerst|zuletzt|fehl(t|en)|brauch\p{L}*|preis|kosten|liefer\p{L}*|kühl(schrank|raum)|ersetz\p{L}*|statt|ohne)(?!\p{L})|kauf|bestell|contains? no\b|\bfree (of|from)\b|enthält kein|frei von/iu,
];

/** Letters that menus have for them: "G, C, H". Common practice, no source. */
const LETTERS: Partial<Record<Allergen, string>> = {
  "gluten cereals": "A",
  crustaceans: "B",
  egg: "C",
  fish: "D",
  peanuts: "E",
  soy: "F",
  milk: "G",
  "tree nuts": "H",
  celery: "L",
  mustard: "M",
  sesame: "N",
  sulphites: "O",
};
const ONLY_LETTERS = /^\W*(?:\p{L}{1,6}[.:]\s*)?((?:[A-R][\s,;/+&]*){2,})\W*$/u;

/** Words in capitals or between stars, as law wants allergens set off from other ingredients. @source eu1169_2011 */
const SET_OFF = /(?<!\p{L})\p{Lu}{3,}(?!\p{L})|\*{1,2}[\p{L} -]+\*{1,2}/gu;
const OF_LABEL = /^\W*(ingredients?|zutaten|made (of|from|with)|aus)\b.*[:,]/i;
const STEMS: Partial<Record<Allergen, RegExp>> = {
  milk: /milk|milch|cream|sahne|whey|molke|butter|lactose|laktose/i,
  egg: /egg|(?<!w)ei(er|gelb|klar)?(?!\p{L})/iu,
  "tree nuts": /nut|nuss|nüss|almond|mandel|pistac|pistaz|pecan|cashew/i,
  peanuts: /peanut|erdnuss|erdnüss/i,
  "gluten cereals": /wheat|weizen|gluten|flour|mehl|barley|gerste|oat|hafer/i,
  soy: /soy|soja/i,
  sesame: /sesam|tahin/i,
};

function setsOffAll(text: string, carried: readonly Allergen[]): boolean {
  const parts = text.match(SET_OFF) ?? [];
  const isMixed = /\p{Ll}{3}/u.test(text);
  return isMixed && carried.every((one) => parts.some((part) => STEMS[one]?.test(part) === true));
}

function hasAllLetters(text: string, carried: readonly Allergen[]): boolean {
  const [, letters] = ONLY_LETTERS.exec(text) ?? [];
  return letters !== undefined && carried.every((one) => letters.includes(LETTERS[one] ?? "?"));
}

/**
 * Whether a text gives all the allergens that are in some recipes, two at least or one in a label's list: one behind the other, set off from
 * other ingredients, or by their letters. Whatever words stand around them, that tells the eater, unless they tell
 * the cook.
 */
export function listsThemAll(text: string, carried: ReadonlySet<Allergen>): boolean {
  const all = [...carried];
  if (carried.size < 2) return OF_LABEL.test(text) && setsOffAll(text, all);
  if (setsOffAll(text, all) || hasAllLetters(text, all)) return true;
  const listed = allergensListed(text);
  return all.every((one) => listed.has(one)) && !TO_COOK.some((words) => words.test(text));
}
