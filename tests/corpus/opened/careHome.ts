import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { placesOf } from "../regulars/columns";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { about, down, fill, linesOf, readings, toldBy, type Told, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Contains",
  honey: "HONEY: no babies under 12 months (visitors!).",
  alcohol: "ALCOHOL: not for children or in pregnancy, check medication, no driving.",
  nuts: "WHOLE NUTS: choking risk, visitors' children under 5, soft diets.",
  egg: "RAW YOLK: cook to 71 °C or pasteurised yolk only.",
};

const ROWS: readonly Told[] = [
  ["Begins to freeze, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Water, g", { states: "water", as: "typed", decimals: 0 }],
  ["Dissolved solids, g", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Sugars, % of the whole", { states: "sugar share", as: "typed", decimals: 1 }],
  [
    "Ice at −14 °C, % of the whole",
    { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

const TOP = 5;

interface Frame {
  readonly items: readonly Spot[];
  readonly portion: Spot;
  readonly corner: Spot;
}

/** One pudding down its column; gives the cells with its bowls and its grams for each resident. */
function pudding(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  { items, portion, corner }: Frame,
): Spot {
  put(sheet, TOP - 1, column, made.title);
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) => put(sheet, TOP + item, column, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, column }));
  const end = TOP + items.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const bowls = shown(`=${a1(total)}/${fixed(portion)}`, "0");
  const served = put(sheet, end + 1, column, bowls);
  const names = at.map((item) => items[item]!);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, amountLabel: corner, unit: "g", shared: true },
  });
  const cells = ROWS.map(([, plan], index) => ({
    ...{ label: { sheet: sheet.name, row: end + 3 + index, column: 0 }, plan },
    at: { row: end + 3 + index, column },
  }));
  fill(sheet, recipe, cells, linesOf(items, all).replace(span(items), absolute(span(items))));
  const row = end + 3 + ROWS.length;
  nameTarget(sheet, recipe, { row, column });
  const words = toldBy(made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, row + 1, column, words));
  return served;
}

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** The two freezers, for the inspector. */
function freezers(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freezer log");
  put(sheet, 0, 0, "Read at 7 am and initialled");
  const heads = putRow(sheet, 1, 0, ["Day", "Upright °C", "Chest °C", "Initials"]);
  DAYS.forEach((day, index) => {
    put(sheet, 2 + index, 0, day);
    put(sheet, 2 + index, 3, kit.random.pick(["PT", "MO", "GS"]));
  });
  readings(kit, sheet, heads[1]!, [7, -20, -17]);
  readings(kit, sheet, heads[2]!, [7, -23, -19]);
}

/** A cook of a care home: four puddings beside each other. */
function careHome(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Puddings");
  put(sheet, 0, 0, "Frozen puddings, summer menu");
  const bare = "A bowl is";
  const words = { label: `${bare} (g)`, bare, value: random.pick([80, 90, 100]) };
  const portion = input(kit, sheet, { row: 2, column: 0 }, words);
  const mades = kit.make(4).map((made) => about(made, 2000));
  const corner = put(sheet, TOP - 1, 0, "Weigh out, in grams");
  const items = down(sheet, { row: TOP, column: 0 }, itemsOf(mades));
  const end = TOP + items.length;
  const [, bowls] = down(sheet, { row: end, column: 0 }, ["Altogether", "Bowls from it"]);
  const labels = [...ROWS.map(([label]) => label), "Served like", "Tell residents and visitors"];
  down(sheet, { row: end + 3, column: 0 }, labels);
  const frame = { items, portion, corner };
  const spots = mades.map((made, index) => pudding(kit, sheet, made, 1 + index, frame));
  marked.formulaColumns.push({ spots, heading: bowls!, fixed: [portion] });
  note(
    kit,
    sheet,
    end + 11,
    0,
    "Thickened diets: ask the nurse before serving anything that melts.",
  );
  freezers(kit);
}

export const careHomes: readonly Layout[] = [
  { name: "care home, four puddings across and the freezer log", language: "en", build: careHome },
];
