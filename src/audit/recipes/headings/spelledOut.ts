/** Ends of words that are cut short with a full stop, as on old cards; common practice, no source. */
const ENDINGS: ReadonlyMap<string, string> = new Map([
  ["pkt", "punkt"],
  ["geh", "gehalt"],
  ["ant", "anteil"],
  ["erniedr", "erniedrigung"],
  ["ausgefr", "ausgefroren"],
  ["verw", "verwendung"],
  ["zus", "zusammen"],
  ["ges", "gesamt"],
  ["insges", "insgesamt"],
  ["wass", "wasser"],
  ["zuck", "zucker"],
  ["rez", "rezept"],
  ["freez", "freezing"],
  ["depr", "depression"],
  ["cont", "content"],
  ["tot", "total"],
]);

const CUT_SHORT = /\p{L}\.|\bf.rs /u;
const ENDING = new RegExp(`(${[...ENDINGS.keys()].join("|")})\\.`, "gu");
const BEFORE_COLD = /(?<!\p{L})b\. ?(?=[-−–]? ?\d)/gu;
const BEFORE_NOUN = /(?<!\p{L})d\. ?(?=\p{L}{3})/gu;
const FREEZING = /(?<!\p{L})gefr?\.(?=[- ]?[pt])/gu;

/** "Fürs Blech": no rupees. */
const DRAWN_TOGETHER = /(?<!\p{L})fürs(?= )/gu;

/** Lower-case words with what is cut short in them spelled out: "gefr.-pkt." is "gefrier-punkt". */
export const spelledOut = (words: string): string =>
  CUT_SHORT.test(words)
    ? words
        .replace(DRAWN_TOGETHER, "für das")
        .replace(FREEZING, "gefrier")
        .replace(ENDING, (_, ending: string) => ENDINGS.get(ending) ?? ending)
        .replace(BEFORE_COLD, "bei ")
        .replace(BEFORE_NOUN, "der ")
    : words;
