import { headerRole } from "../recipes/headings/headerRole";

/** "Release as", "Ausgabe als:", "Goes out as": what a mix is to be eaten as. */
const AS = /^(\p{L}+[ -]){1,3}(as|als)\s*[:→]?$/iu;
/** "Known as", "packed as", "counts as" are about its name, its box, its sum. */
const OF_OTHER =
  /\b(known|named?|called|labell?ed|saved?|stored?|packe?d?|booked|count\w*|paid|same|well|comes? out|came|turn\w*|ends?|bekannt|benannt|heißt|gespeichert|gelagert|verpackt|abgepackt|abgefüllt|gebucht|gezählt|zählt|bezahlt|kommt|wurde|mehr|weniger|so|sowohl)\b/i;
/** "Lernziel", "Tagesziel:". */
const GOAL = /\p{L}ziele?\s*:?$/iu;

const LONGEST = 30;

/** Whether words head or label the target of a mix: by what they are about, or as a goal or what it is served as. */
export const headsTarget = (words: string): boolean =>
  headerRole(words) === "target" ||
  (words.length <= LONGEST && (GOAL.test(words) || (AS.test(words) && !OF_OTHER.test(words))));
