const ESCAPED = /_x([0-9A-F]{4})_/gi;

/** Text as the user sees it: the file format writes odd characters as _x000D_ (ECMA-376 22.4.2.4). */
export const plainText = (text: string): string =>
  text.includes("_x")
    ? text.replace(ESCAPED, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;
