import type { Allergen } from "../../catalogue/ingredient";
import { allergensListed } from "./allergensListed";
import { allergensSetOff } from "./allergensSetOff";

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

const OF_LABEL = /^\W*(ingredients?|zutaten|made (of|from|with)|aus)\b.*[:,]/i;

const setsOffAll = (text: string, carried: readonly Allergen[]): boolean => {
  const parts = allergensSetOff(text);
  return carried.every((one) => parts.has(one));
};

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
