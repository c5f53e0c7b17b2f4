import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { about, declare, readings } from "./own";
import { KITA } from "./stimmen";

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "gefriert bei", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser im Topf", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "gefroren bei −16 °C, vom Wasser", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -16, decimals: 0 },
  },
  ...ofAlcohol(made, "Alkohol im Topf", "g"),
];

const forChildren = (made: MadeRecipe): boolean =>
  !isAlcoholic(made) &&
  made.lines.every(({ caution }) => !/^(Honey|Whole nuts)/.test(caution?.en ?? ""));

/** A recipe under the one before; gives it and the next free row. */
function rezept(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  put(sheet, top, 0, made.title);
  const place = { row: top + 1, column: 0 };
  const { heads, rows, names, amounts, end } = listed(sheet, made, place, {
    heads: ["Wir brauchen", "Menge", "Maß", "aus"],
    cells: (name, grams) => [
      name,
      grams,
      "g",
      name === "Wasser" ? "Hahn" : kit.random.pick(["Lager", "Kühlung", "Markt"]),
    ],
  });
  putRow(sheet, end, 0, ["macht zusammen"]);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "g");
  const unitCells = columnOf(rows, 2);
  const lines = { names, amounts, unitCells, total, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  const said = say(sheet, recipe, { row: top + 1, column: 5 }, answers(made));
  nameTarget(sheet, recipe, { row: said, column: 5, label: "so soll es werden" });
  const next = declare(sheet, recipe, { row: Math.max(end, said) + 1, column: 0 }, KITA);
  return { recipe, next: next + 1 };
}

const DAYS = ["Mo", "Di", "Mi", "Do", "Fr"];

/** Which ice on which day, for how many. */
function plan(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  const { random, marked } = kit;
  const heads = putRow(sheet, 2, 0, [
    ...["Tag", "Eis", "Kinder", "Portion (g)", "gebraucht (g)", "ein Topf gibt (g)", "Töpfe"],
    "Truhe um 11 Uhr (°C)",
  ]);
  const rows = DAYS.map((day, index) => {
    const recipe = recipes[index % recipes.length]!;
    const cells = [day, recipe.made.title, random.whole(38, 54), random.pick([50, 60])];
    return putRow(sheet, 3 + index, 0, cells);
  });
  const needed = beside(kit, heads[4]!, columnOf(rows, 2), {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}`,
  });
  DAYS.forEach((_, index) => {
    const total = a1(recipes[index % recipes.length]!.total!);
    put(sheet, 3 + index, 5, shown(`=Rezepte!${total}`, "0"));
  });
  beside(kit, heads[6]!, needed, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 5 })}`,
  });
  put(sheet, 8, 0, "Woche");
  sumOf(kit, sheet, { row: 8, column: 2 }, columnOf(rows, 2));
  sumOf(kit, sheet, { row: 8, column: 4 }, needed, "0");
  const heading: Spot = heads[7]!;
  readings(kit, sheet, heading, [DAYS.length, -20, -16]);
  marked.notes.push(put(sheet, 10, 0, "Freitag kommt die Vorschule zum Rühren."));
}

/** The cook of a nursery: the week, then the recipes. */
function kita(kit: Kit): void {
  const week = addSheet(kit.marked.book, "Woche");
  put(week, 0, 0, "Eiswoche in der Kita");
  const sheet = addSheet(kit.marked.book, "Rezepte");
  let top = 0;
  const recipes = madeOf(kit, 3, forChildren).map((made) => {
    const { recipe, next } = rezept(kit, sheet, about(made, 1500), top);
    top = next;
    return recipe;
  });
  note(kit, sheet, top, 0, "Mengen für den kleinen Topf.");
  plan(kit, week, recipes);
}

export const kitas: readonly Layout[] = [
  { name: "Kita, Eiswoche mit Rezepten für den Topf", language: "de", build: kita },
];
