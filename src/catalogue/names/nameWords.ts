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
  [/(pasteuri|homogeni|ioni|minerali|atomi|iodi|deodori|alkali)z/g, "$1s"],
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
  [/cacao\b/g, "cocoa"],
  [/\bpe[ck]ann/g, "pekann"],
  [/makadamia/g, "macadamia"],
  [/ç/g, "c"],
  [/sosse\b/g, "sauce"],
  [/\bdess?icc?ated\b/g, "desiccated"],
  [/\b80[- ]proof\b/g, "40%"],
  [/\b75[- ]proof\b/g, "37.5%"],
  [/\b(hot|heisse) (?=(?:chocolate|schokolade)\b)/g, "$1"], // a drink
  [/\bchoc\b/g, "chocolate"],
  [/\bschoko-?(?=tropfen|stück|raspel|splitter|drops|chips)/g, "schokoladen"],
  [/\bkirsch\b(?!-)/g, "kirschwasser"], // alone it is the spirit, whatever else begins with it
  [/[\s,(]*\b(?:not from concentrate|nicht aus konzentrat)\b\)?/g, ""],
  [/(?<=\p{L}{4})[- ]?(?:direkt|mutter)saft\b/gu, "saft"],
  [
    /\b(?:no|without(?: any)?|ohne)(?: added)? (?:sugar|zucker(?:zusatz)?)(?: added)?\b/g,
    "unsweetened",
  ],
  [/\b(?:without|no|ohne) (?:skins?|peel|stones?|pits?|schale|haut|steine?)\b/g, "peeled"],
  [/(\d) ?(?:vol(?:umen)?\.?[- ]?(?:%|prozent)|per ?cent\b|prozent\b)/g, "$1%"],
  [/(\d%),? (?:cocoa|kakao(?:anteil)?)(?: solids| content)?(?=\)|$)/g, "$1"],
];

/** "Eier (Größe M)": a size is no weight. */
const EGG_SIZE =
  /(\b(?:eggs?|eier|ei|eigelbe?|eiweisse?|eiklar|yolks?|whites?)\b.*?)[\s,(]+(?:size |grösse |gr\.? ?)?(?:xl|[sml])\)?$/;

/** What fruit and nuts are sold as or cut into; in German often one word with what it is of. */
const MADE_INTO =
  /(?<=\p{L}{4})-?(fruchtpüree|fruchtmark|fruchtfleisch|püree|mark|pulpe|kerne|hälften|würfel|stücke|stückchen|tropfen|blättchen|stifte|splitter|scheiben)\b/gu;

/** "Juice of 2 lemons", "Saft von Zitronen": the juice is what is meant. */
const OF_FRUIT =
  /^(juice|pulp|flesh|puree|zest|yolks?|whites?|saft|fruchtfleisch|püree|mark)(?: (?:of|from|von|vom|aus|the|an?|half|eine[rs]?|halben|\d+(?:[.,\u2044/]\d+)?))+ (.+)$/;
/** "Zitrone", "Granatapfels": as the first half of a German word. */
const asFirstHalf = (fruit: string): string =>
  fruit.replace(/(?<=\p{L}{3}e)$/u, "n").replace(/(?<=apfel)s$/, "");
/** "For dusting", "zum Unterheben": what it is for. */
const PURPOSE =
  /[\s,(]+(?:for|to (?:finish|fold|serve|dust|taste|decorate|top|glaze|sprinkle|coat|poach|cook|boil|dissolve)|zum|zur|für)(?:\s[^()\d%]*)?\)?$/;
const E_NUMBER = /\be ?\d{3,4}(?:[a-z]|i{2,3})?\b/g;
const EQUIVALENT = /\bde ?(\d+)\b|\b(\d+) ?de\b/g;
const PER_CENT = /(\d+)(?:[.,](\d+))?%(?:ig\p{L}*)?/gu;
const FILLERS = /^(of|the|an?|in|at|from|and|und|u|von|vom|der|die|das|dem|aus|im|als)$/;
/** Beside a percentage it goes without saying of what it is. */
const OF_PER_CENT = /^(with|mit|fat|fett|vol|abv|alc|alk|i|tr)$/;

const isAlcohol = (word: string): boolean => /^al[ck]ohol$/.test(word);

/** The words of a name that count, each spelled in one way, without its purpose, its number as an additive and articles. */
export function nameWords(name: string): string[] {
  const spelled = SPELLINGS.reduce(
    (text, [word, written]) => text.replace(word, written),
    normalName(name),
  );
  const direct = spelled
    .replace(PURPOSE, "")
    .replace(EGG_SIZE, "$1")
    .replace(OF_FRUIT, (_all, part: string, fruit: string) =>
      part === "saft" ? `${asFirstHalf(fruit)} saft` : `${fruit} ${part}`,
    )
    .replace(MADE_INTO, " $1");
  const numbered = direct
    .replace(
      EQUIVALENT,
      (_all, before?: string, behind?: string) => ` de${before ?? behind ?? ""} `,
    )
    .replace(PER_CENT, (_all, whole: string, part?: string) =>
      part === undefined || /^0+$/.test(part) ? ` ${whole}% ` : ` ${whole}.${part}% `,
    );
  const additive =
    numbered.replace(E_NUMBER, " ").trim() === "" ? numbered : numbered.replace(E_NUMBER, " ");
  const words = additive
    .split(/[^\p{L}\p{M}\p{N}%.]+|\.(?!\d)/u)
    .filter((word) => word !== "" && !FILLERS.test(word));
  const isStrength = words.some((word) => word.endsWith("%"));
  const things = words.filter(
    (word, at) => !OF_PER_CENT.test(word) && !(isAlcohol(word) && words[at - 1]?.endsWith("%")),
  );
  // "alcohol 96 %": here it does not
  return isStrength && things.some((word) => !/\d/.test(word)) ? things : words;
}
