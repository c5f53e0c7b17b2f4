import { partOf } from "../../answers/partLabel";
import { saysLaw } from "../../answers/saysLaw";
import { headerRole } from "../headings/headerRole";
import { classWords } from "../roles/classWords";
import { withoutSymbol } from "../headings/withoutSymbol";
import { plainWords } from "../headings/plainWords";

/** What a label beside a value says in a worked example of a class. */
export type FormKind =
  | "solute"
  | "solvent"
  | "mass"
  | "water"
  | "molar mass"
  | "moles"
  | "particles"
  | "constant"
  | "answer";

const LONGEST = 70;
const WITHOUT_UNIT =
  /\s*([([]\s*(in )?(k?g|mg|m?l|grams?|gramm|kilograms?|kilogramm|oz|lb|solvent|lösungsmittel|solute|name|dissolved|gelöst)\s*[)\]]|\s*[,/;]\s*(in )?(k?g|mg|m?l)|\s(in )?(k?g|grams?|gramm|kilograms?|kilogramm))\s*$/;
/** The letters that chemists write: m(NaCl), M, n, b, i, ν, V(H2O). */
const SYMBOL =
  /^([mMnbiνV]) ?(?:[(_] ?([^()]+?) ?\)?)?(?: ?[=:])?(?: ?(?:\/|in|\() ?(?:k?g|m?l|g\/mol)\)?)?$/;
const NUMBERING = /^((step|schritt) ?\d{1,2}\s*[.):]|(\d{1,2}|[a-h])\s*[.)])\s*/;

const SUBSTANCE =
  "(solute|substance|salt|sugar|compound|chemical|stoff|substanz|salz|zucker|verbindung|chemikalie|probe|sample)";
const SOLUTE = new RegExp(
  `^(the |(my|our|your|their|(mein|dein|euer|eure?|unser|ihr)e?) |name of (the )?|which |welche[rs]? )?(dissolved |gelöste[rs]? )?${SUBSTANCE}( ?[a-d1-4])?( (dissolved|used|chosen|name|gelöst))?$`,
);
/** Who dissolves, or what is done: "we dissolve", "wir lösen", "was gelöst wird". */
const DISSOLVES =
  /^((what )?(is |we |you |i )?(dissolved?|stir(red)? in|add(ed)?)|(was )?(wir |ihr |ich |man )?(lösen|löst|löse|gelöst wird|(ein)?gerührt wird)( wir| ihr| man)?)$/;
const SOLVENT = /^(the |das )?(solvent|lösungsmittel|lösemittel)$/;
const MASS =
  "(mass|grams?|kilograms?|k?g|weight|amount|quantity|masse|menge|einwaage|vorlage|gramm|kilogramm|gewicht|volume|volumen|m)";
/** How water for a solution is made or kept: "deionised", "entsalztes", "VE-"; common practice, no source. */
const WATER_KIND =
  "((pure|purified|ultrapure|tap|plain|cold|warm|boiled|bottled|filtered|soft|lab|distilled|di|ro|de-?ioni[sz]ed|deminerali[sz]ed|demin|solvent|ve|leitungs|(rein(st)?|kalt|warm|abgekocht|gefiltert|dest(\\.|illiert)|(voll)?(ent|vollent)salzt|(ent|de)ionisiert|(de|ent)mineralisiert)(e[snrm])?)[ -]?)";
const WATER_WORD = `(h2o|aqua (dest|pur)(\\.|illata|ificata)?|${WATER_KIND}?(water|wasser|(solvent|lösungsmittel|lösemittel)s?( \\(?(water|wasser)\\)?)?)s?)`;
/** The same behind it: "water (deionised)", "Wasser, destilliert", "water (from the tap)". */
const KIND_BEHIND = new RegExp(
  `(?<=(water|wasser|h2o)),? \\(?(${WATER_KIND}|from the (tap|bottle)|aus (der|dem) \\p{L}+)\\)?$`,
  "u",
);
const USED =
  "(used|added|taken|poured|weighed( (in|out))?|(verwendet|(ein|ab)gewogen|eingesetzt|zugegeben|vorgelegt)(e[sn]?)?)";
