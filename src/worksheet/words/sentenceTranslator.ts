// The functions answer in English everywhere, so that a book gives the same cells in every language. What is shown
// beside the cells is translated from the English sentence: its template is found again, and its parts put into
// the other language's.

/** Sentences of another language by their English template, and what stands in for small words. */
export interface SentenceLanguage {
  /**
   * Templates such as `the amount of {name} is {grams} g`: the same holes in both languages, {name?} if it
   * may be empty. A hole behind a quotation mark or "=" and a {formula} are shown as they are; any other is
   * translated in its turn. Places ("grams, row 3: ") come apart.
   */
  readonly sentences: Readonly<Record<string, string>>;
  /** For a hole of this name, what its English words are in this place of a sentence. */
  readonly vocabulary: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly row: string;
  readonly column: string;
  readonly or: string;
  readonly quotes: readonly [open: string, close: string];
  readonly decimalMark: string;
}

interface Hole {
  /** As written: "{name}". */
  readonly hole: string;
  readonly name: string;
  readonly isVerbatim: boolean;
}

interface Template {
  readonly english: RegExp;
  readonly holes: readonly Hole[];
  readonly other: string;
  /** So many letters have to agree: the more, the surer is the find. */
  readonly letters: number;
}

const HOLE = /\{\w+\??\}/;
const PLACE = /^([A-Za-z]\w*(?:, (?:row |column )?\d+)*)((?: \("[^"]*"\))?): ([\s\S]+)$/;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The first letter may be small: an engine's sentence goes on behind the argument it is about. */
const withEitherFirst = (pattern: string): string =>
  pattern.replace(/^[A-Za-z]/, (letter) => `[${letter.toLowerCase()}${letter.toUpperCase()}]`);

/** Words that are known to stand in a hole are tried before any others. */
function groupFor({ hole, name }: Hole, vocabulary: SentenceLanguage["vocabulary"]): string {
  const anything = hole.endsWith("?}") ? "[\\s\\S]*?" : "[\\s\\S]+?";
  return `(${[...Object.keys(vocabulary[name] ?? {}).map(escaped), anything].join("|")})`;
}

function templateOf(
  [english, other]: readonly [string, string],
  vocabulary: SentenceLanguage["vocabulary"],
): Template {
  const texts = english.split(HOLE);
  const holes = [...english.matchAll(new RegExp(HOLE, "g"))].map(([hole], at) => ({
    hole,
    name: hole.replace(/\W/g, ""),
    isVerbatim: /["=]$/.test(texts[at] ?? "") || hole === "{formula}",
  }));
  const pattern = texts
    .map((text, at) => escaped(text) + (holes[at] ? groupFor(holes[at], vocabulary) : ""))
    .join("");
  const letters = texts.reduce((sum, text) => sum + text.length, 0);
  return { english: new RegExp(`^${withEitherFirst(pattern)}$`), holes, other, letters };
}

/** Translates what the functions say; null for a sentence whose template is not known. */
export function sentenceTranslator(
  language: SentenceLanguage,
): (sentence: string) => string | null {
  const { vocabulary, quotes, decimalMark } = language;
  const templates = Object.entries(language.sentences)
    .map((pair) => templateOf(pair, vocabulary))
    .sort((a, b) => b.letters - a.letters);

  const plain = (text: string): string =>
    text.replace(/(^|[\s(])-(?=\d)/g, "$1−").replace(/(\d)\.(\d)/g, `$1${decimalMark}$2`);

  const quoted = (text: string): string =>
    text
      .replace(/"([^"]*)"/g, `${quotes[0]}$1${quotes[1]}`)
      .replaceAll(`${quotes[1]} or `, `${quotes[1]} ${language.or} `);

  /** A list of words or of sentences' parts; null when one of them is something else. */
  function listed(text: string, word: (each: string) => string | null | undefined): string | null {
    const between = text.includes("; ") ? "; " : ", ";
    const words = text.split(between).map(word);
    return words.every((each) => typeof each === "string") ? words.join(between) : null;
  }

  const part = (text: string, name: string): string =>
    listed(text, (each) => vocabulary[name]?.[each]) ??
    listed(text, translated) ??
    translated(text) ??
    (text.includes('"') ? quoted(text) : plain(text));

  function whole(sentence: string): string | null {
    for (const { english, holes, other } of templates) {
      const found = english.exec(sentence);
      if (found === null) continue;
      return holes.reduce((text, { hole, name, isVerbatim }, at) => {
        const value = found[at + 1] ?? "";
        return text.replace(hole, () => (isVerbatim ? value : part(value, name)));
      }, other);
    }
    return null;
  }

  /** What is said of a place: "grams, row 3: …", behind as many places as there are. */
  function placed(sentence: string): string | null {
    const [, place = "", name = "", rest = ""] = PLACE.exec(sentence) ?? [];
    const behind = rest === "" ? null : translated(rest);
    if (behind === null) return null;
    const there = place
      .replace(/\brow /g, `${language.row} `)
      .replace(/\bcolumn /g, `${language.column} `);
    return `${there}${quoted(name)}: ${behind}`;
  }

  function translated(sentence: string): string | null {
    return placed(sentence) ?? whole(sentence);
  }
  return translated;
}
