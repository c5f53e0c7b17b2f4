/** One pattern of several spellings, which may begin or end inside a word. */
export const anyOf = (...spellings: readonly string[]): RegExp => new RegExp(spellings.join("|"));
