import { normalName } from "../normalName";
import { spellings } from "./spellings";

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

function readWords(name: string): readonly string[] {
  const spelled = spellings.reduce(
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

// one name is asked for again and again until it is known or given up
let last: readonly [name: string, words: readonly string[]] = ["", []];

/** The words of a name that count, each spelled in one way, without its purpose, its number as an additive and articles. */
export function nameWords(name: string): readonly string[] {
  if (last[0] !== name) last = [name, readWords(name)];
  return last[1];
}
