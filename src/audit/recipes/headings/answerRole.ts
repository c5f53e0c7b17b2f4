import { anyOf } from "../roles/anyOf";
import { MIX_NOUNS } from "../roles/mixNouns";

/** What an answer of a recipe is about, as far as it is no part of its mass. */
export type AnswerRole = "freezing point" | "depression" | "ice fraction";

/*
 * Labels are taken apart into what they say: that something freezes, that it is lowered, that it is ice, that it
 * is a share. English and German as cooks and teachers write them; common practice, no source.
 */
const FREEZES = anyOf(
  "\\bfree?z(es?|e?ing)\\b|\\bfrz\\b|\\bfr\\.? ?(p\\b|pt|point)|\\bf\\.? ?pt?\\b|\\bt[_ ]?f(?![\\wü])",
  "(ge)?friert\\b|\\bfrieren\\b|^gefrieren\\W*(°?c)?\\W*$|gefrieren?s? (bei|ab|um|von|der|des)\\b",
  "(beginn|start|anfang|anfängt|fängt|zu).{0,20}gefrieren",
  "gefrier-?(p|temp|beginn)|\\bgefr\\.? ?(p|t)|\\bt[ _]gefr|\\bgp\\b|erstarr",
  "\\b(begins?|starts?|first) (to )?(set|harden|go hard|firm|turn (in)?to ice|form ice)|\\bturns? (in)?to ice",
  "\\b(sets|(goes )?(solid|stiff|hard)|(wird )?(hart|steif)),? (from|at|below|under|ab|bei|unter)\\b(?!.*\\d).*°c",
  "\\b(begins?|starts?|first) (setting|hardening|firming|turning (in)?to ice)|\\b(ic(es?|ing) (up|over)|slush(y|es|ing)?|sulz(t|ig)|matschig) (from|at|below|ab|bei|unter)\\b",
);
/** What a class works out for a solution in degrees; what is measured is no answer. */
const PREDICTED =
  /^((the )?(temperature|temp\.?|temperatur|wert|t|ϑ|θ|theta),? )?(predicted|calculated|computed|expected|theoretical|in theory|by (theory|the law|the formula|calculation)|worked out|from the formula|nach (der )?(formel|rechnung)|laut (rechnung|formel)|rechnerisch(e[rs]?)?|vorhergesagte?|vorhersage|(be|er|(aus)?ge)rechnete?|erwartete?|theoretische?|theorie)( (temperature|temp\.?|temperatur|value|wert|t))?\W*(in )?°c\)?$/;
