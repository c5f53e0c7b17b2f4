import type { Words } from "../words/words";

/** A word of RIME.TEXTURE in the pane's language. */
export const firmnessText = (word: string, { notebook }: Words): string =>
  (notebook.firmnessWords as Readonly<Record<string, string>>)[word] ?? word;
