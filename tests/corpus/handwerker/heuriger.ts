import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { down } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { itemsOf, upTo } from "../strollers/words";
import { AUSTRIAN, VOICE_OF_A_SHOP, readings, table } from "./words";

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Absenkung gegen Wasser in K", { states: "depression", as: "formula", format: "0.00" }],
  ["Wasser in der Wanne in g", { states: "water", as: "typed", decimals: 0 }],
  [
    "Eis in der Masse bei −12 °C in %",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
  ["Zucker auf 100 g Wasser in g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const TOP = 3;

/** The tubs beside each other, what is said of each under its sum. */
function tubs(kit: Kit, sheet: CorpusSheet): readonly MarkedRecipe[] {
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), AUSTRIAN));
  put(sheet, 0, 0, "Für eine Wanne");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const amountLabel = put(sheet, TOP - 1, 0, "Einwaage in g");
  const end = TOP + items.length;
  putRow(sheet, end, 0, ["Wanne voll"]);
  put(sheet, end + 8, 0, "Konsistenz");
  return mades.map((made, index) => {
    const column = 1 + index;
    put(sheet, TOP - 1, column, made.title);
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 8, column });
    return recipe;
  });
}

/** The card for the guests: what it costs and what is in it. */
function guestCard(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Süßes nach der Jause");
  putRow(sheet, 2, 0, ["Eis", "Kugel €", "Zwei Kugeln €", "Hinweis"]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    const scoop = kit.random.whole(19, 26) / 10;
    const both = shown(Number((2 * scoop - 0.3).toFixed(2)), "0.00");
    putRow(sheet, row, 0, [recipe.made.title, shown(scoop, "0.00"), both]);
    tellIn(sheet, recipe, { row, column: 3 }, VOICE_OF_A_SHOP);
  });
  note(kit, sheet, 7, 0, "Ausgesteckt ist bis Sonntag; Waffel dazu 0,40 €.");
  const rows = ["Fr", "Sa", "So"].map((day) => [day, "15–22 Uhr"]);
  const [heads] = table(sheet, { row: 9, column: 0 }, ["Tag", "Offen", "Truhe 15 Uhr (°C)"], rows);
  readings(kit, sheet, heads![2]!, rows.length, [-20, -16]);
}

/** The guests' card in front, the kitchen's figures behind. */
function heuriger(kit: Kit): void {
  const front = addSheet(kit.marked.book, "Eiskarte");
  guestCard(kit, front, tubs(kit, addSheet(kit.marked.book, "Wannen")));
}

/** A vintner's tavern. */
export const heurige: readonly Layout[] = [
  { name: "Heuriger, Eiskarte vorn und Wannen dahinter", language: "de", build: heuriger },
];