const WATER = new RegExp(
  `^(((in|into|auf|with|mit|dazu|plus) (so much |so viel |how much |wie ?viel )?|how much |wie ?viel )?(${MASS},? ?(of |an |von |des |der |the )*)?(${USED} )?[( ]?${WATER_WORD}\\)?|(wasser|lösungsmittel|lösemittel)(masse|menge|volumen))( ?(${MASS}|${USED}|poured (in|on|over it)|dazu|hinzu|darauf|(it|that|this|es|er|sie) (is|was|ist|wird) (dissolved|put|gelöst) in|(in|im|for|per|je|pro|für) (each |every |one |the |de[mnr] |jede[mnrs]? |ein(em|er|en)? )?[a-zäöüß]+))?$`,
);
const OF_MASS =
  /\b(mass|grams?|how much|wie ?viel|weight|weighed|zugabe|amount|quantity|masse|menge|einwaage|eingewogene?[rsn]?|gramm|gewicht)\b|(stoff|salz|zucker)(masse|menge|portion)|^m$|^(dissolved|gelöst)$|(dissolved|solute|gelöste[rs]? stoff).*[([]\s*k?g\s*[)\]]/;
const DRY_MATTER = /solids|matter|feststoff|trocken/;
/** Of both together, or not of this solution at all. */
const OF_OTHER =
  /\bsolution|\blösung(?!smittel)\b|\btotal|gesamt|mixture|mischung|\bper\b|\bpro\b|\bje\b|€|\$|£|price|preis|\bempty\b|beaker|\b(bowl|container|cup|tare|flask)\b|becher|schüssel|gefä(ß|ss)|kolben|\b(leer|tara)/;

const ANSWERS = new Set(["molality", "depression", "freezing point", "ice fraction"]);

/** A label without its unit, its numbering and a sign of equality at its end. */
export const bareLabel = (label: string): string =>
  withoutSymbol(plainWords(label).replace(NUMBERING, ""))
    .replace(/\s*[=:]\s*$/, "")
    .replace(WITHOUT_UNIT, "")
    .trim();

function kindOfSymbol(letter: string, of: string): FormKind | null {
  if (letter === "m" || letter === "V") {
    if (/^(w|h2o|water|wasser|solvent|lm|lösungsmittel|lösemittel)$/i.test(of)) return "water";
    return letter === "m" ? "mass" : null;
  }
  if (letter === "M") return "molar mass";
  if (letter === "n") return "moles";
  return letter === "b" ? "answer" : "particles";
}

/** What a label is about; null when it is none of a worked example's. */
export function formKind(label: string): FormKind | null {
  const bare = bareLabel(label);
  const symbol = SYMBOL.exec(label.normalize("NFKC").trim());
  if (symbol !== null) return kindOfSymbol(symbol[1] ?? "", symbol[2] ?? "");
  if (bare === "" || label.length > LONGEST) return null;
  if (SOLVENT.test(bare)) return "solvent";
  if (WATER.test(bare.replace(KIND_BEHIND, ""))) return "water";
  if (SOLUTE.test(bare) || DISSOLVES.test(bare)) return "solute";
  if (saysLaw(label)) return "answer";
  const role = headerRole(label);
  if (role === "cryoscopic constant") return "constant";
  if (role === "molar mass" || role === "moles" || role === "particles") return role;
  if (role !== null && ANSWERS.has(role)) return "answer";
  const part = partOf(label);
  if (part !== null && part.per !== null) return "answer";
  const plain = plainWords(label);
  const isMass = [OF_MASS, classWords.massOfSolute].some(
    (words) => words.test(plain) || words.test(bare),
  );
  if (isMass && !OF_OTHER.test(bare) && !DRY_MATTER.test(bare)) return "mass";
  return part === null ? null : "answer";
}
