import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { degrees, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Got these in it:",
  honey: "Honey in this one - no babies under 12 months.",
  alcohol: "Boozy: contains alcohol, over-18s only, not if pregnant, not if driving.",
  nuts: "Whole nuts - choking risk, not for kids under 5.",
  egg: "Raw yolk - take it to 71 °C or use the pasteurised carton.",
};

const SAID: readonly Said[] = [
  { label: "freezing pt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "water, all in", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "frozen water @ −13 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
  {
    ...{ label: "sugars per 100 g water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

/** One drawer's mix, its lines under a name painted on the hatch. */
function hatch(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [column, drawer]: readonly [number, string],
): MarkedRecipe {
  putRow(sheet, 3, column, [drawer, made.title]);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column },
    { heads: ["what", "grams", "% of mix"], cells: (name, grams) => [name, grams] },
  );
  const total = sumOf(kit, sheet, { row: 12, column: column + 1 }, amounts);
  put(sheet, 12, column, "tub");
  const shares = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=100*${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: 12, column: column + 2 }, shares, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: 14, column }, SAID);
  nameTarget(sheet, recipe, { row: next, column, label: "aim" });
  tellIn(sheet, recipe, { row: 20, column }, VOICE);
  return recipe;
}

/** Where the truck stands and what it takes. */
function pitches(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const rows: readonly (readonly string[])[] = [
    ["Thu", "brewery yard", "17-22"],
    ["Fri", "station steps", "11-19"],
    ["Sat", "flea market", "9-16"],
    ["Sun", "lido", "12-18"],
  ];
  const { heads, rows: days } = table(
    sheet,
    { row: 23, column: 0 },
    ["day", "pitch", "open", "single £", "double £", "singles", "doubles", "takings £"],
    rows.map((cells) => [
      ...cells,
      ...[shown(2.8, "0.00"), shown(4.5, "0.00"), random.whole(30, 90), random.whole(15, 60)],
    ]),
  );
  const taken = days.map(([, , , single, double, ones, twos]) =>
    put(
      sheet,
      single!.row,
      7,
      shown(`=${a1(single!)}*${a1(ones!)}+${a1(double!)}*${a1(twos!)}`, "0.00"),
    ),
  );
  kit.marked.formulaColumns.push({ spots: taken, heading: heads[7]!, fixed: [] });
  put(sheet, 28, 0, "week");
  const column = (at: number): Spot[] => days.map((cells) => cells[at]!);
  [5, 6].forEach((at) => sumOf(kit, sheet, { row: 28, column: at }, column(at)));
  sumOf(kit, sheet, { row: 28, column: 7 }, taken, "0.00");
}

/** Two drawers of a truck side by side, the week below. */
function truck(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "truck");
  const words = { sugar: "caster sugar", mango: "mango pulp", "lemon juice": "fresh lemon juice" };
  const [left, right] = kit.make(2).map((made) => stillMet(called(made, words)));
  put(sheet, 0, 0, "THE TRUCK - what's in the drawers");
  note(kit, sheet, 1, 0, "gas bottle swapped Tuesday, spare under the bench");
  hatch(kit, sheet, left!, [0, "drawer L"]);
  hatch(kit, sheet, right!, [5, "drawer R"]);
  pitches(kit, sheet);
  const rows = ["start", "lunch", "close"].map((when) => [
    ...[when, degrees(kit, -16, -12), degrees(kit, -16, -12), degrees(kit, 22, 33)],
  ]);
  const heads = ["Sat", "drawer L °C", "drawer R °C", "in the truck °C"];
  readings(kit, sheet, { row: 31, column: 0 }, { heads, rows, temperatures: [1, 2, 3] });
}

/** Sheets of a food truck. */
export const foodTrucks: readonly Layout[] = [
  { name: "food truck, two drawers and the week's pitches", language: "en", build: truck },
];
