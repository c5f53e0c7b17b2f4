import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** Probes that are tried in ice water. */
const probes = (label: string, at: number): Rows => [
  [label, at],
  [],
  ["Probe", "shows (°C)", "off by (K)"],
  ["stick 1", 0.5, formula("B4-$B$1", 0.5 - at)],
  ["stick 2", -0.5, formula("B5-$B$1", -0.5 - at)],
];

describe("Ice water in °C", () => {
  test.each<Tried>([
    { what: "at its melting point", sheets: { Probes: probes("Ice water (°C)", 0) }, found: [] },
    ...["Ice water (°C)", "Eiswasser (°C)", "Ice bath, °C"].map((label) => ({
      what: `${label} in °F`,
      sheets: { Probes: probes(label, 32) },
      found: ["temperature-units-mixed Probes!B1"],
    })),
    { what: "that says °F", sheets: { Probes: probes("Ice water (°F)", 32) }, found: [] },
    { what: "by the litre", sheets: { Probes: probes("Ice water (l)", 32) }, found: [] },
    { what: "water from the tap", sheets: { Probes: probes("Tap water (°C)", 32) }, found: [] },
  ])("$what", expectFound);

  test("a freezing point among others in °F is told once", () => {
    // 20 % of sucrose freezes at −1.46 °C, 22 % at −1.66 and 24 % at −1.88.
    const points: Rows = [
      ["Nr.", "Wasser (g)", "Zucker (g)", "Gefrierpunkt (°C)"],
      ["V1", 80, 20, -1.5],
      ["V2", 78, 22, 29],
      ["V3", 80, 20, -1.5],
      ["V4", 76, 24, -1.9],
      ["V5", 80, 20, -1.5],
    ];
    expectFound({
      what: "once",
      sheets: { Ice: points },
      found: ["temperature-units-mixed Ice!D3"],
    });
  });
});
