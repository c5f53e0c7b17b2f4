import { headerRole, type Role } from "../recipes/headings/headerRole";
import { unitFromHeader, unitFromWord } from "../recipes/amounts/unit";

/** Labels of answers, and of what the rules on constants look after. */
const NO_INPUT: ReadonlySet<Role | null> = new Set<Role | null>([
  ...(["freezing point", "depression", "ice fraction", "molality", "moles"] as const),
  ...(["particles", "molar mass", "cryoscopic constant", "measured"] as const),
  ...(["composition", "abv", "ethanol", "total", "target", "temperature"] as const),
]);

const SAYS_UNIT =
  /[°º%€$£]|[([][^)\]]{1,14}[)\]]\s*$|(?<![\p{L}\d_])(celsius|fahrenheit|kelvin|degrees?|grad|eur|euro|usd|chf|mol|min(utes?|uten)?|hours?|h|stunden?|days?|tage|cm|mm)(?![\p{L}\d_])/iu;
/** What is counted by name or compared has no unit; what is dissolved is looked after by its own rules. */
const HAS_NONE =
  /\b(numbers?|count|no\.?|nr\.?|how many|wie viele|factor|ratio|version|date|datum|week|kw|year|jahr|times|mal|id|ph|ice|(?<!\b(?:one|an?|each|per|eine?|je|pro|jeder) )(?:trial|versuch)|discount|rabatt|drift|offset)\b|anzahl|faktor|verhältnis|water|wasser/i;
const COUNTED =
  /\b(pieces?|portions|portionen|servings?|bars?|moulds?|molds?|formen|trays?|bleche|guests?|gäste|people|personen|eaters?|diners?|covers|mouths|heads|children|kids|pupils|students|campers|visitors|customers|members|esser|kinder|köpfe|schüler(innen)?|teilnehmer(innen)?|besucher|kunden|mitglieder)\b|stück/i;
/** What one of them weighs or holds is no count: "one mould takes", "Füllung je Stück". */
const MEASURED =
  /\b(weight|mass|weighs?|holds|takes|fills|filling|fill (?:of|in|per|for)|wiegt|wiegen|fasst|fassen|füllung|inhalt)\b|gewicht|masse\b|füllmenge|\b(mix|base|liquid|syrup|mischung|flüssigkeit|sirup|eis) ((for|in|für) (an?|one|each|every|eine?n?|jede[mnrs]?)|per|je|pro)\b/i;
/** "One mould", "eine Form": how much goes into it; what is counted comes in the plural. */
const OF_ONE = /^(one|an?|each|per|eine?|je|pro|jede[rs]?) (?!.*\b(in|per|je|pro)\b)[\p{L}-]+$/iu;
/** How heavy a volume is: a figure of a mix that someone measured, which formulas turn litres into grams by. */
const DENSITY = /(?<!relative )(\bdensity\b|dichte)/i;
/** Beside a number a vessel alone is what it holds, not what the number counts: "Cup | 110". */
const VESSEL =
  /^((a|one|the|each|our|eine?|der|die|das|unser) )?(cup|glass|tub|bowl|jug|pot|spoon|scoop|ladle|tasse|becher|glas|schale|löffel|kelle|kugel)$/i;

/** What stays behind and is never eaten: "Stays in the churn", "left in the bowl", "bleibt im Topf hängen". */
const LEFT_BEHIND =
  /\b(stays?|staying|remains?|remaining|sticks?|sticking|left|clings?|bleibt|bleiben|haftet|haften|klebt|hängt) (behind )?(in|on|to|at|im|in der|an|am|an der) /i;

/** What is weighed, filled or lost; common practice, no source. */
const QUANTITY = new RegExp(
  [
    "ansatz\\b|\\b(batch|charge|mass|weight|amount|quantity|size|portion|loss(es)?|waste|overrun|yield|volume|evaporat\\w*|shrink\\w*)\\b",
    "menge|grö(ß|ss)e|schwund|verlust|ausbeute|aufschlag|volumen|\\bcapacity\\b",
    MEASURED.source,
    DENSITY.source,
    VESSEL.source,
    "^(how much|wie ?viel)\\b(?!.*\\b(cost|kostet|paid|bezahlt)\\b)",
    "^mix (to|for|in|per|needed|wanted|made|today|tomorrow|heute|morgen|für|pro|je|am|gesamt)\\b|\\b(goes|go|kommt|kommen|passt|passen|geht|gehen|gehört|gehören)( (in|into|hinein|rein))?$",
    "\\b(per|pro|je|a|one|each|my|our|meine?r?|unsere?|eine?|in den|in die|in jede[mnrs]?) (tub|tin|mould|mold|bowl|pan|pot|jug|cup|glass|dose|form|becher|topf|schüssel|wanne|glas)\\b",
  ].join("|"),
  "i",
);

