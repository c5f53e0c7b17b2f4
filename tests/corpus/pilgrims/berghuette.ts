import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, readings, warnAt } from "./words";

const KNOWN: readonly Said[] = [
  {
    ...{ label: "Gefrierpunkt", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  { label: "Wasser drin", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Zucker je 100 g Wasser", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 0 },
  },
  {
    ...{ label: "Eis in der Truhe bei −20 °C, von der ganzen Masse", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -20, decimals: 0 },
  },
];

/** One dessert from its title to its warnings; gives the recipe and the next free row. */
function dessert(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  put(sheet, top, 0, made.title);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Menge", "Einheit", "Was", "Herkunft"],
      cells: (name, grams) => [
        ...[grams, "g", name, kit.random.pick(["Talmarkt", "Keller", "Seilbahn", undefined])],
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "zusammen"]);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", unitCells: columnOf(rows, 1), amountLabel: heads[0]!, total },
  });
  const said = [...KNOWN, ...ofAlcohol(made, { label: "reiner Alkohol drin", inCell: "g" })];
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, said);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Gast bekommt" });
  warnAt(sheet, recipe, { row: end + 1, column: 0 }, "Tafel: enthält");
  return { recipe, next: Math.max(end + 3, next + 3) };
}

const SCHNAPS = [
  ["Zirbenlikör", 32],
  ["Enzian", 38],
  ["Kräuterbitter", 35],
  ["Marillenbrand", 42],
] as const;

/** What is poured over the sorbet, its alcohol looked up and typed. */
function shots(kit: Kit, sheet: CorpusSheet, top: number, { flags }: MarkedRecipe): void {
  put(sheet, top, 0, "Zum Aufgießen");
  putRow(sheet, top + 1, 0, ["Flasche", "% vol", "je Glas (g)", "Alkohol darin (g)"]);
  SCHNAPS.forEach(([name, percent], index) => {
    const poured = kit.random.whole(12, 24);
    const fraction = callFunction("ABVTOMASSFRACTION", percent)[0]![0] as number;
    const alcoholGrams = shown(Number((poured * fraction).toFixed(1)), "0.0");
    const cells = putRow(sheet, top + 2 + index, 0, [name, percent, poured, alcoholGrams]);
    const [, abv, grams, alcohol] = cells as [Spot, Spot, Spot, Spot];
    kit.marked.alcohols.push({ grams, abv, alcohol });
  });
  const words = "Gläser mit Schnaps: Alkohol, nicht für Kinder, Schwangere und vor der Abfahrt.";
  flags.push(put(sheet, top + 6, 0, words));
}

const DAYS = ["Fr", "Sa", "So", "Mo", "Di"];

/** The chest freezer over a long weekend on one aggregate. */
function freezer(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Truhe");
  const heads = putRow(sheet, 0, 0, ["Tag", "früh (°C)", "abends (°C)", "Aggregat lief (h)"]);
  const rows = DAYS.map((day, index) =>
    putRow(sheet, 1 + index, 0, [
      ...[day, shown(-random.whole(34, 42) / 2, "0.0"), shown(-random.whole(30, 38) / 2, "0.0")],
      random.whole(9, 16),
    ]),
  );
  readings(kit, heads[1]!, rows, 1);
  readings(kit, heads[2]!, rows, 2);
}

/** Three desserts under one another, all that is known of them typed beside. */
function hut(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Nachtisch");
  put(sheet, 0, 0, "Hüttenküche, Eis und Sorbet in dieser Saison");
  let row = 2;
  const recipes = kit.make(3).map((given) => {
    const made = called(given, { Zucker: "Kristallzucker", Salz: "Speisesalz" });
    const { recipe, next } = dessert(kit, sheet, made, row);
    row = next;
    return recipe;
  });
  shots(kit, sheet, row, recipes[0]!);
  note(kit, sheet, row + 8, 0, "Sahne und Milch nur, wenn die Seilbahn fährt.");
  freezer(kit);
}

/** A cook in a mountain hut. */
export const berghuetten: readonly Layout[] = [
  { name: "Berghütte, drei Nachspeisen untereinander", language: "de", build: hut },
];
