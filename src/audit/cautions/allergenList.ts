/** The allergens that food law names, as labels write them. @source eu1169_2011 */
const NAME =
  /^((contains?|enthält|may contain|spuren von|with|mit|has|hat) )?(cow'?s? ?milk( protein)?|milk( protein)?|dairy|lactose|laktose|(kuh)?milch(eiwei(ß|ss))?|(hen'?s? )?eggs?|(hühner)?ei(er)?|(tree ?|pea)?nuts?|(erd)?nüsse|schalenfrüchte|gluten|wheat|weizen|barley|gerste|rye|roggen|oats|hafer|sul[fp]hites?|sulfite?|soy(a|beans?)?|soja(bohnen)?|sesame?|sesam|fish|fische?|celery|sellerie|mustard|senf|lupins?|lupinen?|crustaceans|krebstiere|molluscs|weichtiere)$/;

/** "Wrapper must say: milk", "Watch out, has in it: egg": where it is to be told, and that someone must not eat it. */
const SAYS =
  /^[^:]*\b(watch out|look out|careful|beware|mind|please|nb|nota bene|noted|remember|important|know|heads[ -]up|caution|wichtig|wissen|attention|vorsicht|achtung|bitte|beachten|aufpassen|ask|fragen|not (to )?eat|cannot eat|can'?t eat|avoid|nicht (essen|vertr\p{L}*)|meiden|inside|(in|has|have) it|darin|drin|say|says|said|tell|tells|told|inform\p{L}*|announce\p{L}*|knows|declared?|declaration|warn\p{L}*|labels?|wrapper|signs?|boards?|sticker|packet|etikett\p{L}*|aufkleber|aushang|aushänge|hinweise?|aufdruck|schild(er|chen)?|hervor(zu)?heben|hervorgehoben|highlight(ed)?|emphasi[sz]ed?|in (bold|capitals)|fettgedruckt|angeben|deklarieren|deklaration|kennzeichn\p{L}*|auszeichn\p{L}*|auszuweisen|auszeichnung|kennz|pflicht(angabe|hinweis)|wording|infoblatt|info sheet|speise(n)?karte|menus?|steckschild|fähnchen|flags?|tags?|einverständnis|einwilligung|consent|elternbrief|letter|window|fenster|ppds|vegan|panel|verkostung|ausgezeichnet|ausweisen|ausgewiesen|aushängen|ausgehängt|bekannt ?(geben|machen)|mitteilen|mitgeteilt|anzeigen|angezeigt|angesagt|gesagt|ansagen?|ansage|display(ed)?|disclosed?|stated?|flag(ged)?|(put|chalk|pin) up|(ver)?merken|vermerk\p{L}*|(hin|auf|dazu|dran)?schreiben|notieren|nennen|genannt|erwähnen|erwähnt|write|written|note|mention(ed)?|print(ed)?)\b[^:]*:/u;
/** Whom it concerns: "Before anyone licks the spoon: milk", "Wer probiert: Ei". */
const TO_EATERS =
  /^[^:]*(\b(guests?|customers?|diners|eaters?|tasters?|gäste\p{L}*|kundschaft|kunden|verkoster\p{L}*)\b|\b(before|bevor|ehe|who|whoever|anyone|anybody|everyone|wer|alle)\b[^:]*\b(lick|tast|eat|try|tries|probier|kost|iss|esse|nasch|schleck)\p{L}*)[^:]*:/u;
/** These are no ingredients: after whatever words and a colon they are allergens. */
const ONLY_ALLERGEN =
  /^(tree nuts?|schalenfrüchte|gluten|sul[fp]hites?|sulfite?|crustaceans|krebstiere|molluscs|weichtiere|lupine?n?s?)$/;
/** "Auf den Pappaufsteller", "on the lid of the tub", but no list of what to buy or do. */
const PUT_ON =
  /^(?!.*(list|einkauf|shop|bestell|order|markt|market|lager|store|tisch|table|herd|stove))(to go |goes |to put |kommt |gehört |muss |bitte |noch )?(auf|an|on|onto) (das|den|die|der|dem|ans|unser\p{L}*|jede\p{L}*|the|every|each|all|our) [\p{L} -]{3,30}$/u;
/** "For the door", "am Eingang": where guests pass. */
const WHERE_SEEN =
  /^(to go |goes |kommt |gehört )?(for|at|by|on|für|an|auf|am|beim|in|im|ins)( the| our| die| den| das| der| dem| unsere[nr]?)? ((class|kitchen|shop|hall|front|eingangs|klassen|küchen|laden|kühlschrank|schau)-?)?(door|doorway|window|entrance|hatch|till|counter|tür|türe|fenster|eingang|theke|tresen|kasse|ausgabe|pinnwand|noticeboard|notice board)$/u;
/** What the law wants told, by the law's name: "LMIV", "nach VO 1169/2011", "food law". @source eu1169_2011 */
const BY_LAW =
  /\blmiv\b|\b1169\b|\bfic\b|\bfood (information|law|labelling)\b|lebensmittel(informations?|recht|kennzeichnung)/u;
/** "A: milk", "Allerg.: egg", where a column has no room for the word. */
const SHORTENED = /^\(?a(ll(erg?)?)?\.?\)?$/u;
/** Headings of what is put up beside each of several sorts. */
const PUT_UP =
  /^((to go |goes |to put |for |to |up )?(on|onto|for) (the |our |my )?|(kommt |gehört |muss )?(auf|an|für) (die|das|den|der|dem|unsere) )?(aushang|aushänge|hinweis(e|schild)?|schild(er)?|(preis|theken)-?schild|(kreide|preis|anschlag)?tafel|((speise|eis|tages|tisch|menü|dessert|theken)?-?)karte(n)?|menü|menus?|etikett(en)?|aufkleber|aufdruck|deklaration|kennzeichnung|notices?|(counter |shop )?signs?|(shop |counter |table |tray |menu )?cards?|((chalk|black|price)-?)?boards?|labels?|stickers?|wrappers?|declaration|(for|to tell) (the )?(guests|customers|eaters?)|(für )?(gäste|kunden)|((bitte |please |to )?((an|weiter)sagen|sagen|say|tell)|(guests?|customers?|eaters?|gäste|kunden|esser) (must|should|müssen|sollen) (know|wissen))( (the |our |your |den |dem |der |unseren )?\p{L}+)?|(card|sign|label) (by|at|on|for|next to) (the |each |every )?\p{L}+)( \(.*\))?$/u;
const IN_BRACKETS = /\([^)]*\)/g;

