/** Text as headers and names are compared: lower case, one kind of space, no colon at the end. */
export const plainWords = (text: string): string =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s\u00a0]+/g, " ")
    .replace(/\s*:\s*$/, "")
    .trim();
