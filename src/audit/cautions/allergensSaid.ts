import { isAllergenList } from "./allergenList";
import { cautionsSaid } from "./cautionsSaid";
import { saysByLetters } from "./saysByLetters";
import { saysInIt } from "./saysInIt";

const ALLERGENS_SAID =
  /allerg|gluten ?haltig|\bnut warning|\bco?eliacs?\b|zöliakie|\b(may )?contains?\b|\bcont(\.|:)|enthält|\benth(\.|:)|spuren von|\bkann\b.{0,40}\benthalten\b/i;

/** "Not dairy free", "laktosefrei: nein". */
const NOT_FREE =
  /\b(not|nicht|isn['’]t) (gluten|dairy|lactose|milk|egg|nut|soya?|laktose|milch|ei|nuss|soja)[ -]?(free|frei)\b|(?<!\p{L})(gluten|dairy|lactose|milk|egg|nut|soya?|laktose|milch|ei|nuss|soja)[ -]?(free|frei): ?(no|nein)\b/iu;

/** Which allergens there are, is said by other words than those of a heading. */
const HEADING_WORDS =
  /allerg\p{L}*|\b(may )?contains?\b|\bcont\b|\benth\b|\bcauses?\b|\bmay\b|enthält|spuren|\bkann\b|\benthalten\p{L}*|auslösen|cautions?|advice|recipe|rezept|hinweise?|warn\p{L}*|notes?|labels?|info(rmation)?(en)?|list[es]?|present|declar\p{L}*|deklar\p{L}*|bold|fett|\blt\b|laut|gemä(ß|ss)|\bgem\b|\blmiv\b|sufferers|verordnung|regulation|\b(and|und|for|für|to|the|die|der|per|je|line|zeile|of|von|in|our|this|mix)\b|[^\p{L}]/giu;

/** "Tasters, this has milk", "Made with egg", "Has in it tree nuts": in some sentence all that is in it are allergens. */
const HAS =
  /^.*\b(has|have|had|made (with|of|from|using)|there (is|are)|hat|haben|gibt es|(ist|sind|besteht|gemacht|hergestellt|zubereitet) (aus|mit))\b( (in|inside) (it|them|this|these|there)\b| (inside|within|darin|drin)\b)?:?/i;

/** "Drin ist Milch, Ei", "Inside: egg", "In this one are tree nuts": the same the other way round. */
const IN_IT =
  /^.*\b((da |hier )?(drin(nen)?|darin|enthalten)|inside|in (it|them|this( one)?|these|here|there|diesem|dieser)|on board)( (ist|sind|stecken?|steckt|is|are|you('ll)? (find|get)|we have|haben wir))?\b:?/i;

/** "Ask about gluten": it is not known yet. */
const ASKED = /\?|\b(ask|check|frag\p{L}*|prüfen|klären|nachsehen)\b/iu;
/** What nobody names but as an allergen. */
const ONLY_ALLERGEN =
  /(?<![\p{L}-])(tree[ -]nuts|schalenfrüchten?|gluten|sul[fp]hites|sulfiten?|crustaceans|krebstieren?|weichtieren?)(?![ -]?(free|frei)|\p{L}|[ -]\p{L}*(check|test|free|frei))/iu;

/** "Wrapper must say milk", "Lid says: egg", "bitte Milch angeben": what is to be told. */
const SAYS =
  /^.*\b(says?|tells?|tell (of|them|people)|states?|declares?|mentions?|names?|(?<!(shopping|order|buying|packing) )lists?|warns? (of|about)|announces?|(an)?sag(t|en)|nennt|nennen|warnt vor|erwähnt|steht|stehen)\b:?/i;

/** "Parents' list of allergies", "Allergien der Kinder": what eaters have is not what is in it. */
const OF_EATERS =
  /^(?!.*(contain|enth[aä]lt)).*(\b(parents|kids|children|guests|campers|pupils|students|eltern|kinder|gäste|schüler|teilnehmer)\p{L}*['’]?s? ((own|list of|eigenen|liste der|liste mit) )*allerg(y|ies|ien)\b|\b(list of allergies|allergies|allergien|allergieliste) (of|from|der|von|bei) ((the|our|all|den|allen) )*(parents|kids|children|guests|campers|pupils|students|eltern|kinder|gäste|schüler|teilnehmer))/iu;

/** "Contains no milk", "frei von Nüssen": what is not in it. */
const HAS_NONE =
  /\b(contains? no|free (of|from)|without|enthält keine?n?|frei von|ohne) ([\p{L} ]+?)(?=$|[,.;!])|[\p{L}]+-(free|frei)\b/giu;

const hasAllergens = (text: string): boolean =>
  saysInIt(text) ||
  text
    .split(/[.;!]/)
    .some((each) =>
      [HAS, IN_IT, SAYS].some(
        (words) => words.test(each) && isAllergenList(each.replace(words, "")),
      ),
    );

/** "With dairy", "mit Milchprodukten": nobody calls an ingredient so, hence it is said of what is in it. */
const WITH_DAIRY =
  /(?<!\p{L})(with|has|have|uses?|made (?:of|from|with)|mit|hat|haben|aus) (dairy|milk products|lactose|laktose|milch(?:produkten?|erzeugnissen?))(?![\p{L}-]| (?:free|frei)(?!\p{L}))/iu;

/** "Not for babies (honey). Cow's milk.": who tells of one thing, tells of allergens in a sentence of their own. */
const tellsInSentence = (said: string): boolean =>
  (ALLERGENS_SAID.test(said) || cautionsSaid.some((caution) => caution.said(said))) &&
  said
    .split(/[.;!](?:\s|$)/)
    .slice(1)
    .some((sentence) => isAllergenList(sentence.replace(/^[^:]*:/, "")));

/** Whether a text speaks of allergens: as a heading or label that names none, or as a statement; null when of neither. */
export function allergensSaid(said: string): "heading" | "statement" | null {
  if (NOT_FREE.test(said) || WITH_DAIRY.test(said) || tellsInSentence(said)) return "statement";
  const text = said.replaceAll(HAS_NONE, "");
  if (hasAllergens(text) || saysByLetters(text)) return "statement";
  if (OF_EATERS.test(text)) return null;
  const isOfWords = /\s/.test(text.trim()) && !ASKED.test(text);
  if (isOfWords && ONLY_ALLERGEN.test(text)) return "statement";
  if (!ALLERGENS_SAID.test(text)) return null;
  return text.replaceAll(HEADING_WORDS, "").length > 1 ? "statement" : "heading";
}
