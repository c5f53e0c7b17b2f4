import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { again, hundred } from "../layouts/marking";
import { changed, plainOf } from "../lodgers/swaps";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { degrees, inColumn, inEnglish, readings, sayDown, smallTable } from "./words";

const VOICE = inEnglish("Declares");

const FACTS = (temperature: Spot): readonly Fact[] => [
  ["Freezing pt, °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Freezing pt depression, K", { states: "depression", as: "typed" }],
  ["Sugars, g to 100 g of water", { states: "sugar per 100 g water", as: "formula" }],
  [
    "Frozen, % of the water, at storage temp.",
    { states: "ice of water", as: "formula", format: "0.0", temperature, temperatureC: -18 },
  ],
  [
    "Frozen, % of the water, at −14 °C",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 1 },
  ],
];

/** The first formula and what became of it. */
function runs(kit: Kit): readonly MadeRecipe[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const list = [made, again(kit, plain), changed(plain, 0.85), changed(plain, 0.75, "fructose")];
  return list.map((each) => called(hundred(each), { sugar: "caster sugar", salt: "fine salt" }));
}

/** One run down its column, under its number and date. */
function run(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number, items: readonly Spot[]) {
  const column = 1 + at;
  putRow(sheet, 4, column, [`R${at + 1}`]);
  put(sheet, 5, column, ["9 Jan", "16 Jan", "30 Jan", "6 Feb"][at]);
  put(sheet, 6, column, ["as supplied", "re-weighed", "sugar down", "part fructose"][at]);
  const amountLabel = { sheet: sheet.name, row: 7, column: 0 };
  const sumRow = items.at(-1)!.row + 1;
  const plan = { items, column, sumRow, unit: "%", format: "0.0", amountLabel } as const;
  return inColumn(kit, sheet, made, plan);
}

/** What the freezer was at, each Monday. */
function freezer(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 3, 7, "Chest freezer, thermometer in the lid");
  const days = ["5 Jan", "12 Jan", "19 Jan", "26 Jan", "2 Feb"];
  const table = smallTable(
    sheet,
    { row: 4, column: 7 },
    ["Monday", "Reading, °C"],
    days.map((day) => [day, degrees(kit, -21, -16)]),
  );
  readings(
    kit,
    table.heads[1]!,
    table.rows.map((cells) => cells[1]!),
  );
}

/** One ice in four runs, for a customer who sells from kiosks. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Runs");
  const mades = runs(kit);
  put(sheet, 0, 0, `Project K: ${mades[0]!.title.toLowerCase()} for kiosk freezers`);
  const [label, storage] = putRow(sheet, 1, 0, ["Storage temp., °C", -18]);
  kit.marked.inputs.push({ label: label!, value: storage!, bare: "Storage temp." });
  down(sheet, [4, 0], ["Run", "Date", "Change", "% of finished mix"]);
  const items = down(sheet, [8, 0], itemsOf(mades));
  const end = items.at(-1)!.row + 1;
  put(sheet, end, 0, "Total");
  down(sheet, [end + 8, 0], ["Panel, mean of six (1 to 9)", "Brief asks for", "On the label"]);
  mades.forEach((made, at) => {
    const grid = run(kit, sheet, made, at, items);
    const { column } = grid.all[0]!;
    sayDown(sheet, grid, FACTS(storage!), { row: end + 2, column, labels: 0 });
    put(sheet, end + 8, column, kit.random.whole(45, 80) / 10);
    nameTarget(sheet, grid.recipe, { row: end + 9, column });
    tellIn(sheet, grid.recipe, { row: end + 10, column }, VOICE);
  });
  freezer(kit, sheet);
  note(kit, sheet, end + 12, 0, "Customer's own freezers are opened all day; ask for their log.");
}

/** A developer who works for others. */
export const kioskTrials: readonly Layout[] = [
  { name: "freelance developer, one ice in four runs side by side", language: "en", build },
];
