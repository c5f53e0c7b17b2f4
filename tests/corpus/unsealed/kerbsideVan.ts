import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { halfDegrees, table } from "../settled/words";

const VOICE: Voice = {
  lead: "Has",
  honey: "Honey! Not for babies under 12 months.",
  alcohol: "Boozy! Adults only, not if pregnant or driving.",
  nuts: "Whole nuts! Choking hazard under 5.",
  egg: "Raw egg yolk! Pasteurised, or heat to 71 °C.",
};

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing point °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Water g", { states: "water", as: "typed", decimals: 0 }],
  ["Sugars g/100 g water", { states: "sugar per 100 g water", as: "formula", format: "0.0" }],
  [
    "% of water frozen at −10 °C",
    { states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  ],
];

/** Where the van stands, what it took and how the freezer did. */
function pitches(kit: Kit, sheet: CorpusSheet, row: number): number {
  const { random, marked } = kit;
  const places = ["Station Rd", "Canal Basin", "School fair", "Lido", "Night market"];
  put(sheet, row, 0, "Pitches in June");
  const rows = places.map((place, index) => [
    ...[`${4 + 5 * index} June`, place, random.whole(60, 190), shown(3.5, "0.00"), undefined],
    shown(halfDegrees(kit, -15, -9), "0.0"),
  ]);
  const heads = ["Date", "Place", "Cups sold", "£ a cup", "Taken £", "Freezer at close °C"];
  const list = table(sheet, { row: row + 1, column: 0 }, heads, rows);
  const cups = columnOf(list.rows, 2);
  const taken = beside(kit, list.heads[4]!, cups, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}`,
  });
  temperatures(kit, list.heads[5]!, columnOf(list.rows, 5));
  put(sheet, list.end, 1, "month");
  sumOf(kit, sheet, { row: list.end, column: 2 }, cups);
  sumOf(kit, sheet, { row: list.end, column: 4 }, taken, "0.00");
  marked.notes.push(put(sheet, list.end + 2, 0, "Gas bottle changed after the Lido."));
  return list.end + 3;
}

/** Mixes in rows, their ingredients over the columns. */
function van(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Van");
  const own = { "whole milk yogurt": "whole milk yoghurt", sugar: "caster sugar" };
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), own));
  const items = itemsOf(mades);
  put(sheet, 0, 0, "Kerbside van, mixes in kg");
  const amountLabel = put(sheet, 2, 0, "Mix (kg)");
  const heads = putRow(sheet, 2, 1, items);
  const right = 1 + items.length;
  put(sheet, 2, right, "Whole mix");
  const labels = putRow(
    sheet,
    2,
    right + 1,
    ANSWERS.map(([words]) => words),
  );
  putRow(sheet, 2, right + 1 + labels.length, ["Served as", "Say at the hatch"]);
  const totals: Spot[] = mades.map((made, index) => {
    const row = 3 + index;
    put(sheet, row, 0, made.title);
    const plan = { items: heads, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    labels.forEach((label, at) => {
      const place = { row, column: label.column };
      resultAt(sheet, recipe, label, place, ANSWERS[at]![1], () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: right + 1 + labels.length });
    tellIn(sheet, recipe, { row, column: right + 2 + labels.length }, VOICE);
    return recipe.total!;
  });
  put(sheet, 6, right - 1, "loaded");
  sumOf(kit, sheet, { row: 6, column: right }, totals, "0.000");
  const end = pitches(kit, sheet, 9);
  note(kit, sheet, end, 0, "Spoons and lids: reorder at two sleeves.");
}

/** A van that sells ices and frozen yoghurt. */
export const kerbsideVans: readonly Layout[] = [
  { name: "kerbside van, mixes in rows and the month's pitches", language: "en", build: van },
];
