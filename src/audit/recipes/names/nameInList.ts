import { remembered } from "../../../foundation/remembered";
import type { ItemCheck } from "./knownItems";
import { unitFromHeader, unitFromWord, type AmountUnit } from "../amounts/unit";

const UNIT_IN_BRACKETS = /\s*[([]\s*([^()[\]]{1,12})\s*[)\]]\s*$/;
/** "Sucrose, g", "Saccharose / g". */
const UNIT_AFTER_MARK = /\s*(?:,|\s\/)\s*(?:in )?(g|kg|mg|oz|lb|ml|l|%)$/i;
const UNIT_AFTER_NAME = /\s+(?:in )?(g|kg|mg|oz|lb|%)$/i;
/** "g sucrose", "kg of water", "Gramm Zucker". */
const UNIT_BEFORE_NAME =
  /^(k?g|mg|oz|lb|%|(?:kilo)?grams?|(?:kilo)?gramm)\s+(?:(?:of|von)\s+)?(?=\p{L})/iu;
const NUMBERED = /^\s*(?:\d{1,2}\s*[.)]|[-–•*·])\s*/;
const MASS_OF =
  /^(?:mass|weight|grams?|amount|masse|menge|gewicht|gramm)\s+(?:of\s+|von\s+|an\s+|der\s+|des\s+)?(?:the\s+)?/i;
/** As chemists write a mass: "m(Saccharose)". */
const SYMBOL_OF = /^m ?\(([^()]+)\)$/;
/** "Sucrose weighed in", "Wasser eingewogen": that it went in. */
const WENT_IN =
  /\s+(?:weighed(?: (?:in|out))?|measured out|added|used|taken|poured in|(?:ein|ab|aus)gewogen|zugegeben|zugesetzt|verwendet|dazu)$/i;
/** How something is prepared, not what it is. Common practice, no source. */
const REMARK =
  /\s*(?:[,;–-]\s+|[([]\s*)(?:ice[- ]?cold|cold|hot|warm|boiled|boiling|filtered|tap|still|fresh(?:ly)?(?: squeezed| pressed)?|squeezed|strained|sifted|sieved|fine|chilled|melted|ripe|organic|optional|to taste|at room temperature|room temperature|kalt|hei(?:ß|ss)|gekocht|gefiltert|frisch(?: gepresst)?|gesiebt|fein|reif|bio)\s*[)\]]?\s*$/i;

/** A name as the recipe functions are asked for it, and the unit that stands with it. */
export interface NameInList {
  readonly item: string;
  readonly unit: AmountUnit | null;
}

/** The text without a unit at its end, and that unit. */
function unitTakenOff(text: string): NameInList {
  const [ending, word = ""] =
    UNIT_IN_BRACKETS.exec(text) ??
    UNIT_AFTER_MARK.exec(text) ??
    // "Water %" is water in per cent, "vodka 40 %" is a kind of vodka.
    (/\d\s*%$/.test(text) ? null : UNIT_AFTER_NAME.exec(text)) ??
    [];
  const unit = ending === undefined ? null : (unitFromWord(word) ?? unitFromHeader(`(${word})`));
  return ending === undefined || unit === null
    ? { item: text, unit: null }
    : { item: text.slice(0, -ending.length).trim(), unit };
}

const TEXTS_KEPT = 1000;
const readers = new WeakMap<ItemCheck, (text: string) => NameInList>();

/**
 * Reads a cell of a list of ingredients: "Water (g)", "2) Sucrose", "Mass of salt (g)", "Lemon juice, fresh".
 * What stands around a name is taken off only where what is left is known.
 */
export function nameInList(text: string, check: ItemCheck): NameInList {
  const reader = readers.get(check) ?? remembered(TEXTS_KEPT, (one) => read(one, check));
  readers.set(check, reader);
  return reader(text);
}

function read(text: string, check: ItemCheck): NameInList {
  const isKnown = (name: string) => check(name).kind !== "unknown";
  if (isKnown(text)) return { item: text, unit: null };
  const bare = unitTakenOff(text);
  const short = bare.item.replace(NUMBERED, "").replace(REMARK, "").trim();
  const named = short.replace(MASS_OF, "").replace(WENT_IN, "").trim();
  const meant = SYMBOL_OF.exec(short)?.[1] ?? named;
  const item = [bare.item, short, named, meant].find(isKnown);
  const before = UNIT_BEFORE_NAME.exec(text);
  const behind = before === null ? "" : text.slice(before[0].length);
  if (item === undefined && isKnown(behind))
    return { item: behind, unit: unitFromWord(before?.[1] ?? "") };
  return item === undefined
    ? { item: bare.unit === null ? text : bare.item, unit: bare.unit }
    : { item, unit: bare.unit };
}