/** "M = milk": the letter that stands for it beside its lines. */
const LETTER_FOR = /^\(?\p{L}{1,2}\)?\s*=\s*/u;

const partsOf = (said: string): string[] =>
  said.split(/[,/&+]|\b(?:and|und)\b/).map((part) => part.trim().replace(LETTER_FOR, ""));

/** Whether a text begins with words that tell the eater something: "inside: milk". */
export const isTelling = (text: string): boolean =>
  [SAYS, TO_EATERS].some((words) => words.test(text.toLowerCase()));

/** "Pistachio = tree nut, base = milk", and no number that something is the same as. */
const EQUALS = /^[^\d=]*\p{L}{2}[^\d]*=/u;

/** Whether a sentence goes on with nothing but allergens behind words and a colon that tell, or behind what has them: "Inside: milk", "Base = milk". */
function tellsList(sentence: string): boolean {
  if (EQUALS.test(sentence))
    return partsOf(sentence.slice(sentence.lastIndexOf("=") + 1)).every((part) => NAME.test(part));
  const colon = sentence.indexOf(":");
  if (colon < 0) return false;
  const [before, behind] = [sentence.slice(0, colon).trim(), partsOf(sentence.slice(colon + 1))];
  const isTold =
    isTelling(sentence) ||
    isPutUp(before) ||
    SHORTENED.test(before) ||
    (before !== "" && behind.some((part) => ONLY_ALLERGEN.test(part)));
  return isTold && behind.every((part) => NAME.test(part));
}

/** Whether a text begins with nothing but allergens, "milk, tree nuts (walnuts); honey: not for infants", or tells them in some sentence. */
export function isAllergenList(text: string): boolean {
  const sentences = text.toLowerCase().replaceAll(IN_BRACKETS, " ").split(/[;.]/);
  const [first = ""] = sentences;
  return partsOf(first).every((part) => NAME.test(part)) || sentences.some(tellsList);
}

/** Whether a heading says that what stands below it is told to those who eat: "Notice", "Aushang". */
export function isPutUp(heading: string): boolean {
  const said = heading.toLowerCase().trim();
  return [PUT_UP, PUT_ON, WHERE_SEEN, BY_LAW].some((words) => words.test(said));
}

/** Whether a list of allergens is a lone word, which may be an ingredient as well: "milk". */
export const isOneWord = (text: string): boolean => /^[\p{L}]+$/u.test(text.trim());
