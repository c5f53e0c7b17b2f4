// German spreadsheets write 0,5 for a half, ; between arguments and . between the columns of an array.
// Formulas are kept as all spreadsheets keep them, in English notation: these two go there and back.

const NUMBER_BEFORE = "(?<![\\w.,$!])"; // not the end of a reference or a name

/** What stands between quotes or square brackets stays as it is; braces hold arrays. */
function pieces(formula: string): string[] {
  const found: string[] = [];
  let rest = formula;
  while (rest !== "") {
    const quoted = /^(?:"(?:[^"]|"")*"?|'(?:[^']|'')*'?)/.exec(rest)?.[0];
    const piece =
      quoted ?? (rest.startsWith("[") ? bracket(rest) : (/^[^"'[]+/.exec(rest)?.[0] ?? rest));
    found.push(piece);
    rest = rest.slice(piece.length);
  }
  return found;
}

/** A structured reference's brackets, which may hold others. */
function bracket(text: string): string {
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === "[") depth += 1;
    if (text[at] === "]" && --depth === 0) return text.slice(0, at + 1);
  }
  return text;
}

type Change = (code: string) => string;

function changed(formula: string, outside: Change, inBraces: Change): string {
  let braces = 0;
  return pieces(formula)
    .map((piece) => {
      if (/^["'[]/.test(piece)) return piece;
      return piece
        .split(/([{}])/)
        .map((code) => {
          if (code === "{") braces += 1;
          if (code === "}") braces -= 1;
          return braces > 0 ? inBraces(code) : outside(code);
        })
        .join("");
    })
    .join("");
}

/** A formula typed in German notation, as it is kept. */
export const fromGermanFormula = (formula: string): string =>
  changed(
    formula,
    (code) =>
      code.replace(new RegExp(`${NUMBER_BEFORE}(\\d+),(\\d+)`, "g"), "$1.$2").replaceAll(";", ","),
    // First the columns, so that the decimal points that follow are not taken for them.
    (code) =>
      code
        .replaceAll(".", "\u0000")
        .replace(/(\d),(\d)/g, "$1.$2")
        .replaceAll("\u0000", ","),
  );

/** A formula as it is kept, in German notation. */
export const toGermanFormula = (formula: string): string =>
  changed(
    formula,
    (code) =>
      code
        .replaceAll(",", ";")
        .replace(new RegExp(`${NUMBER_BEFORE}(\\d+)\\.(\\d+)`, "g"), "$1,$2"),
    (code) => code.replaceAll(",", "\u0000").replaceAll(".", ",").replaceAll("\u0000", "."),
  );
