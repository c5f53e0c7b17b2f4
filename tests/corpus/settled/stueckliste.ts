import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures } from "../strollers/words";
import { stimme } from "./stimme";
import { halfDegrees, pricesOf, table } from "./words";

const OWN = {
  ...{ Zucker: "Feinzucker", Wasser: "Trinkwasser", Honig: "Bienenhonig", Salz: "Speisesalz" },
  ...{ "Spirituose 40 % vol": "Obstbrand 40 % vol", Kokosmilch: "Kokosmilch Dose" },
};

const HEADS = ["Gericht", "Pos.", "Artikel", "Menge", "ME", "€/kg", "Wareneinsatz (€)", "gewogen"];

interface Posten {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly costs: readonly Spot[];
  readonly end: number;
}

/** The lines of one dish, its sum under them. */
function gericht(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): Posten {
  const prices = pricesOf(kit, made);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + index, 0, [
      ...[made.title, 10 * (index + 1), name, made.grams[index], "g"],
      ...[shown(prices[index]!, "0.00"), undefined, kit.random.pick(["Hu", "We", undefined])],
    ]),
  );
  const at = (column: number): Spot[] => rows.map((cells) => cells[column]!);
  const [names, amounts, unitCells] = [at(2), at(3), at(4)];
  const costs = amounts.map((spot) => {
    const formula = `=${a1(spot)}*${a1({ ...spot, column: 5 })}/1000`;
    return put(sheet, spot.row, 6, shown(formula, "0.00"));
  });
  const end = row + rows.length;
  put(sheet, end, 2, `Summe ${made.title}`);
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  put(sheet, end, 4, "g");
  const cost = sumOf(kit, sheet, { row: end, column: 6 }, costs, "0.00");
  const amountLabel = { sheet: sheet.name, row: 2, column: 3 };
  const cells = { names, amounts, unitCells, total, amountLabel, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, cells), cost, costs, end: end + 1 };
}

const KENNZAHLEN: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Erniedrigung [K]", { states: "depression", as: "typed", decimals: 2 }],
  ["Wasser [g]", { states: "water", as: "formula", format: "0" }],
  [
    "Wasser gefroren bei −16 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  ],
];

/** The dishes' answers, a line each. */
function kennzahlen(kit: Kit, posten: readonly Posten[]): void {
  const sheet = addSheet(kit.marked.book, "Kennzahlen");
  put(sheet, 0, 0, "Gefrorenes auf der Karte, Kennzahlen");
  const labels = KENNZAHLEN.map(([words]) => words);
  const money = ["Wareneinsatz (€)", "Portionen", "€ je Portion"];
  const heads = ["Gericht", ...money, ...labels, "Zielvorgabe", "Speisekarte"];
  const headings = putRow(sheet, 2, 0, heads);
  const perPortion = posten.map(({ recipe, cost }, index) => {
    const row = 3 + index;
    const paid = shown(`=Stückliste!${a1(cost)}`, "0.00");
    const cells = putRow(sheet, row, 0, [recipe.made.title, paid, kit.random.whole(8, 20)]);
    const formula = `=${a1(cells[1]!)}/${a1(cells[2]!)}`;
    const lines = `Stückliste!${span(recipe.names)},Stückliste!${span(recipe.amounts)}`;
    KENNZAHLEN.forEach(([, plan], at) => {
      const place = { row, column: 4 + at };
      resultAt(sheet, recipe, headings[4 + at]!, place, plan, () => lines);
    });
    nameTarget(sheet, recipe, { row, column: 8 });
    tellIn(sheet, recipe, { row, column: 9 }, stimme("Allergene:"));
    return put(sheet, row, 3, shown(formula, "0.00"));
  });
  kit.marked.formulaColumns.push({ spots: perPortion, heading: headings[3]!, fixed: [] });
  note(kit, sheet, 4 + posten.length, 0, "Portionen nach dem Löffel Nr. 20.");
}

/** How cold the cold rooms were. */
function kontrolle(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kontrollgang");
  const tage = ["01.08.", "02.08.", "03.08.", "04.08.", "05.08."];
  const rows = tage.map((tag) => [
    ...[tag, kit.random.pick(["6:40", "6:45", "7:05"]), shown(halfDegrees(kit, 2, 6), "0.0")],
    ...[shown(halfDegrees(kit, -21, -17), "0.0"), kit.random.pick(["Hu", "We"])],
  ]);
  const heads = ["Datum", "Uhrzeit", "KH 1 in °C", "TK in °C", "Kürzel"];
  const list = table(sheet, { row: 0, column: 0 }, heads, rows);
  [2, 3].forEach((at) =>
    temperatures(
      kit,
      list.heads[at]!,
      list.rows.map((cells) => cells[at]!),
    ),
  );
}

/** All dishes in one list, each line with the name of its dish. */
function stueckliste(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Stückliste");
  put(sheet, 0, 0, "Landgasthof, Stückliste Gefrorenes");
  const heads = putRow(sheet, 2, 0, HEADS);
  let row = 3;
  const posten = kit.make(3).map((made) => {
    const one = gericht(kit, sheet, called(made, OWN), row);
    row = one.end + 1;
    kit.marked.formulaColumns.push({ spots: one.costs, heading: heads[6]!, fixed: [] });
    return one;
  });
  kennzahlen(kit, posten);
  kontrolle(kit);
}

/** A country inn that writes everything into one list. */
export const stuecklisten: readonly Layout[] = [
  { name: "Landgasthof, Stückliste mit Kennzahlen", language: "de", build: stueckliste },
];
