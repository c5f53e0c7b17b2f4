import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

type Cell = Rows[number][number];

const example = (
  rule: string,
  what: string,
  rows: RuleCase["rows"],
  cells: readonly string[] = [],
): RuleCase => ({ rule, what, rows, cells });

/** Parts of one with what is said of a freezer beside them. */
const tub = (label: string, value: Cell): Rows => [
  ["Part of 1", "Stuff", null, "My freezer, °C", -18],
  [0.6, "full fat milk", null, label, value],
  [0.2, "cream 35 % fat"],
  [0.2, "caster sugar"],
  [1, "Σ"],
];

const inPercent = (value: number): Cell => ({ value, format: "0.0%" });

/** A list in kilograms, and its sugar in a unit of its own. */
const poster = (sugar: number, unit: string): Rows => [
  ["Rohstoff", "Einwaage"],
  ["Wasser", 7, "kg"],
  ["Zucker", 3, "kg"],
  [],
  ["Zucker in der Masse", sugar, unit],
];

/** Two substances side by side with their units behind the second, and the water below the first. */
const worksheet = (unit: string | null): Rows => [
  ["Größe", "Zeichen", "Stoff A", "Stoff B", "Einheit"],
  ["Name", null, "Natriumchlorid", "Fruktose"],
  ["abgewogen", "m", 5, 24, "g"],
  ["molare Masse", "M", 58.44, 180.16, "g/mol"],
  ["Teilchen", "i", 2, 1],
  [],
  ["Wasser im Topf", "m(W)", 600, null, unit],
  ["Kryoskopische Konstante von Wasser", "Kf", 1.86, null, "K·kg/mol"],
];

/** A group's card: two labels with their values in each row, of one salt in water. */
const card = (asked: string, particles: number, weighed = "of it in g"): Rows => [
  ["for all: Kf of water", 1.86, "K·kg/mol"],
  [],
  [asked, "sodium chloride", weighed, 8],
  ["M in g/mol", 58.44, "water in g", 800],
  ["particles", particles, "n in mol", formula("D3/B4", 0.136893)],
  ["ΔT in K", formula("B5*B1*D5/D4*1000", 0.318275 * particles)],
];

/** Tubes on one sheet, worked out on another; headings are the letters of chemists. */
const tubes = (
  particles: number,
  solute: string,
  water: string,
  third = "fructose",
): Record<string, Rows> => ({
  Readings: [
    ["Tube", "Dissolved", solute, water, "run 1 / °C"],
    ["P", "sucrose", 15, 150, -0.5],
    ["Q", "potassium chloride", 3, 400, -0.3],
    ["R", third, 5, 150, -0.3],
  ],
  Working: [
    ["Kf(H2O) / K kg mol⁻¹", null, 1.86],
    [],
    ["Tube", "Dissolved", "M / g mol⁻¹", "ν", "n / mol", "b / mol kg⁻¹", "ΔTf / K"],
    ...[
      ["P", "sucrose", 342.3, 1, 15, 150] as const,
      ["Q", "potassium chloride", 74.55, particles, 3, 400] as const,
      ["R", third, 180.16, 1, 5, 150] as const,
    ].map(([tube, name, molar, count, grams, poured], at) => [
      ...[tube, name, molar, count],
      formula(`Readings!C${at + 2}/C${at + 4}`, grams / molar),
      formula(`E${at + 4}*1000/Readings!D${at + 2}`, (grams / molar / poured) * 1000),
      formula(`$C$1*F${at + 4}*D${at + 4}`, (1.86 * count * grams * 1000) / molar / poured),
    ]),
  ],
});

/** A poster's aim in one column, its answers, all worked out of the list, in the next. */
const aims = (water: number, own: Cell = null): Record<string, Rows> => ({
  Ansatz: [
    ["Rohstoff", "Einwaage"],
    ["Wasser", water, "kg"],
    ["Zucker", 3, "kg"],
  ],
  Aushang: [
    ["Gefrierpunkt", null, formula("RIME.FREEZINGPOINT(Ansatz!A2:A3,Ansatz!B2:B3)", -2.7), "°C"],
    ["Erniedrigung", own, 2.7, "K"],
    ["Konsistenz", "Kugeln bei −13"],
  ],
});

/** Sheets that are put up or kept by a freezer: units and shares in places and words of their own. */
export const posterCases: readonly RuleCase[] = [
  example(
    "temperature-units-mixed",
    "a share shown in per cent beside a freezer",
    tub("Frozen / all water, in my freezer", inPercent(0.803)),
  ),
  example("temperature-units-mixed", "a freezer warmer than any", tub("Chest freezer", 0.8), [
    "E2",
  ]),
  example(
    "input-without-unit",
    "a share shown in per cent beside a freezer",
    tub("Fill of my freezer", inPercent(0.4)),
  ),
  example(
    "result-differs",
    "frozen over all water, far from the recipe",
    tub("Frozen / all water", inPercent(0.2)),
    ["E2"],
  ),
  example("result-differs", "ice over water of a bath", tub("Ice / water in the bath", 0.2)),
  example("result-differs", "sugar in per cent of the mass", poster(30, "Massen-%")),
  example("result-differs", "sugar in per cent, cut short", poster(30, "Ma.-%")),
  example("result-differs", "too little sugar in per cent", poster(20, "Massen-%"), ["B5"]),
  example("result-differs", "too little sugar in kilograms", poster(2, "kg"), ["B5"]),
  example("input-without-unit", "water with its unit beyond a gap", worksheet("g")),
  example("input-without-unit", "water without a unit", worksheet(null), ["C7"]),
  ...["our substance", "euer Stoff", "in the beaker"].flatMap((asked) => [
    example("constant-of-a-solute", `a card of pairs side by side: ${asked}`, card(asked, 3), [
      "B5",
    ]),
    example("constant-of-a-solute", `a right card of pairs: ${asked}`, card(asked, 2)),
  ]),
  ...[["m(solute) / g", "m(water) / g"] as const, ["m_S in g", "m_W in g"] as const].flatMap(
    ([solute, water]) => [
      example("constant-of-a-solute", `tubes on two sheets: ${solute}`, tubes(3, solute, water), [
        "D5",
      ]),
      example(
        "constant-of-a-solute",
        `right tubes on two sheets: ${solute}`,
        tubes(2, solute, water),
      ),
      example("result-differs", `right tubes with answers: ${solute}`, tubes(2, solute, water)),
    ],
  ),
  ...["pistachios", "fructose"].map((third) =>
    example(
      "inclusion-as-solute",
      `the working of a tube names ${third}`,
      tubes(2, "m(solute) / g", "m(water) / g", third),
      third === "pistachios" ? ["E6"] : [],
    ),
  ),
  example("misses-its-target", "an aim beside the column of answers", aims(27), ["B3"]),
  example("misses-its-target", "an aim that is met", aims(7)),
  example("misses-its-target", "an aim below an answer of its own", aims(27, 3.1)),
  example("input-without-unit", "a card that names the unit of what it weighs", card("salt", 2)),
];
