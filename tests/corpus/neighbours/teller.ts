import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { eurosPerKg } from "../strangers/preise";
import { beside, lines, under } from "../strangers/zeilen";
import { alcoholIn, temperatures } from "../visitors/lines";

const TOP = 7;

interface Priced {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** Grams, price and value of the recipe, and what tonight takes. */
function goods(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tonight: Spot): Priced {
  const heads = putRow(sheet, TOP, 0, [
    ...["Grundrezept (g)", "Zutaten", "heute Abend (g)", "EK (€/kg)", "Wert Grundrezept (€)"],
  ]);
  const cells = lines(sheet, { row: TOP + 1, column: 0 }, made, (name, grams, index) => {
    const price = eurosPerKg(kit.random, made.lines[index]!.de);
    return [grams, name, undefined, shown(price, "0.00")];
  });
  const [amounts, names] = cells as [Spot[], Spot[]];
  const total = under(kit, amounts);
  put(sheet, total.row, 1, "Summe");
  const more = (cell: string) => `=${cell}*${fixed(tonight)}/${fixed(total)}`;
  const plan = { heading: heads[2]!, formula: more, fixed: [tonight, total], format: "0" };
  const alsoAmounts = beside(kit, amounts, plan);
  sumOf(kit, sheet, { row: total.row, column: 2 }, alsoAmounts, "0");
  const formula = (cell: string) => `=${cell}*${cell.replace("A", "D")}/1000`;
  const costs = beside(kit, amounts, { heading: heads[4]!, formula, format: "0.00" });
  const amountLabel = heads[0]!;
  const parts = { names, amounts, alsoAmounts, amountLabel, total };
  return {
    recipe: markRecipe(kit, made, { ...parts, unit: "g" }),
    cost: under(kit, costs, "0.00"),
  };
}

const BESIDE_IT = [
  ["Fruchtspiegel", 20, 30, 6.4],
  ["Beeren, frisch", 25, 45, 12.9],
  ["Minze", 1, 2, 28],
] as const;

/** What the card asks for a plate, and how much of it the goods are; gives the next free row. */
function card({ random, marked }: Kit, sheet: CorpusSheet, all: Spot): number {
  const { row, column } = all;
  const asked = shown(random.pick([8.5, 9.5, 11]), "0.00");
  put(sheet, row + 1, 1, "Preis auf der Karte, netto (€)");
  const price = put(sheet, row + 1, column, asked);
  put(sheet, row + 2, 1, "Wareneinsatz vom Preis");
  put(sheet, row + 2, column, shown(`=${a1(all)}/${a1(price)}`, "0.0%"));
  marked.notes.push(put(sheet, row + 4, 0, "Teller zehn Minuten vorher ins Kalte stellen."));
  return row + 5;
}

/** What lies on one plate, and what it costs; gives the next free row. */
function plate(kit: Kit, sheet: CorpusSheet, row: number, priced: Priced, scoop: Spot): number {
  const { random } = kit;
  const heads = putRow(sheet, row, 0, [
    ...["je Teller (g)", "Auf dem Teller", "€ je kg", "€ je Teller"],
  ]);
  const { recipe, cost } = priced;
  const perKg = shown(`=${a1(cost)}/${a1(recipe.total!)}*1000`, "0.00");
  const own = putRow(sheet, row + 1, 0, [`=${a1(scoop)}`, "Nocke aus dem Grundrezept", perKg]);
  const others = BESIDE_IT.map(([name, from, to, price], index) =>
    putRow(sheet, row + 2 + index, 0, [random.whole(from, to), name, shown(price, "0.00")]),
  );
  const grams = columnOf([own, ...others], 0);
  const formula = (cell: string) => `=${cell}/1000*${cell.replace("A", "C")}`;
  const spots = beside(kit, grams, { heading: heads[3]!, formula, format: "0.00" });
  const all = under(kit, spots, "0.00");
  put(sheet, all.row, 1, "Wareneinsatz Teller");
  return card(kit, sheet, all);
}

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "tiefer als bei Wasser um",
    inCell: "K",
    states: "depression",
    as: "typed",
    decimals: 1,
  },
  ...alcoholIn(made, {
    ...{ label: "Alkohol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  }),
  { label: "Wasser", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Zucker auf 100 g Wasser", inCell: "g", states: "sugar per 100 g water" },
    ...{ as: "formula", format: "0.0" },
  },
  {
    ...{ label: "Wasser zu Eis geworden bei −14 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** The freezers of the dessert station, read at the start of each shift. */
function freezers(kit: Kit, sheet: CorpusSheet, top: number): void {
  const heads = putRow(sheet, top, 6, ["Schicht", "Posten (°C)", "Kühlhaus (°C)"]);
  ["Mi", "Do", "Fr", "Sa", "So"].forEach((day, index) => put(sheet, top + 1 + index, 6, day));
  temperatures(kit, sheet, { heading: heads[1]!, count: 5 }, [-15, -12]);
  temperatures(kit, sheet, { heading: heads[2]!, count: 5 }, [-21, -18]);
}

/** The recipe of the evening's plate, and the plate. */
export function plates(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Dessertteller");
  const made = called(kit.make(1)[0]!, { Zucker: "Feinzucker", Süßkirschen: "Kirschen" });
  put(sheet, 0, 0, `Dessertteller mit ${made.title}`);
  const [, , guests] = putRow(sheet, 2, 0, ["Teller heute", undefined, random.whole(18, 45)]);
  const words = { label: "Eine Nocke (g)", bare: "Eine Nocke", value: random.pick([40, 45, 55]) };
  const scoop = input(kit, sheet, { row: 3, column: 1 }, words);
  const need = shown(`=${a1(guests!)}*${a1(scoop)}`, "0");
  const [, , tonight] = putRow(sheet, 4, 0, ["dafür Masse (g)", undefined, need]);
  const priced = goods(kit, sheet, made, tonight!);
  const { recipe } = priced;
  const next = say(sheet, recipe, { row: 1, column: 6 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Biss" });
  freezers(kit, sheet, next + 2);
  const row = tell(kit, sheet, recipe, { row: recipe.total!.row + 2, column: 0, as: "sentence" });
  const free = plate(kit, sheet, row + 1, priced, scoop);
  note(kit, sheet, free, 0, "Nocken vor dem Service abstechen.");
}
