import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** Sugar is 24 and 15 % of all; milk freezes out of it with what it brings itself. */
const chart = (solute: string, unit: string, first: number, second: number): Rows => [
  ["What goes in", "Unit", "Water ice", "Thin ice"],
  ["We want it", null, "scooped at −13", "scooped at −13"],
  ["water", "g", 380, 425],
  ["caster sugar", "g", 120, 75],
  ["Altogether", "g", formula("SUM(C3:C4)", 500), formula("SUM(D3:D4)", 500)],
  [solute, unit, first, second],
];
const told = (rows: Rows) =>
  placesOf(findingsOf(rows)).filter((place) => /result-differs|input-without-unit/.test(place));

test("wishes between a header and its first ingredient do not end the list", () => {
  const { blocks } = auditContext(bookOf({ Sheet1: chart("Sugars in it", "g", 120, 75) }), []);
  expect(blocks.map(({ recipes }) => recipes.map(({ title }) => title))).toEqual([
    ["Water ice", "Thin ice"],
  ]);
});

test.each([
  ["Sugars in it", "g", 120, 75],
  ["Sugars in it", "% of the weight", 24, 15],
  ["Sugars in it", "%", 24, 15],
  ["Zucker darin", "g je 100 g Wasser", 31.6, 17.6],
  ["Frozen at −18 °C", "% of the water", 88, 94],
])("an answer %s in %s goes by the unit in the cell between", (label, unit, first, second) => {
  expect(told(chart(label, unit, first, second))).toEqual([]);
});

test("an answer that is right in another unit only is told", () => {
  expect(told(chart("Sugars in it", "% of the weight", 120, 15))).toEqual(["C6 result-differs"]);
  const ofMix = findingsOf(chart("Zucker darin", "g je 100 g Wasser", 24, 17.6));
  expect(placesOf(ofMix)).toContain("C6 per-water-or-per-mix");
});
