import { remembered } from "../../../foundation/remembered";

/** Letters of other scripts that look like Latin ones (Unicode Technical Standard 39, confusables). */
const LOOK_ALIKE: Readonly<Record<string, string>> = {
  ...{ а: "a", е: "e", о: "o", р: "p", с: "c", у: "y", х: "x", і: "i", ѕ: "s", ј: "j", һ: "h" },
  ...{ А: "A", В: "B", Е: "E", К: "K", М: "M", Н: "H", О: "O", Р: "P", С: "C", Т: "T", Х: "X" },
  ...{ І: "I", Ѕ: "S", Ј: "J", У: "Y", ԁ: "d", ԛ: "q", ԝ: "w", к: "k", т: "t", м: "m" },
  ...{ α: "a", ο: "o", ρ: "p", ν: "v", ι: "i", υ: "u", κ: "k", Α: "A", Β: "B", Ε: "E", Ζ: "Z" },
  ...{ Η: "H", Ι: "I", Κ: "K", Μ: "M", Ν: "N", Ο: "O", Ρ: "P", Τ: "T", Υ: "Y", Χ: "X" },
};

/** A digit inside a word: "mi1k", "c0coa". Grades such as "DE42" keep theirs. */
const DIGIT_IN_WORD = /(?<=\p{Ll})[01](?=\p{Ll})|(?<![\p{L}\p{N}.,])0(?=\p{Ll}{2})/gu;

/** Signs without width: they are there and nobody sees them. */
export const UNSEEN = /[\u00ad\u200b-\u200f\u2060\ufeff]/gu;

const NAMES_KEPT = 5000;

/** A name with look-alike letters put right and unseen signs dropped; blanks are left as they are. */
export const foldedName = remembered(NAMES_KEPT, (name) => {
  const latin = /\p{Script=Latin}/u.test(name);
  const letters = latin
    ? Array.from(name, (letter) => LOOK_ALIKE[letter] ?? letter).join("")
    : name;
  return letters.replace(UNSEEN, "").replace(DIGIT_IN_WORD, (digit) => (digit === "1" ? "l" : "o"));
});
