import { normalName } from "../normalName";

/** Spellings of one word; both sides of a comparison are written this way. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/[éèê]/g, "e"],
  [/gluko/g, "gluco"],
  [/fru[kc]to/g, "fructo"],
  [/lakt/g, "lact"],
  [/zitr/g, "citr"],
  [/kalzium/g, "calcium"],
  [/karbonat/g, "carbonat"],
  [/kaseinat/g, "caseinat"],
  [/azetat/g, "acetat"],
  [/sulph/g, "sulf"],
  [/zellulose/g, "cellulose"],
  [/[ck]arr?agh?een/g, "carrageen"],
  [/glykol/g, "glycol"],
  [/äth(?=yl|an)/g, "eth"],
  [/sirup/g, "syrup"],
  [/(pasteuri|homogeni|ioni|minerali|atomi|iodi|deodori)z/g, "$1s"],
  [/\bfiber\b/g, "fibre"],
  [/yogh?ourt|yoghurt/g, "yogurt"],
  [/(gelatin|glycerin)e(?=pulver|\b)/g, "$1"],
  [/\bsoya\b/g, "soy"],
  [/\bskimmed\b/g, "skim"],
  [/\b(fat[- ]free|non[- ]fat)\b/g, "nonfat"],
  [/\bfat (?=nonfat)/g, ""],
  [/\bfull[- ]?(fat|cream)\b/g, "full$1"],
  // in a solution it is all the same which way it turns light
  [/(?<![\p{L}\d])(?:d,?l|[dl]|meso|alpha|beta|α|β)(?:-?\([+-]\))?-(?=\p{L})/gu, ""],
  [/\b1-hydrat/g, "monohydrat"],
  [/\b2-hydrat/g, "dihydrat"],
  [/\b6-hydrat/g, "hexahydrat"],
  [/\b10-hydrat|dekahydrat/g, "decahydrat"],
  [/hydrate\b/g, "hydrat"],
  [/\bp\. ?a\./g, "pa"],
  // lemon(s), Ei(er)
  [/(?<=\p{L})\((?:s|n|en|e|er|nen)\)/gu, ""],
  [/\b(free[- ]range|long[- ]life)\b/g, ""],
  // labels: no level spoonful, and a result
  [/ level$/g, " amount"],
  [/^(frozen|gefrorenes) (?=wa(ter|sser)\b)/g, "iced "],
  [/\bh-(?=(voll|mager)?milch|(schlag)?(sahne|rahm))/g, ""],
  [/molke-?pulver/g, "molkenpulver"],
  [/\b\d{2,3} ?(?:° ?)?bloom\b/g, ""],
  [/\be[ -]?(\d{3,4}) ?\(?(i{1,3})\)?(?!\p{L})/gu, "e$1$2"],
];
/** "Eier (Größe M)": a size is no weight. */
const EGG_SIZE =
  /(\b(?:eggs?|eier|ei|eigelbe?|eiweisse?|eiklar|yolks?|whites?)\b.*?)[\s,(]+(?:size |grösse |gr\.? ?)?(?:xl|[sml])\)?$/;

/** "Juice of 2 lemons", "Saft von Zitronen": the juice is what is meant. */
const OF_FRUIT =
  /^(juice|pulp|zest|yolks?|whites?|saft|fruchtfleisch) (?:of|from|von|vom|aus) (?:the |\d+ )?(.+)$/;
/** "For dusting", "zum Unterheben": what it is for. */
const PURPOSE =
  /[\s,(]+(?:for|to (?:finish|fold|serve|dust|taste|decorate|top|glaze|sprinkle|coat|poach|cook|boil|dissolve)|zum|zur|für)(?:\s[^()\d%]*)?\)?$/;
const E_NUMBER = /\be ?\d{3,4}(?:[a-z]|i{2,3})?\b/g;
const EQUIVALENT = /\bde ?(\d+)\b|\b(\d+) ?de\b/g;
const PER_CENT = /(\d+)(?:[.,](\d+))?%(?:ig\p{L}*)?/gu;
const FILLERS = /^(of|the|an?|in|at|from|and|und|u|von|vom|der|die|das|dem|aus|im|als)$/;
/** Beside a percentage it goes without saying of what it is. */
const OF_PER_CENT = /^(with|mit|fat|fett|vol|abv|alc|alk|alcohol|alkohol|i|tr)$/;

/** The words of a name that count, each spelled in one way, without its purpose, its number as an additive and articles. */
export function nameWords(name: string): string[] {
  const spelled = SPELLINGS.reduce(
    (text, [word, written]) => text.replace(word, written),
    normalName(name),
  );
  const direct = spelled.replace(PURPOSE, "").replace(EGG_SIZE, "$1").replace(OF_FRUIT, "$2 $1");
  const numbered = direct
    .replace(
      EQUIVALENT,
      (_all, before?: string, behind?: string) => ` de${before ?? behind ?? ""} `,
    )
    .replace(PER_CENT, (_all, whole: string, part?: string) =>
      part === undefined ? ` ${whole}% ` : ` ${whole}.${part}% `,
    );
  const additive =
    numbered.replace(E_NUMBER, " ").trim() === "" ? numbered : numbered.replace(E_NUMBER, " ");
  const words = additive
    .split(/[^\p{L}\p{M}\p{N}%.]+|\.(?!\d)/u)
    .filter((word) => word !== "" && !FILLERS.test(word));
  const isStrength = words.some((word) => word.endsWith("%"));
  return isStrength ? words.filter((word) => !OF_PER_CENT.test(word)) : words;
}
