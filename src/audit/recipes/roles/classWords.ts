import { anyOf } from "./anyOf";
import type { Words } from "./words";

const PARTICLES = anyOf(
  "van\\W{0,3}t\\W{0,3}hoff",
  "^i( ?=)?$|^i[ -]?(factor|faktor|wert|value)|^i ?[([,]|\\b(factor|faktor) i$",
  "(?<!mmol.*)\\b(particles\\b|teilchen)",
  "^ions?$|^ionen(?!frei|aust)|(number|count|how many|no\\.) (of )?ions|\\bions (per|in|from)\\b|\\b(ions|ionen|molecules|moleküle)( or| and|[,/]| oder| und| bzw\\.?) ?(ions|ionen|molecules|moleküle|atoms|atome)( (per|pro|je|from|aus)\\b|$)|zahl (der )?(ionen|teilchen)",
  "dissociation (factor|number)|dissoziationsfaktor",
);
const SPLITS = /\b(split|break|dissociat|fall)\w*\b|zerf[aä]ll|dissozi|\b(ions?|ionen)\b|entsteh/;
const COUNTED =
  /\b(how many|number of|into|count of)\b|\bin\b.*\b(ions|ionen|teilchen)|wie ?viele|\banzahl\b|zahl\b/;

/** A salt falls into particles, and how many of them is asked for. */
const particles: Words = {
  test: (plain) =>
    PARTICLES.test(plain) || (SPLITS.test(plain) && COUNTED.test(plain) && !/mass|mol/.test(plain)),
};

/** What a class works with: English and German as teachers write them; common practice, no source. */
export const classWords = {
  constantOfWater:
    /(freezing|cryosc|gefrier|kryosk|erniedrigung).*(constant|konst)|\b(constant|konstante)\b.*\bk_?f\b|\bk_?f[- ](wert|value)|^(water'?s?|wasser) k_?f\b|erniedrigung\b.*\bk_?f\b|molale? (gefrier|freezing)|\bk ?·? ?k?g ?\/ ?mol|\b(k|°c) ?(\/|per|pro|je) ?\(?(mol(es?)? ?(\/|per|pro|je) ?(kg|kilo\w*)|molal)/,
  /** "Kf·b·i (K)", "i × Kf × m", "1,86 · b": what the constant is multiplied to is the depression. */
  constantTimes: anyOf(
    "^(k ?_?f|1[.,]86) ?[·∙⋅×*x] ?(i|b|m|ν|molality|molalität)\\b(?!.*/ ?mol\\b)",
    "^(i|b|m|ν|molality|molalität) ?[·∙⋅×*x] ?(.{1,12} ?[·∙⋅×*x] ?)?(k ?_?f|1[.,]86)\\b(?!.*/ ?mol\\b)",
  ),
  ofPureWater:
    /^(?!.*\b(below|under|unter|tiefer)\b).*(freezing|gefrier).*\b(of|von) (pure |reinem )?(water|wasser|solvent|lösungsmittel)\b/,
  /** What stays whole is the opposite of what counts as dissolved. */
  undissolved:
    /undissolved|insoluble|not (to )?dissolv|stays? whole|un(ge)?l[öo]s(lich|t)|nicht (ge)?lös(t|lich)/,
  massOfSolute: anyOf(
    "^((mass|weight|amount(?!.*\\bmol| of (the )?substance)|grams|masse|menge|einwaage)( of)?( the| des)? (dissolved|solute|substance|gelöst\\w*|stoffe?s)|(solute|dissolved|salt|stoff|salz) ?(mass|weight|amount|grams|masse|einwaage|weighed( in| out)?|used|taken|added))\\b(?!.*(solids|matter|feststoff|trocken))",
    "^(m )?(solutes?|dissolved|gelöst|stoff|gelöster stoff|substance|substanz)\\W+(in )?(k?g|mg|gramm|grams)\\W*$",
    "^(k?g|grams?|gramm) (of )?(the )?((salt|sugar|substance|salz|zucker|stoff) (dissolved|used|weighed|taken|added|gelöst|verwendet)|solute)$",
    "^m (solute|salt|sugar|stoff|salz|zucker)$",
    "^(how much|wie ?viel).*(dissolve|lös)\\w*( we| wir)?\\W*[([]?(k?g)?[)\\]]?$",
  ),
  molarMass:
    /molar ?(mass|weight|wt)|mola?re? ?masse|mol-?masse|mol(ecular)?[. -]{0,3}(weight|wt|mass|gew)|(molecular|formula|relative) (weight|mass|molecular mass)|formel(masse|gewicht)|molekül(masse|gew)|molekular(masse|gew)|(?<!k)g ?[·*]?\/ ?mol|\b(mass|weight|grams?) (of|in|per) (one|a|1) mole?\b|\b(one|a) mole? (weighs|has a mass)|masse (eines|von einem|je|pro) mols?\b|\bein mol wiegt|\b(g|grams?|gramm) (per|for|in|pro|je|für) ((a|one|1|ein(en|em)?) )?mol(e|s)?\b|(?<!k)g ?[·*]? ?mol ?(\^?[-−]1|⁻¹)|\bmw\b|^m_?r$/,
  molality:
    /molalit|molale? (conc|konz)|mol ?\/ ?kg|mol ?[·*]? ?kg ?(\^?[-−]1|⁻¹)|mol(es?)?( (of|an|von))?( \p{L}+)? ((per|pro|je) (kg|kilogram)|(in|per|for|auf|pro|je) (1|one|a|each|every|ein(em|en)?|jede[ns]?) (kg|kilo))|^osmolal/u,
  moles:
    /^(n|mols?|moles|stoffmenge|molzahl)(?![\p{L}\d]| ?fraction)|^mole( of\b|$)|[([]mol[)\]]$|, ?mol$|(\p{L}{3}|\s)(?<!\b(ions|particles|ionen|teilchen)\s?) ?\/ ?mol$|\bin mol$|\bmoles\b|^((an)?zahl|how many|number of|wie ?viele?|amount in) (der )?mol(e[ns]?|s)?\??$|^amount of (the )?substance,? ?n?$|^(amount|stoffmenge),? n$/u,
  particles,
  constant:
    /^k ?_?f\b|cryosc(?!opes?\b)|kryosk(?!ops?\b)|freezing (point )?constant|gefrier(punkts?)?konst/,
  countsAsSolute:
    /^(?!.*100 ?g\b).*((counts? as|is a?) ?solute|\bsolutes?\b|dissol|gelöst|löslich)/,
} as const satisfies Readonly<Record<string, Words>>;
