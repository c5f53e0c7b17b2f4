import { anyOf } from "./anyOf";
import type { Words } from "./words";

const GOAL =
  /^((our|the|intended|wanted|unser|das|die) )?(targets?|goals?|aims?|aim(ing)? (for|at)|aimed[- ]for|ideal (value|range|wert|bereich)|ziel(werte?|bereich|temperatur|gefrierpunkt|vorgabe|produkt|art)?|vorgaben?|soll(werte?|bereich|temperatur|vorgabe)?|richtwerte?|servier(vorgabe|ziel|art)|serving (style|target)|style|stil|wunsch(wert|temperatur)?)\b(?! (of|for|der|des|von|für) (?!(the |this |our |diese[rns]? |der |die |das |den |dem )?(mix|ice|eis|masse|mischung|recipe|rezept|bar|batch|produ[ck]t|textur)))/;
const SERVED_AS =
  /^((for )?use as\b|(to be )?used (as|for)\b|verwend(et|en|bar|ung)( als| für)?$|(serve[ds]?( it)?|sold|offered|handed out|intended|meant|serviert|angeboten|verkauft?|gereicht|ausgegeben|gedacht) (in the style|im stil|as|for|als|für)|(for|as|to be|für|als|wird)$)/;
const TEXTURE =
  /^((target|desired|wanted|intended|soll|ziel|gewünschte|angestrebte)[ -]?)?(texture|consistency|firmness|mouthfeel|konsistenz|textur|festigkeit|beschaffenheit|mundgefühl)\b/;
const KIND = anyOf(
  "\\b(kind|type|style|sort) of (ice|frozen|dessert|sweet|product|mix|treat|thing)",
  "\\b(art|typ|stil) (des|der|von|vom) (fertigen )?(eis|dessert|produkt|ergebnis)",
  "(^|/ ?)(eis-?(art|typ|stil)|stil|style)$",
  "^((the|our|das|unser) )?(product|ice|dessert|mix|produkt|dessert|speise)[- ]?(type|style|kind|art|typ)$",
);
const WISHED = anyOf(
  "^(desired|wanted|required|wished|gewünscht\\w*|erwünscht\\w*|angestrebt\\w*)\\b",
  "\\b(we|i|you)('d| would)? (want|like|wish for|hope for|aim (for|at))\\b|\\b(we|i)( a|')re? (after|going for|aiming)",
  "\\bwhat (are|do|shall|should) (we|i) (want|mak|get|aim)",
  "\\b(wir|ich) (wollen|möchten?|wünschen|hätten gern)|\\b(wollen|möchten|machen) wir\\b",
);
const SHALL = anyOf(
  "\\b(should|shall|supposed to|meant to|ought to|has to|is to) (it )?(be|become|turn|end up|come|feel|taste)\\b(?! (ice|frozen)\\b)",
  "\\bsoll(te)?( es| das| sie| er)? (mal )?(?<!(eis|gefroren) )(sein|werden|schmecken)\\b|\\bwie soll\\b|\\bso soll\\b|meant to be",
);
/** Much else has an aim. */
const OTHER_THING =
  /audience|group|market|customer|\bdate\b|\btime\b|price|costs?\b|margin|budget|sales|gruppe|datum|preis|kosten|kunden|markt|umsatz|[-/] ?ist\b/;

/** Labels of what a mix shall be: aims, wishes, kinds of what is served. Common practice, no source. */
export const targetWords: Words = {
  test: (plain) =>
    !OTHER_THING.test(plain) &&
    [GOAL, SERVED_AS, TEXTURE, KIND, WISHED, SHALL].some((words) => words.test(plain)),
};
