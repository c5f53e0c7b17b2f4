import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** A batch of a file: its number and its kind in each line, far left of the ingredients. */
const batch = (number: string, kind: string, lines: Rows, top: number): Rows => [
  ...lines.map(([name = null, kilograms = null], at) => [
    ...[number, kind, at + 1, `L${top}-${at}`, name, kilograms, "kg"],
  ]),
  [
    ...[number, kind, null, null, "total"],
    ...[formula(`ROUND(SUM(F${top}:F${top + lines.length - 1}),3)`, 20), "kg"],
  ],
];

const LEMON: Rows = [
  ["water", 14],
  ["sucrose", 5],
  ["dextrose monohydrate", 1],
];
const MILK: Rows = [
  ["whole milk", 14],
  ["sucrose", 4.5],
  ["cream 35 % fat", 1.5],
];

interface Laboratory {
  readonly point?: number;
  readonly target?: string;
  readonly more?: Rows;
}

/** The lemon ice freezes at −2.93 °C, the milk ice at −2.65 °C; what was measured goes by number. */
const file = ({ point = -2.65, target = "scooped at −13", more = [] }: Laboratory): Rows => [
  ["Batch", "Article", "Pos.", "Lot", "Raw material", "Amount", "Unit"],
  ...batch("26-001", "Lemon ice", LEMON, 2),
  ...batch("26-007", "Milk ice", MILK, 6),
  [],
  ["Batch", "Freezing point (°C)", "Use", "Out of the freezer (°C)"],
  ["26-001", -2.93, target, -5.1],
  ["26-007", point, "scooped at −13", -5.4],
  ...more,
];

describe("Answers and aims that go by a batch's number", () => {
  test.each<Tried>([
    { what: "all right", sheets: { File: file({}) }, found: [] },
    {
      what: "the freezing point of the other batch",
      sheets: { File: file({ point: -2.93 }) },
      found: ["result-differs File!B13"],
    },
    {
      what: "an aim of the first batch that it misses",
      sheets: { File: file({ target: "scraped granita" }) },
      found: ["misses-its-target File!C12"],
    },
    {
      what: "a table of aims, which is about no batch",
      sheets: {
        File: file({ more: [[], ["Aim", "At (°C)"], ["firm bar at −18", -18]] }),
      },
      found: [],
    },
  ])("$what", expectFound);
});
