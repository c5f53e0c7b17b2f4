import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** A recipe in phases with headings and sums of their own, and its freezing point. */
const phases = (sugar: string, point: number): Rows => [
  ["Rohstoff", "Menge [g]"],
  ["Phase A: vorlegen"],
  ["Trinkwasser", 600],
  ["Zitronensaft", 60],
  ["Summe Phase A", formula("SUM(B3:B4)", 660)],
  ["Phase B: einrühren"],
  [sugar, 150],
  ["Dextrose-Monohydrat", 50],
  ["Summe Phase B", formula("SUM(B7:B8)", 200)],
  ["Charge gesamt", formula("B5+B9", 860)],
  [],
  ["Gefrierpunkt (°C)", point],
];

describe("A list in phases, each with its heading and its sum", () => {
  test.each<Tried>([
    { what: "all known", sheets: { Eis: phases("Saccharose", -2.2) }, found: [] },
    {
      what: "the one below a heading unknown",
      sheets: { Eis: phases("Hausmischung B", -2.2) },
      found: ["unknown-ingredient Eis!A7"],
    },
    {
      what: "with another freezing point",
      sheets: { Eis: phases("Saccharose", -4.1) },
      found: ["result-differs Eis!B12"],
    },
  ])("$what", expectFound);
});
