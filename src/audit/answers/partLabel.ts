import { remembered } from "../../foundation/remembered";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import { perOf, withoutPerWater, type Per } from "./perOf";
import { BUT_WATER } from "./butWater";
import { plainWords } from "../recipes/headings/plainWords";

export type Part =
  ("water" | "dissolved solids" | "solids" | "sugars" | "sucrose" | "ethanol") | "sodium chloride";

/** A part of a mix as a label names it; `per` is null for the mass in the whole mix. */
export interface LabelledPart {
  readonly part: Part;
  readonly per: Per | null;
}

/** The more particular first. */
const PARTS: readonly (readonly [Part, RegExp])[] = [
  [
    "dissolved solids",
    /\bdiss(olv(ed?|es|ing)\b|\.)|\b(solids|what is|dissolved) in solution|^in (solution|lösung)\b|(goe?s?|gone|went|stay(s|ed)?|taken|brought) in(to)? solution|was in lösung|(geht|gehen|bleibt|bleiben) in lösung|\b(löst|lösen) sich\b(?! (nicht|nie|kaum|schwer|schlecht)\b)|\bsich (auf)?(löst|lösen)\b|\bsoluble\b|\bsolutes\b|gelöst|\bgel\. |löslich/,
  ],
  [
    "solids",
    /\bsolids\b|dry (matter|mass|substance)|trocken(m\b|masse|substanz|stoffe?|anteil)|feststoffe?|(^|gesamt[- ])(ts|tm|dm)\b/,
  ],
  ["solids", BUT_WATER],
  ["ethanol", /\b(alcohol|ethanol|alc|alk)\b|alkohol/],
  ["sugars", /\b(sugars?|sug)\b|zucker/],
  ["sucrose", /\bsucrose\b|saccharose/],
  ["sodium chloride", /\bsalt\b|salz|\bsodium chloride\b|natriumchlorid|\bnacl\b/],
  ["water", /\bwater\b|\baqueous\b|wasser|wässrige|\bh2o\b|moisture|feuchte?(gehalt|anteil)/],
];

/** What a label names without saying of what may be an ingredient. */
const MAY_BE_ONE = new Set<Part>(["water", "sugars", "sucrose", "sodium chloride"]);
/** The salt of a food as its packet tells it is not all of it sodium chloride. */
const BRINE = /brine|\bsole\b|salzlake|salzlösung|solution|lösung/;