const LONGEST_LABEL = 50;
/** A unit in brackets at the end of a label: then the labels of its neighbours carry theirs, too. */
const IN_BRACKETS = /[([]\s*([^)\]]{1,14})\s*[)\]]\s*$/;

/** "Per piece" is no unit. */
const PER_PIECE = /\b(per|pro|je|each|a) (piece|bar|portion|serving|stück|riegel|kugel)$/i;

/** What a vessel holds may be said below a list in it, or of the cups that it is to fill. */
const HOLDS = /\p{L} (holds|takes|fasst|fassen)$/iu;

export const saysUnit = (label: string): boolean =>
  SAYS_UNIT.test(label) || unitFromHeader(label.replace(PER_PIECE, "")) !== null;

/** Whether a text, a format or a unit cell names a unit that is no mass: degrees, money, hours. */
export const namesUnit = (text: string): boolean => SAYS_UNIT.test(text);

/** Whether a label ends with its unit in brackets: "Filling (g)". */
export function carriesUnit(label: string): boolean {
  const inside = IN_BRACKETS.exec(label)?.[1] ?? "";
  return (
    unitFromWord(inside) !== null || /[°%€$£]|(?<!\p{L})(h|min|ml|l|mol)(?!\p{L})/iu.test(inside)
  );
}

/** "Wanted amount" is no target of a mix but how much of it is made. */
const isWished = (label: string): boolean => QUANTITY.test(label) && headerRole(label) === "target";

/** "Plates to send", "Sticks in a mould": what is counted is named in the plural. */
const PLURAL =
  /^(?!(each|every|one|an?|per) )(?!(makes|takes|gives|gets|needs|yields|comes|goes)\b)(\p{L}+ )?\p{L}+(?<![aisu])s\b|^(kugeln|portionen|teller|becher|tüten|gläser|riegel|formen|dosen)\b/iu;

/** "Enough for ladles": what something goes round for is counted. */
const GOES_ROUND =
  /^((that|das) )?(is |makes )?(enough|sufficient) for\b|^(das )?(reicht|langt|genügt) für\b/i;

/** Whether a label names what is counted, not weighed. */
export const countsThings = (label: string): boolean =>
  !MEASURED.test(label) &&
  [HAS_NONE, COUNTED, PLURAL, GOES_ROUND].some((words) => words.test(label));

/** Whether a label may be that of an input and names no unit; what is wanted is one where it is a cold temperature. */
export const isBareLabel = (label: string, isCold = false): boolean =>
  label.length <= LONGEST_LABEL &&
  (VESSEL.test(label) || !saysUnit(label)) &&
  !HAS_NONE.test(label) &&
  // Less than nothing counts nobody: "Lagerung beim Kunden | −18".
  (isCold || !COUNTED.test(label) || MEASURED.test(label) || OF_ONE.test(label)) &&
  (isWished(label) ||
    DENSITY.test(label) ||
    HOLDS.test(label) ||
    !NO_INPUT.has(headerRole(label)) ||
    (isCold && headerRole(label) === "target"));

export const isPrice = (label: string): boolean => headerRole(label) === "price";

/** Whether what a label names is measured, so that its number has a unit. */
export const isQuantity = (label: string): boolean => QUANTITY.test(label);

/** Whether a number is what stays behind: a fraction may be a share of it. */
export const isLeftBehind = (label: string, value: number): boolean =>
  value >= 1 && LEFT_BEHIND.test(label);

/** Whether a label is a vessel alone: what it holds or, where formulas multiply grams by it, how many there are. */
export const isVessel = (label: string): boolean => VESSEL.test(label);
