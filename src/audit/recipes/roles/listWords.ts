import { PER_WATER } from "../amounts/perWater";
import { perLotWords } from "./perLotWords";
import type { Words } from "./words";

/** Headings of lists: English and German as kitchens and classes write them; common practice, no source. */
export const listWords = {
  unit: /^((measur(e|ing) )?units?( of (measure|amount)| used)?( ?\([a-z/, ]+\))?|uom|u\/m|me|(ma(ß|ss)-?|mengen)?einh(eit(en)?|\.)?( ?\((\p{L}+\.?,? ?)+\))?|maße?|measure|(measured|weighed|gemessen|gewogen) in)$/u,
  price:
    /price|cost|preis(?!el)|kosten|kostet|\bpaid\b|(be)?zahlt|\bpays?\b|\p{Sc}|\b(eur|euros?|usd|chf|inr|rs|rupees?|aud|cad|gbp|dollars?|pence|rappen)\b|[([/] ?(fr|kr|rp|ct|cents?|p)\b|^rates?( ?[([/]|$)|budget|\bek\b/u,
  perLot: perLotWords,
  /** As physicists write it: "Mass / g", "mass added / g". */
  massInUnit:
    /^(m|mass|weight|amount|quantity|masse|menge|gewicht|einwaage)(?!.*\b(of|von|des|der|per|pro|je)\b)( \p{L}+){0,3} ?\/ ?(k?g|mg)$/u,
  /** Nothing but the unit of a share, and of what. */
  shareOnly:
    /^(per ?cents?|percentages?|prozent|pct|%)([ ,]*[([](m\/m|w\/w|g\/g|by mass|mass|masse)[)\]])?( (by|of|der|des|vom|am)( the| total| whole)? (mass|weight|mix|whole|total|recipe|batch|base|masse|mischung|ganzen|rezepts?|ansatz\w*))?$/,
  perWater: PER_WATER,
  composition:
    /^(total|gesamt)[ -]?(solids|sugars?|fat|water|dry|zucker|fett|trocken)|(water|wasser|fat|fett|protein|eiwei(ß|ss)|sugars?|zucker|solids|trocken\w*|lactose|laktose|salt|salz|brix|kcal|kj|energy)(-?(gehalt|anteil|content)e?)?\b.*(%|\bg\b|100|share|anteil|content|gehalt)|sweetness|sü(ß|ss)e|kcal|\bkj\b|density|dichte|overrun|\bg ?\/ ?ml\b/,
  /** What a store holds, and what was bought for it. */
  stock:
    /^(counted|on hand|(we )?(already )?have( already| got| left| there)?|left( over)?|already (there|here|in)|(schon|noch) (da|vorhanden|im|übrig)|vorhanden|vorrätig|buy|still to (buy|get)|noch (zu )?(kaufen|besorgen)|in (the )?(house|store)|inventory|(lasts|enough) for|reicht (für|noch)|ordered|delivered|received|gezählt|im haus|auf lager|inventur|bestellt|geliefert|eingegangen)\b/,
  other:
    /\b(per(?! ?cent)|pro|je)\b|\/ ?(kg|g|l|100)|pack|packung|gebinde|stock|vorrat|bestand|note|comment|bemerkung|supplier|lieferant|allergen|source|quelle|date|datum|yield|pieces|stück|waste|batch no|percentage of cost|^((bag|box|tin|bottle|carton|sack|beutel|dosen?|flaschen?|tüten?|schachtel)[- ]?)?(sizes?|grö(ß|ss)en?)\b|\b(bought|gekauft|eingekauft)\b|^(changes?|differences?|diff\.?|änderung(en)?|differenz(en)?|unterschied)\b/,
  amount:
    /amount|quantity|\bqty\b|weight|\bmass\b|grams?\b|gramm|menge|gewicht|masse\b|einwaage|batch|ansatz|share|anteil|portion|recipe|rezept|\bmix\b|^(weigh( in| out)?|(ab|ein)wiegen)$|^(how much|wie ?viel)( (of (it|each)|davon|jeweils|do we need|brauchen wir))?\??$/,
} as const satisfies Readonly<Record<string, Words>>;
