import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { inGerman } from "./words";

type Answer = readonly [heading: string, plan: ResultPlan];

const ANSWERS: readonly Answer[] = [
  ["Gefrierpkt. °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser g", { states: "water", as: "typed", decimals: 0 }],
  ["Zucker auf 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Wasser gefroren bei −13 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
];

const TOP = 3;

/** A kind of ice in its row: kilograms, answers, what it should be and what it contains. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, items: readonly Spot[]) {
  put(sheet, row, 0, made.title);
  const amountLabel = { sheet: sheet.name, row: TOP - 1, column: 1 };
  const plan = { items, unit: "kg", format: "0.000", amountLabel } as const;
  const recipe = alongRow(kit, sheet, made, row, plan);
  const first = items.length + 2;
  ANSWERS.forEach(([, answer], index) => {
    const column = first + index;
    const label = { sheet: sheet.name, row: TOP, column };
    resultAt(sheet, recipe, label, { row, column }, answer, () => recipe.lines);
  });
  nameTarget(sheet, recipe, { row, column: first + ANSWERS.length });
  tellIn(sheet, recipe, { row, column: first + ANSWERS.length + 1 }, inGerman("enthält"));
  return recipe;
}

/** Who stands behind the counter. */
function roster(kit: Kit, sheet: CorpusSheet, row: number): void {
  const names = ["Rosa", "Emil", "Nuri", "Jule"];
  putRow(sheet, row, 0, ["Dienst", "Fr", "Sa", "So"]);
  ["11–15 Uhr", "15–19 Uhr", "19–22 Uhr"].forEach((shift, index) =>
    putRow(sheet, row + 1 + index, 0, [shift, ...[0, 1, 2].map(() => kit.random.pick(names))]),
  );
}

/** The counter's thermometer, morning and evening. */
function counter(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 5, ["Theke", "früh °C", "spät °C"]);
  const rows = ["links", "Mitte", "rechts"].map((place, index) =>
    putRow(sheet, row + 1 + index, 5, [
      ...[place, -kit.random.whole(13, 16), shown(-kit.random.whole(22, 27) / 2, "0.0")],
    ]),
  );
  for (const at of [1, 2]) temperatures(kit, heads[at]!, columnOf(rows, at));
}

/** Four kinds in rows, ingredients over the columns. */
function weekend(kit: Kit): void {
  const own = { Zucker: "Kristallzucker", Honig: "Blütenhonig" };
  const mades = kit.make(4).map((made) => called(upTo(made, 6000), own));
  const sheet = addSheet(kit.marked.book, "KW 27");
  put(sheet, 0, 0, "Sorten fürs Wochenende");
  put(sheet, TOP - 1, 1, "Einwaage in kg");
  put(sheet, TOP, 0, "Sorte");
  const items = putRow(sheet, TOP, 1, itemsOf(mades));
  const column = items.length + 1;
  putRow(sheet, TOP, column, [
    ...["Summe", ...ANSWERS.map(([heading]) => heading), "Soll", "Schild an der Theke"],
  ]);
  const recipes = mades.map((made, index) => kind(kit, sheet, made, TOP + 1 + index, items));
  const end = TOP + 1 + mades.length;
  put(sheet, end, 0, "alle Sorten");
  for (const { column: at } of items) {
    const parts = mades.map((_, index) => ({
      sheet: sheet.name,
      row: TOP + 1 + index,
      column: at,
    }));
    sumOf(kit, sheet, { row: end, column: at }, parts, "0.000");
  }
  sumOf(
    kit,
    sheet,
    { row: end, column },
    recipes.map(({ total }) => total!),
    "0.000",
  );
  roster(kit, sheet, end + 2);
  counter(kit, sheet, end + 2);
  note(kit, sheet, end + 7, 0, "Waffeln kommen erst Samstag früh, Rosa hat den Schlüssel.");
}

/** An ice cream parlour. */
export const sortenInZeilen: readonly Layout[] = [
  { name: "Eisdiele, Wochenendsorten in Zeilen", language: "de", build: weekend },
];
