import { fromGermanFormula, toGermanFormula } from "../../src/bench/page/germanFormula";
import { shownNumber, typedNumber } from "../../src/bench/page/typedNumber";
import { worksheetFunctions } from "../../src/worksheet/functions";

// Notation of German spreadsheets: common practice, no source.
test.each([
  ["=RIME.FREEZINGPOINT(A1:B1;A2:B2)", "=RIME.FREEZINGPOINT(A1:B1,A2:B2)"],
  ["=RIME.ICEFRACTION(A1:B1;A2:B2;-12,5;;D1:F9)", "=RIME.ICEFRACTION(A1:B1,A2:B2,-12.5,,D1:F9)"],
  ['={"water"."sucrose";200.70,5}', '={"water","sucrose";200,70.5}'],
  ['=RIME.GRAMS("sugar; brown";1,5;"cup")', '=RIME.GRAMS("sugar; brown",1.5,"cup")'],
  ["='Summer, 2,5'!B2*1,5E-3", "='Summer, 2,5'!B2*1.5E-3"],
  ["=ROUND(B2;1)+ROUND(Sheet1!B2;2)", "=ROUND(B2,1)+ROUND(Sheet1!B2,2)"],
  ["=SUM(Prices[[#This Row],[Pack, g]];0,5)", "=SUM(Prices[[#This Row],[Pack, g]],0.5)"],
])("%s is kept as %s, and shown so again", (german, kept) => {
  expect(fromGermanFormula(german)).toBe(kept);
  expect(toGermanFormula(kept)).toBe(german);
});

test("a comma after a reference cannot be a decimal one: it still parts arguments", () => {
  expect(fromGermanFormula("=ROUND(B2,1)")).toBe("=ROUND(B2,1)");
});

test("every example of the functions goes to German notation and back unchanged", () => {
  for (const { example } of worksheetFunctions) {
    expect(fromGermanFormula(toGermanFormula(example.formula))).toBe(example.formula);
  }
});

test.each([
  ["12,5", "12.5", null],
  ["1.234,5", "1,234.5", null],
  ["12,5 %", "12.5 %", null],
  ["1,30 €", "1.30 €", null],
  ["-3,25", "-3.25", null],
  ["12.5", null, "12.5"],
  ["1,234.5", null, "1,234.5"],
  ["1234", "1234", "1234"],
  ["water", "water", "water"],
  ["2 eggs", "2 eggs", "2 eggs"],
  ["1/2", "1/2", "1/2"],
  ["=A1", "=A1", "=A1"],
])("%s typed is %s in German and %s in English; null stays a text", (text, german, english) => {
  expect(typedNumber(text, "de")).toBe(german);
  expect(typedNumber(text, "en")).toBe(english);
});

test("numbers are shown with the mark of the language", () => {
  expect(shownNumber(12.5, "de")).toBe("12,5");
  expect(shownNumber(0.1 + 0.2, "en")).toBe("0.3");
  expect(shownNumber(-1e-21, "de")).toBe("-1e-21");
});
