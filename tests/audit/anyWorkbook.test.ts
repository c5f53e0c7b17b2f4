import fc from "fast-check";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { bookOf } from "./bookOf";

/** Cells as sheets hold them, the odd and the hostile among them. */
const CELLS: readonly ShortCell[] = [
  ...[
    "Ingredient",
    "name",
    "same as",
    "water",
    "Amount (g)",
    "Menge kg",
    "Share %",
    "Unit",
    "Molar mass",
    "i",
    "Moles",
  ],
  ...[
    "Freezing point",
    "Depression (K)",
    "Ice at −10 °C, % of the water",
    "Kf",
    "Total",
    "Style",
    "ABV %",
    "Ethanol g",
  ],
  ...[
    "Freezer temperature (°C)",
    "Water in the mix (g)",
    "Sugar, mass %",
    "sucrose",
    "Milk",
    "Dextrose",
    "pistachios",
  ],
  ...[
    "spirit 40 % vol",
    "honey, clover",
    "sodium chloride",
    "water lost",
    "scooped at −13",
    "12,5",
    "5 °F",
    "1 1/2",
    "cup",
  ],
  ...[
    "",
    " ",
    "=cmd|' /C calc'!A0",
    "\u0000",
    "🍧",
    "x".repeat(2000),
    "A1:B9",
    "__proto__",
    "constructor",
  ],
  ...[0, 1, -1, 0.5, 100, 500, 18.6, 1e-300, 1e300, -273.15, Number.MAX_VALUE, 2 ** 31],
  ...[true, false, null, { error: "#REF!" }, { error: "#N/A" }],
  { value: 3, formula: "SUM(B2:B9)" },
  { value: 3, formula: "A1" },
  { value: -2, formula: "RIME.FREEZINGPOINT(A1:A9,B1:B9)" },
  { value: null, formula: "'no such sheet'!$A$1+[7]x!B2" },
  { value: 0.12, format: "0.0 %" },
  { value: 5, format: '0 "°F"' },
  { value: 5, format: '0 "kg"' },
];

/** A number that a unit takes beyond all numbers. */
const TOO_LARGE_IN_GRAMS = [
  ["Water in the mix (g)", Number.MAX_VALUE, "Menge kg"],
  ["Ingredient", "water", "i"],
  ["spirit 40 % vol", 0.5],
];

test("any workbook is audited to sentences with sizes, without a mishap", () => {
  const cell = fc.constantFrom(...CELLS);
  const rows = fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 14 });
  fc.assert(
    fc.property(fc.record({ Sheet1: rows, "Zweites Blatt": rows }), (sheets) => {
      for (const { message, effect, cell: place } of auditWorkbook(bookOf(sheets)).findings) {
        expect(message).toMatch(/^.{10,400}$/su);
        expect(message).not.toMatch(/NaN|Infinity|undefined|\[object/);
        expect(place).toMatch(/^[A-Z]{1,3}\d+(:[A-Z]{1,3}\d+)?$/);
        for (const value of [effect?.from, effect?.to]) {
          if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
        }
      }
    }),
    { numRuns: 3000, examples: [[{ Sheet1: TOO_LARGE_IN_GRAMS, "Zweites Blatt": [] }]] },
  );
});
