/** The names in a text that parts them by semicolons. */
export const listOf = (text: string): readonly string[] =>
  text.split(";").map((name) => name.replace(/\s+/g, " ").trim());