/** What is no part of a mix, whatever else is said, and what is said of milk's own solids or of one ingredient. */
const OTHER_THING =
  /milk solids|non-?fat|msnf|milchtrocken|fettfrei|% ?vol|vol\.?-?%|\babv\b|by volume|volumen|undissolved|insoluble|(not|n['’]t|never|nicht) (to )?(dis)?(solve|gelöst|lös)|unlöslich|ungelöst|free of|lost|verlust|activity|aktivität|price|cost|preis|kosten|[€$]|added|zugesetzt|zugegeben|temperatur|°|sweet|sü(ß|ss)|\bi\b|cupboard|vorrat|\bleft\b|\bused\b|\bmol(es?|en)?\b|bath|bad\b|\btap\b|\bml\b|label|bar\b|riegel|stück\b|portion|density|dichte|\bweighs\b|wiegt/;
/** What one eater gets of it. */
const OF_HELPING =
  /\b(glass(es)?|cups?|tassen?|servings?|helpings?|scoops?|kugeln?|cones?|loll(y|ies)|shots?|spoon\w*|löffel\w*|plates?|tellern?)\b(?! (mix(ture)?|base|batch|recipe|masse|mischung|rezept)\b)|\b(per|a|each|every) (head|person|guest|eater|child|diner)\b|\b(je|pro|jede[rnm]?) (kopf|person|gast|esser|kind|becher)\b/;
/** What is said to those who eat, not of the mix: "Alcohol: over 18s, not if pregnant". */
const TO_EATER =
  /pregnan|schwanger|\bdriv(e|es|ing|ers?)\b|autofahr|\b(over|under|ab|unter) (1[268]|one|ones)\b|\b1[68] ?\+|\b(not?|never|nicht|nichts|kein\w*)\b.{0,30}\b(children|kids|kinder\w*)\b|\b(infants?|bab(y|ies))\b|allerg|\bchok/;
/** "Turned hard (% of the water)": a share of the water is not how much water there is. */
const OF_ITS_WATER =
  /(?<=\p{L}.*)[([,] ?(in )?(%|per ?cent|prozent) (of|des|vom|am) (the |its |all (the )?|total |gesamten )?(water|wassers?)[)\]]?$/u;
/** What a thing is kept in; a share in it is that of the mix. */
const KEPT_IN = /bottle|flasche|\bjars?\b|glas\b/;
const IN_EACH =
  /\b(in|per|pro|je|im) ((the|a|an|each|every|one|it|its|der|dem|einer|einem|jeder|jedem) )?(bottle|flasche|jars?|(sirup|einmach|schraub)?glas)\b/;
const OF_ONE =
  /(content|gehalt|share|anteil) (of|von|an|in|der|des) (?!%|prozent|per ?cent|(the |total )?(water|sugars?|solids|dry matter|alcohol|wasser|zucker|trockenmasse|alkohol)\b|(the |der |des |de[mnr] )?(everything|all(em)?|it all|lot|ganzen|mix|mass|whole|recipe|batch|total|weight|syrup|brine|solution|masse|mischung|rezept|gewicht|eis(mix|masse|es)?\b|sirup|sole|lösung|charge\b|ansatz|füllung|produkt|fertig|filling|product|finished|sorbet|dessert))/;
const FROZEN = /frozen|\b(as|is|of) ice\b|eisanteil|gefroren/;

/** Words after which a part is that of the mix, or the sum over its ingredients. */
const OF_ALL =
  /gesamt|insg|σ$|phase\b|\b(total|overall|all|(al)?together|zusammen(genommen)?|combined|allesamt|sum|summe|everything|alles|aller|allen|allem|every|aus|mix|recipe|batch|whole|pan|(eis|grund|sorbet)?masse|(eis|grund)?mischung|(ansatz|gemisch)(es)?|(grund|original|haus|voll|teil|ganzen )?rezept(ur|s)?|form|tisch|im (topf|kessel|eimer|kübel|krug|bottich|behälter|tank|ganzen|eis|sorbet)|(?:je|pro|per|each|every|a|der|dieser|ganzen) (?:schüssel|kessel|topf|eimer|charge|bowl|kettle|pot|bucket)|in (it|the|der|dem|einem|einer|a (?:jug|pot|pan|bowl|bucket|jar|batch|mix|beaker|churn|tub|tray|tin|mou?ld|vat|kettle|box|drum|tank|load|lot|run)|one|each|jeder|jedem)|(in|from) (here|there)|da?rin(nen)?|inside|therein|davon|enthält|enthalten|steckt|contains|(it|this|they|es|er|sie) (holds?|has|have|carr(y|ies)|hat|haben|führt)|comes to|their|his|whose|ihre?|deren|dessen|wherever|whichever|woher auch|egal woher|from (everywhere|anywhere|all sources)|includ\w*|incl|hidden|versteckte?s?|verborgene?s?|(?:also|too|auch),? (?:that |das )?(?:from|in|out of|aus|von|im)|inkl\w*|eingeschlossen|(mit)?gerechnet|(mit)?gezählt|(mit)?samt|einschl\w*|count(ed|ing)|reckon(ed|ing))\b/;
const NOT_PARTS = new Set<Role | null>([
  ...([
    "freezing point",
    "depression",
    "molality",
    "ice fraction",
    "price",
    "temperature",
  ] as const),
  ...([
    "cryoscopic constant",
    "molar mass",
    "moles",
    "particles",
    "measured",
    "target",
    "name",
    "abv",
  ] as const),
]);

function read(label: string): LabelledPart | null {
  const plain = plainWords(label);
  const per = perOf(plain);
  const isOfWater = per !== null && per !== "share" && per.of === "water";
  const isOfElse = [OTHER_THING, TO_EATER, OF_HELPING, OF_ONE].some((words) => words.test(plain));
  if (isOfElse || (FROZEN.test(plain) && !isOfWater)) return null;
  if (KEPT_IN.test(plain) && (per === null || !IN_EACH.test(plain))) return null;
  if (NOT_PARTS.has(headerRole(label))) return null;
  const words = (isOfWater ? withoutPerWater(plain) : plain).replace(OF_ITS_WATER, "");
  const part = PARTS.find(([, pattern]) => pattern.test(words))?.[0];
  if (part === undefined) return null;
  if (part === "sodium chloride" && !isOfWater && !BRINE.test(plain)) return null;
  // A bare "Sugar (g)" or "Water" may be an ingredient.
  const isOfAll = per !== null || OF_ALL.test(plain);
  return isOfAll || !MAY_BE_ONE.has(part) ? { part, per } : null;
}

const LABELS_KEPT = 100_000;

/** What a label says is how much of in a recipe; null when it says no such thing. */
export const partOf = remembered(LABELS_KEPT, read);