const FIRST_ICE = anyOf(
  "\\b(first|erste[nsr]?) (ice|eis)|\\bice (first )?(begins|starts|forms|appears)",
  "eisbildung|eis-?beginn|bildet sich eis|(wird|beginnt) fest|\\bfirst (ice )?crystals?|\\berste[nrs]? (eis)?kristalle?",
);
const LOWERED = anyOf(
  "depress|lower|\\bdown (from|by|below)\\b|\\bdrops?\\b|\\bfalls?\\b|decreas|(goes|comes|going) down|far below",
  "\\b(pull|push|press|brought|bring|forc|shift|mov|knock|driv|tak)\\w* (it )?(further )?down\\b",
  "\\b(herab|herunter|runter|hinunter|nach unten)[- ]?(ge)?(zogen|zieh|drückt|drück|bracht|schoben|setz)",
  "\\b(k|kelvin) (below|under|unter) (0|zero|null)\\b|\\b(below|under|unter) (0|zero|null)\\b.*\\bk\\W*$",
  "degrees? (below|under)|\\b(below|under|unter)\\b.* (of|von)\\b.* wa(t|ss)er|(low|under|unter|than|als|gap|abst|differ|schied|from|δ).* wa(t|ss)er.*\\bk\\W*$",
  "\\b(below|under|unter)\\b.*\\b(by|um)\\b|\\b(k|kelvin) (colder|lower|kälter|tiefer|below|under|unter)\\b.* wa(t|ss)er",
  "erniedrig|senk|sinkt|sunken|herabgesetzt|herabsetz|tiefer|fällt um",
);
const DIFFERENCE =
  /^(below|under|unter) 0 ?(°c? )?(by|um)\b|^(δ|∆|delta|d) ?_?t(_?f)?\b|\bfpd\b|\bgpe\b|depression|erniedrigung|^(the )?(freezing[ -]?point )?lowering( of (the )?(freezing[ -]?point|t))?( ?[([,].*)?$/;
/** "Key: ΔTf", "ours: ΔT (K)", "predicted ΔTf", "gives ΔT": whose or what kind of difference it is. */
const WHOSE =
  /^(([^:=]{1,24}:|(the|our|your|their|my|die|der|das|unsere?|eure?|deine?|gives|thus|hence|so|ergibt|also|somit|damit|daraus|macht|folgt|→)|(ideal|key|model|answer|exact|theor[a-zä]*|predict[a-z]*|expect[a-z]*|calc[a-z]*|comput[a-z]*|(vorher|be|er|ge)[a-z]{0,3}(sagte?s?|rechnete?s?|wartete?s?)|ideale?s?)\.?) )+/;
const THAN_WATER =
  /(than|als|below|under|unter|gegenüber) ((that|the one|das|der|die|bei|beim|of|for|with|von|in) )*(plain |pure |reine[snm]? )?(water|wassers?|0|zero|null)\b|[([, ]k[)\]]?$/;
const ICE = anyOf(
  "\\bice\\b(?! ?-?(cream|box|cart|bath|cubes?|loll|pops?|pack))",
  "\\bfrozen\\b",
  "gefroren|gefr\\.|ausfrier|ausgefr|\\beis(anteil|gehalt|phase|geh\\b|menge)|\\beis\\b",
);
const SHARE = anyOf(
  "%|per ?cent|\\bpct\\b|prozent|\\bshare\\b|\\bparts?\\b|\\bportions? of\\b|fraction|proportion|content",
  "anteil|gehalt|\\bgeh\\b|(how|this) much|\\b(so |wie ?)viel|ausfriergrad|bezogen auf",
  "(per|pro|je|in|auf|of|von|/) ?100 ?g|\\bby (weight|mass)\\b",
);
/** Water that has become ice is a share of it without saying so. */
const WATER_AS_ICE = anyOf(
  "\\b(frozen|ice|gefrorenes|ausgefrorenes) (of the )?(water|wasser)",
  "(water|wassers?),? ((that is |that has |has )?(turned |gone |become |made )|that is |that has |present |sind )?(frozen|gefroren|ausgefroren|as ice|(in)?to ice|zu eis|als eis|is ice)",
  `(ice|eis),? (of|in|vom|im|am|in der|von der|an der) ((the|its|a|one|our|whole|finished|ganzen|gesamten|fertigen) )*((gesamt)?(water|wasser)|${MIX_NOUNS})\\b`,
);
const AT_COLD = /(at|by|bei|@) ?[-−–]? ?\d+(?:[.,]\d+)? ?(°|\(|c\b|$)/;
/** "Freezing point against version A": how one answer compares with another, unless that is water's. */
const COMPARED =
  /\b(against|versus|vs\.?|(as )?compared (to|with)|relative to|in comparison (to|with)|gegen(über)?|verglichen mit|im vergleich (zu[mr]?|mit)) (?!.*\b(water|wassers?|0|zero|null|time|zeit)\b)\p{L}/u;
/** "Sugar in the ice (%)", "Fett im fertigen Eis": what else than water is in what was made. */
const IN_ICE =
  /(sug|sugars?|zucker\w*|salt|salz\w*|fat|fett\w*|alcohol|alkohol\w*|ethanol|solids|solutes|dry matter|trocken\w*|protein|eiweiß|milk|milch\w*|fruit|frucht\w*|obst\w*|syrup|sirup|air|luft|nuts|nüsse) (content |share |gehalt |anteil )?(in|im|of|des)( (the|our|one|a|finished|fertigen|ganzen))* (ice|eis(es)?)\b/;
/** Devices, times and stores are about freezing, too, and goods and portions about ice. */
const OTHER_THING = anyOf(
  "freezers?\\b|deep[- ]freez|freez\\w* (room|cost|speed|machine|tunnel)|maschine|truhe|schrank",
  "\\b(tray|rack|shelf)\\b|\\b(no|nr)\\.",
  "\\btime\\b|dauer|zeit|min(utes?)?\\b|hours?|stunden|\\bdate\\b|einfrier|eingefroren",
  "price|cost|kosten|preis|[€$£]|sold|verkauft|portion|kugeln|scoops?\\b|pieces|stück\\b|sorte",
);
/** A temperature asked for, not one at which something is so. */
const IN_CELSIUS = /(?<!\d\s?)°\s?[cf]\s?\)?$/;

/** So much ice, not a share of anything: not "in 100 g of the mix (g)". */
const IN_GRAMS = /^(?!.*\d\s?k?g\b).*\b(k?g|grams?|gramm|kilograms?|kilogramm)\s?\)?$/;
/** A unit that no temperature has; after a number it is part of what is said: "20 % sugar". */
const IN_PERCENT = /(?<!\d\s?)%|per ?cent\b|prozent/;
/** "GP (%)" is a gross profit. */
const UNIT_IS_PERCENT = /[([,;] ?(in )?% ?[)\]]?$/;
const IN_DEGREES = /°|[([,] ?k ?[)\]]?$|\bdegrees?\b|\bgrad\b/;
const OF_POINT = /points?\b|punkt|temp|\b(g|f)\.? ?p\b|\bpt\b/;
const OF_WHAT = /\b(water|wassers?|mix(ture)?|masse|mischung|mass|ansatz(es)?|eismasse)\b/;

/** Whether something that freezes is a share: its unit says so, or its words do of water or of the mix. */
const isFrozenShare = (plain: string): boolean =>
  FREEZES.test(plain) &&
  !IN_DEGREES.test(plain) &&
  (IN_PERCENT.test(plain) || (SHARE.test(plain) && OF_WHAT.test(plain) && !LOWERED.test(plain))) &&
  !OF_POINT.test(plain);

const isIce = (plain: string): boolean =>
  ICE.test(plain) &&
  !IN_ICE.test(plain) &&
  !IN_GRAMS.test(plain) &&
  !IN_CELSIUS.test(plain) &&
  (WATER_AS_ICE.test(plain) || SHARE.test(plain) || AT_COLD.test(plain) || /^gefroren/.test(plain));

/** Which answer of a recipe a label in plain words names; null when none. */
export function answerRole(plain: string): AnswerRole | null {
  if (DIFFERENCE.test(plain) || DIFFERENCE.test(plain.replace(WHOSE, ""))) return "depression";
  if (isFrozenShare(plain)) return "ice fraction";
  const ice = isIce(plain) && !FIRST_ICE.test(plain) && !/freezing[ -]?p|gefrier-?p/.test(plain);
  if (ice && (!OTHER_THING.test(plain) || WATER_AS_ICE.test(plain) || SHARE.test(plain)))
    return "ice fraction";
  if (OTHER_THING.test(plain) || COMPARED.test(plain)) return null;
  const freezes = FREEZES.test(plain) || PREDICTED.test(plain);
  if (freezes && UNIT_IS_PERCENT.test(plain)) return null;
  if (LOWERED.test(plain) && (freezes || THAN_WATER.test(plain))) return "depression";
  return freezes || FIRST_ICE.test(plain) ? "freezing point" : null;
}
