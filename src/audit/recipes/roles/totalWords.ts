import type { Words } from "./words";

const UNIT = "[ ,/]*[([]?(in )?(g|kg|mg|lb|oz|grams|gramm|%)?[)\\]]?$";
const LOT =
  "(batch|mix|mixture|recipe|base|lot|eismasse|eismix|eismischung|jug|pot|bowl|tub|pan|tray|bucket|vat|can|thing|list|order|mass|ansatz|charge|masse|mischung|rezept|topf|schüssel|eimer)";

const SUMS: readonly RegExp[] = [
  /^((grand|overall|net|final|batch|mix|recipe) )?(sub ?-?)?((overall|full) (weight|mass|amount|quantity)|total(gewicht|masse|menge)|totals?|tot\.?|sum|summe|gesamt(menge|gewicht|masse|summe|ansatz|mischung|rezept)?|ges\.?|endsumme|zwischensumme|insgesamt|insg\.|insges\.|zus\.|sa\.)( (of )?(all |the )?(weight|mass|amount|batch|mix|recipe|ingredients|grams|quantity))?[ ,]*[([]?(in )?(g|kg|gramm|grams|%)?[)\]]?$/,
  /^((sub|grand|overall|zwischen)[ -]?)?(totals?|sum|summe|gesamt)\b(?!.*(solid|sugar|fat|water|h2o|\b(ts|tm)\b|guest|people|person|child|pupil|student|steps|schritte|\bmarks|points|hours|stunden|punkte|gäste|kinder|schüler|dry (matter|mass)|protein|lactose|salt|acid|alcohol|dissol|cost|price|kcal|calor|energy|\bkj\b|yield|\bbars?\b|piece|portion|serving|\bper\b|time|volume|\bm?l\b|overrun|mole|\bmol\b|particle|zucker|fett|wasser|trocken(masse|substanz)|eiwei(ß|ss)|säure|alkohol|gelöst|kosten|preis|€|stück|teilchen|feststoff)).{0,30}$/,
];
/** As tables of numbers have it: "Σ", "∑ g". */
const SIGN = /^[∑σς]( ?[([]?k?g[)\]]?)?$/;
/** What is of each, and all of it. */
const ALL_OF_IT = new RegExp(
  `^((everything|all|alles|all (the )?ingredients|alle zutaten)( together| in all| zusammen| in allem)?|(one|a bit) of (each|everything)|je eines|von allem|raw (yield|mass|weight|total)|roh(masse|gewicht|menge|ausbeute))${UNIT}`,
);
const WHOLE_LOT = new RegExp(
  `^((the |das |die |der )?(whole|entire|ganzer?|gesamter?) ${LOT}|(\\p{L}+ )?${LOT}( weight|gewicht)?,? (sum|summe|together|zusammen|gesamt|ges\\.?|insgesamt|insg\\.?|insges\\.?|in total|(all )?in all|altogether|total|all told|as a whole|im ganzen|alles in allem))${UNIT}`,
  "u",
);
const COMES_TO = new RegExp(
  `^((das |it |this |that |all )?(makes|comes to|adds up to|amounts to|weighs|(ergibt|macht|gibt|wiegt)( zusammen| insgesamt)?)( in all| altogether)?|zusammen|(all )?in all|in total|all told|all together|altogether|(the |die |das |der )?(finished |fertige[rs]? )?${LOT} (weighs|wiegt|comes to|makes|ergibt))${UNIT}`,
);

/** Labels of a sum of amounts. Common practice, no source. */
export const totalWords: Words = {
  test: (plain) => {
    const bare = plain.replace(/^[=→>] ?/, "");
    return (
      SIGN.test(bare) || [...SUMS, ALL_OF_IT, WHOLE_LOT, COMES_TO].some((one) => one.test(bare))
    );
  },
};
