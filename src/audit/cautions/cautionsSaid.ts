import { saysEggSafe } from "./saysEggSafe";
import { saysPasteurised } from "./saysPasteurised";

/** A caution that a recipe may carry, and how a sheet says it. */
export interface SaidCaution {
  readonly key: "honey and infants" | "alcohol" | "raw egg" | "raw flour" | "glycerol and children";
  /** Whether a text tells the eater of it. */
  readonly said: (text: string) => boolean;
  /** Whether the name of an ingredient or the label of a number says that there is nothing to tell. */
  readonly isAverted?: (label: string) => boolean;
  readonly advice: string;
}

const YOUNG =
  /infant|bab(y|ies)|toddler|wickelkind|under[- ](1s?|ones?)\b|(children|kids|ages?|those) over (1|one)\b|(12|twelve)\+?[- ]?(months?|mo)\b|from (age )?(one|1)\b( year)?(?! ?[\p{L}\d])|(at least|over) (one|1|a) year|(ab|älter als|über) (1|einem) (jahr|j\b)|first (year|birthday)|1 year|säugling|kleinkind|unter (1|einem) jahr|(12|zwölf)[- ]?mon(at|\b)|ersten lebensjahr|(1\.|ersten) geburtstag/iu;

/** "Add the alcohol when it is cold" tells the cook, "Bottles, alcohol by weight" heads a table. */
const NOT_TO_EATER =
  /\b(add(ed|ing)?|stir(red)?|pour(ed)?|boil(ed)?|evaporates?|when cold|last|zu(ge)?geben|dazu(ge)?geben|zugie(ß|ss)en|(ein|unter)(ge)?rühr(en|t)|kochen|verkocht|verdampf\w*|zuletzt|zum schluss|al[ck]ohol (by|nach) (weight|volume|mass|gewicht|masse|volumen))\b/i;
const HAS_ALCOHOL =
  /\b(contains?|has|have|with|enthält|enthalten|mit) (some |etwas |\d+([.,]\d+)? ?% )?al[ck]ohol|\b(contains?|enthält) (some |etwas )?(alc\b|spirits?\b|spirituose)/i;
const GROWN_UP =
  /adults|grown[- ]?ups|erwachsene|18 (years|jahren)|(ab|over|from|under|unter) (18|eighteen)s?(?=\s*($|[,;!)]|[.:](?!\d)|[–-](?!\s*\d)|years?\b|jahren?\b|only\b))|\b18 ?\+|minderjährige/i;
const PREGNANT = /pregnan|schwanger/i;
/** Of cold food with spirits this is said for one reason only. */
const NO_CHILDREN =
  /\b(not|never|no|none|nicht|nichts?|nix|kein\w*)\b.{0,20}\b(children|kids|pupils|minors|kinder\w*|schüler\w*|jugendlich\w*)|\b(children|kids|drivers|kinder|fahrer\p{L}*): ?(no|none|not|nein|nicht|kein\p{L}*)\b/iu;
/** Nothing else keeps anyone from driving. */
const NO_DRIVERS =
  /\b(not|never|no|nobody|no one|none|nicht|nichts?|nix|kein\w*|niemand)\b.{0,60}\b(driv(e|es|ing|ers?)|(auto)?fahr(en|er\w*|t|e))\b/i;
/** A strength on a label: "alk. 6 % vol", "ABV 3,2 % - show on label". */
const STRENGTH = /^(?=.*\d).*\b(abv|al[ck]\.?)\b.*%|^(?=.*\d).*\bal[ck]\.? .*%? ?vol/i;
const FREE =
  /al[ck]ohol[- ]?(free|frei)|\b(no|without|free (of|from)|ohne|kein(en)?|frei von) al[ck]ohol/gi;

const RAW_EGG =
  /raw (or undercooked )?(egg|yolk)|uncooked egg|\brohe[mnrs]? (ei|eigelb|eier)|\brohei\b|pasteuri[sz]ed?\b|pasteurisier|\bpast\./i;

/** "Yolks are cooked to 84 °C": only where egg is named it is what was heated. */
const EGG = /\b(eggs?|egg ?yolks?|yolks?|ei|eier|eigelbe?|eidotter|dotter)\b/i;

function tellsOfAlcohol(text: string): boolean {
  const told = text.replaceAll(FREE, "");
  if ([HAS_ALCOHOL, GROWN_UP, NO_CHILDREN, NO_DRIVERS, STRENGTH].some((words) => words.test(told)))
    return true;
  if (PREGNANT.test(told) && !RAW_EGG.test(told)) return true;
  return /al[ck]ohol/i.test(told) && !NOT_TO_EATER.test(told);
}

const HEATED_FLOUR =
  /(heat[- ]treated|baked|toasted) flour|flour,? \(?(heat[- ]treated|baked|toasted)|(erhitztes|geröstetes|hitzebehandeltes) \p{L}*mehl|mehl,? \(?(vorher )?(erhitz|geröstet|rösten|hitzebehandelt)/iu;
const RAW_FLOUR = /(raw|uncooked) flour|rohes mehl/i;
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
    isAverted: (label) => saysPasteurised(label) || (EGG.test(label) && saysEggSafe(label)),
    advice: "it contains raw egg unless pasteurised",
  },
  {
    key: "raw flour",
    said: (text) => RAW_FLOUR.test(text) || HEATED_FLOUR.test(text),
    isAverted: (label) => HEATED_FLOUR.test(label),
    advice: "it contains raw flour unless heated",
  },
  {
    key: "glycerol and children",
    said: (text) => GLYCEROL.test(text),
    advice: "glycerol is not for small children",
  },
];
