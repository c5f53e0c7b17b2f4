import { decimalsFor, numberFormat } from "../../../taskpane/words/numberFormat";

// JCGM 100:2008 (GUM), 7.2.6: an uncertainty is quoted to at most two significant digits, and the value is
// rounded to be consistent with it.

const english = numberFormat("en-GB");
const german = numberFormat("de-DE");

describe("numbers as the language writes them", () => {
  test("German has a decimal comma, English a point, both the true minus", () => {
    expect(german.fixed(-2.314, 2)).toBe("−2,31");
    expect(english.fixed(-2.314, 2)).toBe("−2.31");
  });
  test("a value that rounds to zero has no sign", () => {
    expect(english.fixed(-0.0004, 2)).toBe("0.00");
  });
  test("a fraction becomes per cent", () => {
    expect(german.percent(0.6825, 1)).toBe("68,3\u202f%");
  });
});

describe("a value with its uncertainty", () => {
  test.each([
    [-2.3134, 0.042, "−2.31 ± 0.04 K"],
    [-2.3134, 0.12, "−2.31 ± 0.12 K"],
    [68.24, 1.8, "68.2 ± 1.8 K"],
    [68.24, 3.2, "68 ± 3 K"],
  ])("%d ± %d is written %p", (value, uncertainty, text) => {
    expect(english.withBand(value, uncertainty, "K").replace(/\s/g, " ")).toBe(text);
  });
  test("no line ends within it", () => {
    const written = [english.withBand(-2.3134, 0.042, "K"), english.share(0.002, 0.03)];
    // Unicode line breaking (UAX 14): no break beside U+00A0, U+202F and U+2060; one may come after a dash or space.
    for (const text of written) expect(text.replace(/\u2060–\u2060/g, "")).not.toMatch(/[ –-]/);
  });
  test.each([
    [0, 0.003, "0–0.3 %"],
    [0.02, 0.034, "0–5 %"],
    [0.98, 0.034, "95–100 %"],
    [0.682, 0.018, "68.2 ± 1.8 %"],
    [0, 0, "0.0 %"],
  ])("a share %d ± %d is never below nothing or above all: %p", (fraction, band, text) => {
    const shown = english
      .share(fraction, band)
      .replace(/\u2060/g, "")
      .replace(/\s/g, " ");
    expect(shown).toBe(text);
  });
  test("an unknown or zero uncertainty leaves two decimals", () => {
    expect(decimalsFor(0)).toBe(2);
  });
});

describe("a number as someone types it", () => {
  test.each([
    ["-14", -14],
    ["−14,5", -14.5],
    [" -14.5 ", -14.5],
    [".5", 0.5],
  ])("%p is %d", (text, value) => {
    expect(german.read(text)).toBe(value);
  });
  test.each(["", "-", "12 °C", "1.2.3", "1,234.5", "Infinity", "1e3"])("%p is none", (text) => {
    expect(english.read(text)).toBeNull();
  });
});
