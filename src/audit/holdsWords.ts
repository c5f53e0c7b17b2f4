const SIGNS = /[^\p{L}\p{N}]+/gu;

/** Whether a text holds some words as they are, whatever signs stand between. */
export const holdsWords = (text: string, words: string): boolean =>
  ` ${text.toLowerCase().replaceAll(SIGNS, " ")} `.includes(
    ` ${words.toLowerCase().replaceAll(SIGNS, " ").trim()} `,
  );
