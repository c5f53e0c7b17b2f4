import { answerRole } from "./answerRole";
import { plainWords } from "./plainWords";
import { PER_WATER } from "./perWater";
import { unitFromHeader } from "./unit";

/** What a column (or a row's label) is about. */
export type Role =
  | "name"
  | "unit"
  | "price"
  | "molar mass"
  | "moles"
  | "particles"
  | "molality"
  | "abv"
  | "ethanol"
  | "counts as solute"
  | "freezing point"
  | "depression"
  | "ice fraction"
  | "temperature"
  | "cryoscopic constant"
  | "target"
  | "total"
  | "measured"
  | "composition"
  | "other"
  | "amount";

/**
 * Headers in English and German by synonyms, the more particular first. Common practice of kitchens and
 * classrooms, no source.
 */
const ROLES: readonly (readonly [Role, RegExp])[] = [
  [
    "cryoscopic constant",
    /(freezing|cryoscopic|gefrier|kryoskop|erniedrigung).*(constant|konstante)|\b(constant|konstante)\b.*\bk_?f\b|\bk_?f[- ](wert|value)|^(water'?s?|wasser) k_?f\b|\bk ?· ?k?g ?\/ ?mol/,
  ],
  [
    "other",
    /(freezing|gefrier).*\b(of|von) (pure |reinem )?(water|wasser|solvent|lösungsmittel)\b/,
  ],
  // What stays whole is the opposite of what counts as dissolved.
  [
    "other",
    /undissolved|insoluble|not (to )?dissolv|stays? whole|un(ge)?l[öo]s(lich|t)|nicht (ge)?lös(t|lich)/,
  ],
  [
    "amount",
    /^((mass|weight|amount|grams|masse|menge|einwaage)( of)?( the| des)? (dissolved|solute|substance|gelöst\w*|stoffe?s)|(solute|dissolved|salt|stoff|salz) ?(mass|weight|amount|grams|masse|einwaage|weighed( in| out)?|used|taken|added))\b(?!.*(solids|matter|feststoff|trocken))/,
  ],
  [
    "amount",
    /^(m )?(solutes?|dissolved|gelöst|stoff|gelöster stoff|substance|substanz)\s*[([]\s*(g|kg|mg)\s*[)\]]$/,
  ],
  [
    "measured",
    /\b(measured|gemessene?[rs]?|observed|readings?|messwerte?|messung|thermometer|abgelesen\w*|beobachtet|actually|tatsächlich\w*|found in)\b|\bgem\./,
  ],
  [
    "target",
    /^(target|desired|wanted|required|style|(serve[ds]?|sold|offered|handed out|intended|meant|serviert|angeboten|verkauft|gereicht|ausgegeben|gedacht) (as|for|als|für)|serving (style|target)|(for|as|to be|für|als|wird)$|(desired |gewünschte )?(texture|consistency|firmness|mouthfeel|konsistenz|textur|festigkeit|beschaffenheit|mundgefühl)|meant to be|goal|ziel|zielwert|zielvorgabe|servier(vorgabe|ziel|art)|vorgabe|soll|sollwert|so soll es (sein|werden))\b/,
  ],
  ["price", /price|cost|preis(?!el)|kosten|€|\$|£|\b(eur|usd|chf)\b|budget/],
  [
    "amount",
    /^(per|pro|je|for|für|auf) (1 ?)?(kg|kilo|1000 ?g|l|liter|litre)\b.*(mix|mischung|masse|batch|ansatz|base|recipe|rezept)/,
  ],
  [
    "molar mass",
    /molar ?(mass|weight)|mola?re? ?masse|molmasse|(molecular|formula|relative) (weight|mass|molecular mass)|formelmasse|molekülmasse|molekulargewicht|(?<!k)g ?[·*]?\/ ?mol|(?<!k)g ?[·*] ?mol ?(\^?[-−]1|⁻¹)|\bmw\b|^m_?r$/,
  ],
  [
    "molality",
    /molalit|mol ?\/ ?kg|mol ?[·*] ?kg ?(\^?[-−]1|⁻¹)|mol(es?)?( of (solute|substance|particles))? (per|pro|je) (kg|kilogram)|^osmolal/,
  ],
  [
    "moles",
    /^(n|mol|mole|moles|stoffmenge)\b(?! ?fraction)|[([]mol[)\]]$|, ?mol$|\bin mol$|\bmoles\b/,
  ],
  [
    "particles",
    /van\W{0,3}t\W{0,3}hoff|^i( ?=)?$|^i[ -]?(factor|faktor|wert|value)|^i ?[([,]|\b(factor|faktor) i$|\bparticles\b|\bteilchen|^ions?$|^ionen|(number|count) of ions|\bions (per|in|from)\b|zahl (der )?(ionen|teilchen)|dissociation (factor|number)|dissoziationsfaktor/,
  ],
  [
    "cryoscopic constant",
    /^k ?_?f\b|cryoscopic|kryoskop|freezing (point )?constant|gefrierkonstante/,
  ],
  ["abv", /\babv\b|% ?vol|vol\.? ?-?%|alcohol by volume|volumenprozent/],
  [
    "ethanol",
    /\b(ethanol|pure alcohol|alcohol|alkohol|reiner alkohol)\b.*(\bg\b|grams?|gramm|mass)/,
  ],
  [
    "counts as solute",
    /^(?!.*100 ?g\b).*((counts? as|is a?) ?solute|\bsolutes?\b|dissol|gelöst|löslich)/,
  ],
];

/** What is looked for when a header names no answer. */
const MORE_ROLES: readonly (readonly [Role, RegExp])[] = [
  ["temperature", /temp|°c|°f|freezer|serving at/],
  [
    "name",
    /^(ingredients?|items?|name|component|(raw )?materials?|what|zutat(en)?|rohstoffe?|bestandteile?|artikel|produkt|product|foodstuff)\b/,
  ],
  [
    "total",
    /^((grand|batch|mix|recipe) )?(sub ?-?)?(totals?|sum|summe|gesamt(menge|gewicht|masse|summe)?|endsumme|zwischensumme|insgesamt)( (of )?(all |the )?(weight|mass|amount|batch|mix|recipe|ingredients|grams|quantity))?[ ,]*[([]?(g|kg|%)?[)\]]?$/,
  ],
  [
    "total",
    /^((sub|grand|zwischen)[ -]?)?(totals?|sum|summe|gesamt)\b(?!.*(solid|sugar|fat|water|dry (matter|mass)|protein|lactose|salt|acid|alcohol|dissol|cost|price|kcal|calor|energy|\bkj\b|yield|\bbars?\b|piece|portion|serving|\bper\b|time|volume|\bm?l\b|overrun|mole|\bmol\b|particle|zucker|fett|wasser|trocken(masse|substanz)|eiweiß|säure|alkohol|gelöst|kosten|preis|€|stück|teilchen|feststoff)).{0,30}$/,
  ],
  [
    "total",
    /^(everything|(one|a bit) of (each|everything)|je eines|von allem|raw (yield|mass|weight|total)|roh(masse|gewicht|menge|ausbeute))[ ,]*[([]?(g|kg)?[)\]]?$/,
  ],
  [
    "total",
    /^((the )?(whole|entire) (batch|mix|recipe|lot|jug|pot|bowl|tub|pan|tray|bucket|vat|can|thing|list|order)|(ansatz|charge|menge|masse|mischung|rezept|mix|batch|recipe),? (gesamt|insgesamt|in total|all told))[ ,]*[([]?(g|kg)?[)\]]?$/,
  ],
  [
    "total",
    /^((das )?(ergibt|macht|gibt)( zusammen| insgesamt)?|(alles )?zusammen|alles in allem|(it )?(makes|comes to)( in all| altogether)?|(all )?in all|in total|all told|all together|altogether)[ ,]*[([]?(g|kg|%)?[)\]]?$/,
  ],
  ["unit", /^(units?|einheit(en)?|measure|maß)$/],
  ["composition", PER_WATER],
  // Nothing but the unit of a share, and of what.
  [
    "amount",
    /^(per ?cents?|percentages?|prozent|%)([ ,]*[([](m\/m|w\/w|g\/g|by mass|mass|masse)[)\]])?( (by|of|der|des|vom|am)( the| total| whole)? (mass|weight|mix|whole|total|recipe|batch|masse|mischung|ganzen|rezepts?|ansatz\w*))?$/,
  ],
  [
    "composition",
    /^(total|gesamt)[ -]?(solids|sugars?|fat|water|dry|zucker|fett|trocken)|(water|wasser|fat|fett|protein|eiweiß|sugars?|zucker|solids|trocken\w*|lactose|laktose|salt|salz|brix|kcal|kj|energy)\b.*(%|\bg\b|100|share|anteil|content|gehalt)|sweetness|süße|kcal|\bkj\b|density|dichte|overrun|\bg ?\/ ?ml\b/,
  ],
  // What a store holds, and what was bought for it.
  [
    "other",
    /^(counted|on hand|in (the )?(house|store)|inventory|(lasts|enough) for|reicht (für|noch)|ordered|delivered|received|gezählt|im haus|auf lager|inventur|bestellt|geliefert|eingegangen)\b/,
  ],
  [
    "other",
    /\b(per(?! ?cent)|pro|je)\b|\/ ?(kg|g|l|100)|pack|packung|gebinde|stock|vorrat|bestand|note|comment|bemerkung|supplier|lieferant|allergen|source|quelle|date|datum|yield|pieces|stück|waste|batch no|percentage of cost|^(changes?|differences?|diff\.?|änderung(en)?|differenz(en)?|unterschied)\b/,
  ],
  [
    "amount",
    /amount|quantity|\bqty\b|weight|\bmass\b|grams?\b|gramm|menge|gewicht|masse\b|einwaage|batch|ansatz|share|anteil|portion|recipe|rezept|\bmix\b/,
  ],
];

/** The factor is a small i; the capital numbers trials. */
const isNumeral = (text: string): boolean => text.trim() === "I";

const answers = new Map<string, Role | null>();
const ANSWERS_KEPT = 500_000;

/** What a header or label is about, or null when it says nothing known. */
export function headerRole(text: string): Role | null {
  const known = answers.get(text);
  if (known !== undefined) return known;
  if (answers.size >= ANSWERS_KEPT) answers.clear();
  const role = roleOf(text);
  answers.set(text, role);
  return role;
}

function roleOf(text: string): Role | null {
  const plain = plainWords(text);
  if (plain === "" || plain.length > 80 || isNumeral(text)) return null;
  const firstIn = (roles: typeof ROLES) => roles.find(([, pattern]) => pattern.test(plain))?.[0];
  const role = firstIn(ROLES) ?? answerRole(plain) ?? firstIn(MORE_ROLES);
  if (role !== undefined) return role;
  return unitFromHeader(plain) === null ? null : "amount";
}
