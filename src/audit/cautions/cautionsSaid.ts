/** A caution that a recipe may carry, and how a sheet says it. */
export interface SaidCaution {
  readonly key: "honey and infants" | "alcohol" | "raw egg" | "raw flour" | "glycerol and children";
  /** Whether a text tells the eater of it. */
  readonly said: (text: string) => boolean;
  readonly advice: string;
}

const YOUNG =
  /infant|bab(y|ies)|toddler|under[- ](1s?|ones?)\b|(12|twelve)[- ]?(months?|mo)\b|first (year|birthday)|1 year|säugling|kleinkind|unter (1|einem) jahr|(12|zwölf)[- ]?monat|ersten lebensjahr|(1\.|ersten) geburtstag/i;

/** "Add the alcohol when it is cold" tells the cook, "Bottles, alcohol by weight" heads a table. */
const NOT_TO_EATER =
  /\b(add(ed|ing)?|stir(red)?|pour(ed)?|boil(ed)?|evaporates?|when cold|last|zu(ge)?geben|dazu(ge)?geben|zugie(ß|ss)en|(ein|unter)(ge)?rühr(en|t)|kochen|verkocht|verdampf\w*|zuletzt|zum schluss|al[ck]ohol (by|nach) (weight|volume|mass|gewicht|masse|volumen))\b/i;
const HAS_ALCOHOL =
  /\b(contains?|has|have|with|enthält|enthalten|mit) (some |etwas |\d+([.,]\d+)? ?% )?al[ck]ohol/i;
const GROWN_UP = /adults|grown-?ups|erwachsene|18 (years|jahren)|ab 18|over 18|\b18 ?\+/i;
/** Of cold food with spirits this is said for one reason only. */
const NO_CHILDREN =
  /\b(not|never|no|none|nicht|nichts?|nix|kein\w*)\b.{0,20}\b(children|kids|pupils|minors|kinder\w*|schüler\w*|jugendlich\w*)/i;
/** Nothing else keeps anyone from driving. */
const NO_DRIVERS =
  /\b(not|never|no|nobody|no one|none|nicht|nichts?|nix|kein\w*|niemand)\b.{0,60}\b(driv(e|es|ing|ers?)|(auto)?fahr(en|er\w*|t|e))\b/i;
/** A strength on a label: "alk. 6 % vol", "ABV 3,2 % - show on label". */
const STRENGTH = /^(?=.*\d).*\b(abv|al[ck]\.?)\b.*%|^(?=.*\d).*\bal[ck]\.? .*%? ?vol/i;
const FREE =
  /al[ck]ohol[- ]?(free|frei)|\b(no|without|free (of|from)|ohne|kein(en)?|frei von) al[ck]ohol/gi;

function tellsOfAlcohol(text: string): boolean {
  const told = text.replaceAll(FREE, "");
  if ([HAS_ALCOHOL, GROWN_UP, NO_CHILDREN, NO_DRIVERS, STRENGTH].some((words) => words.test(told)))
    return true;
  return /al[ck]ohol/i.test(told) && !NOT_TO_EATER.test(told);
}

const RAW_EGG =
  /raw (or undercooked )?(egg|yolk)|uncooked egg|pasteuri[sz]ed|\brohe[mnrs]? (ei|eigelb|eier)|\brohei\b|pasteurisiert/i;
const RAW_FLOUR =
  /(raw|uncooked) flour|(heat[- ]treated|baked|toasted) flour|rohes mehl|(erhitztes|geröstetes|hitzebehandeltes) mehl|mehl (vorher )?(erhitzen|rösten)/i;
const GLYCEROL =
  /^(?=.*(glycerol|glycerin|\be ?422\b)).*\b(child|children|kids?|toddlers?|kinder\p{L}*|kleinkind\p{L}*|years?|jahren?|kleinen|contains?|enthält|under|unter|ab \d)\b/iu;

/** What should be said where it is in a recipe. */
export const cautionsSaid: readonly SaidCaution[] = [
  {
    key: "honey and infants",
    said: (text) => YOUNG.test(text),
    advice: "honey is not for children under twelve months",
  },
  { key: "alcohol", said: tellsOfAlcohol, advice: "it contains alcohol" },
  {
    key: "raw egg",
    said: (text) => RAW_EGG.test(text),
    advice: "it contains raw egg unless pasteurised",
  },
  {
    key: "raw flour",
    said: (text) => RAW_FLOUR.test(text),
    advice: "it contains raw flour unless heated",
  },
  {
    key: "glycerol and children",
    said: (text) => GLYCEROL.test(text),
    advice: "glycerol is not for small children",
  },
];
