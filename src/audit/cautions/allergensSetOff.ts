import { ALLERGENS, type Allergen } from "../../catalogue/ingredient";

/** Words in capitals or between stars, as law wants allergens set off from other ingredients. @source eu1169_2011 */
const SET_OFF = /(?<!\p{L})(?:\p{Lu}{3,}|EI)(?!\p{L})|\*{1,2}[\p{L} -]+\*{1,2}/gu;

const STEMS: Partial<Record<Allergen, RegExp>> = {
  milk: /milk|milch|cream|sahne|whey|molke|butter|lactose|laktose/i,
  egg: /egg|(?<!w)ei(er|gelb|klar)?(?!\p{L})/iu,
  "tree nuts": /nut|nuss|nüss|almond|mandel|pistac|pistaz|pecan|cashew/i,
  peanuts: /peanut|erdnuss|erdnüss/i,
  "gluten cereals": /wheat|weizen|gluten|flour|mehl|barley|gerste|oat|hafer/i,
  soy: /soy|soja/i,
  sesame: /sesam|tahin/i,
};

/** The allergens that a text sets off from other words; none where all of it is in capitals. */
export function allergensSetOff(text: string): ReadonlySet<Allergen> {
  const parts = /\p{Ll}{3}/u.test(text) ? (text.match(SET_OFF) ?? []) : [];
  return new Set(ALLERGENS.filter((one) => parts.some((part) => STEMS[one]?.test(part) === true)));
}
