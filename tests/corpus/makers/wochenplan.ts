import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { down } from "../lodgers/words";
import { itemsOf } from "../strollers/words";
import { UNSERE } from "./words";

const TOP = 6;

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gelöstes in g", { states: "dissolved", as: "formula", format: "0" }],
  ["Zucker in g auf 100 g Wasser", { states: "sugar per 100 g water", as: "typed", decimals: 0 }],
  [
    "vom Wasser gefroren bei −18 °C in %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** What the week needs of each item, what is there, and what is to be ordered. */
function needs(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  items: readonly Spot[],
  plan: readonly Spot[],
): void {
  const left = plan.at(-1)!.column + 2;
  const heads = putRow(sheet, TOP - 2, left, ["Bedarf", "Bestand", "fehlt"]);
  putRow(sheet, TOP - 1, left, ["kg", "kg", "kg"]);
  const used = items.map(({ row }) => {
    const own = plan.map(({ column }) => ({ sheet: sheet.name, row, column }));
    const formula = `=SUMPRODUCT(${span(own)},${absolute(span(plan))})/1000`;
    return put(sheet, row, left, shown(formula, "0.00"));
  });
  const short = used.map((spot) => {
    const stock = put(sheet, spot.row, left + 1, shown(random.whole(0, 40) / 2, "0.0"));
    return put(sheet, spot.row, left + 2, shown(`=MAX(0,${a1(spot)}-${a1(stock)})`, "0.00"));
  });
  marked.formulaColumns.push({ spots: used, heading: heads[0]!, fixed: [] });
  marked.formulaColumns.push({ spots: short, heading: heads[2]!, fixed: [] });
}

/** Recipes in columns for a kilogram, the week's plan over them, the store beside them. */
function wochenplan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Woche");
  const own = { Salz: "Tafelsalz", "Naturjoghurt 3,5 %": "Vollmilchjoghurt", Banane: "Bananen" };
  const mades = kit.make(4).map((made) => called(perKilogram(made), own));
  put(sheet, 0, 0, "Wochenplan Eisküche");
  put(sheet, 2, 0, "geplant, kg Mischung");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const end = TOP + items.length;
  put(sheet, TOP - 2, 0, "Rohstoff");
  put(sheet, end, 0, "ein Kilo");
  const plan = mades.map((made, index) => {
    const column = 1 + index;
    put(sheet, TOP - 2, column, made.title);
    const amountLabel = put(sheet, TOP - 1, column, "g je kg");
    const columns = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, columns);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 6, column });
    tellIn(sheet, recipe, { row: end + 7, column }, UNSERE);
    return put(sheet, 2, column, kit.random.whole(6, 24));
  });
  putRow(sheet, end + 6, 0, ["Vorgabe"]);
  putRow(sheet, end + 7, 0, ["Schild"]);
  needs(kit, sheet, items, plan);
  note(kit, sheet, end + 9, 0, "Bestellt wird donnerstags bis zehn Uhr.");
}

/** Somebody who plans a week. */
export const wochenplaene: readonly Layout[] = [
  { name: "Wochenplan, Rezepte in Spalten und Bedarf daneben", language: "de", build: wochenplan },
];
