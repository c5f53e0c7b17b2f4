import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { freezesAt, say, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { temperatures, upTo } from "../strollers/words";
import { lineup, little, PLAIN } from "./words";

const PAIRS = [
  ["Moira / Tam", 20, 30],
  ["Sunil / Kay", 45, 60],
  ["Pat (with me)", 70, 90],
  ["Lowri / Gus", 100, 125],
] as const;

/** What each pair stirred and what the probe said; strengths typed off their calculators. */
function syrups(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random, marked } = kit;
  put(sheet, row, 1, "AFTERNOON: sucrose syrups, both ways of saying how strong");
  const cells = PAIRS.map(([pair, from, to]) => {
    const water = random.pick([200, 250, 400]);
    const sugar = Math.round((random.whole(from, to) * water) / 100);
    const share = shown(Number(((100 * sugar) / (sugar + water)).toFixed(1)), "0.0");
    const perWater = shown(Number(((100 * sugar) / water).toFixed(1)), "0.0");
    const point = shown(freezesAt(["sucrose", "water"], [sugar, water]), "0.0");
    return [share, point, pair, sugar, water, perWater];
  });
  const { heads, rows } = little(
    sheet,
    { row: row + 1, column: 0 },
    [
      ...["% sucrose in the syrup", "freezes at, °C", "pair", "sucrose g", "water g"],
      "g sucrose per 100 g water",
    ],
    cells,
  );
  for (const [share, , , sugar, water, perWater] of rows) {
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: share! });
  }
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  const together = put(sheet, heads[0]!.row, 6, "in the jug, g");
  beside(kit, together, columnOf(rows, 3), {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}+${a1({ ...spot, column: 4 })}`,
  });
}

const SAID: readonly Said[] = [
  { label: "fp of this mix (°C)", states: "freezing point", as: "formula", format: "0.00" },
  { label: "depressed by (K)", states: "depression", as: "typed", decimals: 2 },
  { label: "sugars, g to 100 g water", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  { label: "sugars, % of mix", states: "sugar share", as: "typed", decimals: 1 },
  { label: "water from everything (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "% of mix that's ice at −15 °C", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
];

/** A trainer's day: the mix at the top right, the timetable at the left, the syrups under both. */
function syrupBench(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "day 2");
  const timetable = [
    ["9.15", "coffee, hairnets"],
    ["9.45", "weigh the mix"],
    ["11.00", "churn, clean down"],
    ["1.30", "syrups in pairs"],
    ["3.45", "taste + forms"],
  ];
  little(sheet, { row: 0, column: 0 }, ["time", "doing"], timetable);
  const made = called(upTo(kit.make(1)[0]!, 2500), { sugar: "caster sugar" });
  put(sheet, 0, 4, `MORNING: ${made.title}`);
  const { recipe, end } = lineup(kit, sheet, made, {
    ...{ row: 1, column: 4, heads: ["who weighs", "g", "item"], name: 2, amount: 1 },
    cells: (name, amount, index) => [PAIRS[index % PAIRS.length]![0], amount, name],
    ...{ unit: "g", format: "0", total: { label: "<< into the churn" } },
  });
  const next = say(sheet, recipe, { row: 2, column: 8 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 8, label: "what we're after" });
  tellIn(sheet, recipe, { row: next + 1, column: 8 }, PLAIN);
  note(kit, sheet, end + 2, 1, "probe number 3 needs a new battery before Thursday");
  syrups(kit, sheet, end + 4);
  putRow(sheet, end + 11, 2, ["batches so far this course", 7]);
}

/** Sheets of a trainer. */
export const syrupBenches: readonly Layout[] = [
  { name: "trainer's day two, a mix and syrups in pairs", language: "en", build: syrupBench },
];
