import { a1, addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { perHundred, type MadeRecipe } from "../recipes";
import { euros, type PriceOf } from "./prices";

const HEADS = ["Pos.", "Anteil in %", "Rohstoff", "Einwaage in kg", "EUR/kg", "EUR"];

const VALUES: readonly Said[] = [
  {
    ...{ label: "Gefrierbeginn", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Wassergehalt", inCell: "g je 100 g" },
    ...{ states: "water", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "gelöste Trockenmasse", inCell: "g je 100 g" },
    ...{ states: "dissolved", as: "typed", decimals: 1 },
  },
  { label: "Zuckergehalt", inCell: "Massen-%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Eis bei −18 °C, bezogen auf das Wasser", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
];

/** Lines of one product; gives their cells. */
function positions(sheet: CorpusSheet, made: MadeRecipe, top: number, batch: Spot, price: PriceOf) {
  const heads = putRow(sheet, top, 0, HEADS);
  const rows = made.names.map((name, index) => {
    const row = top + 1 + index;
    const share = put(sheet, row, 1, made.grams[index]);
    putRow(sheet, row, 0, [index + 1]);
    const item = put(sheet, row, 2, name);
    const weighed = put(sheet, row, 3, `=ROUND(${a1(share)}*${a1(batch)}/100,3)`);
    const perKg = put(sheet, row, 4, price(made, index));
    return [share, item, weighed, put(sheet, row, 5, `=ROUND(${a1(weighed)}*${a1(perKg)},2)`)];
  });
  return { heads, rows };
}

/** One product of the list; gives the row after it. */
function product(kit: Kit, given: MadeRecipe, top: number, price: PriceOf): number {
  const sheet = kit.marked.book.sheets[0]!;
  const made = called(stillMet(perHundred(given)), { Wasser: "Leitungswasser" });
  putRow(sheet, top, 0, ["Produkt", made.title]);
  const [, batch] = putRow(sheet, top + 1, 0, ["Charge in kg", kit.random.pick([6, 8, 12, 15])]);
  const { heads, rows } = positions(sheet, made, top + 2, batch!, price);
  const [amounts, names, alsoAmounts, costs] = [0, 1, 2, 3].map((at) => columnOf(rows, at)) as [
    ...[Spot[], Spot[], Spot[], Spot[]],
  ];
  const row = top + 3 + rows.length;
  put(sheet, row, 2, "Summe");
  const sum = (column: number, parts: readonly Spot[], decimals: number): Spot =>
    put(sheet, row, column, `=ROUND(SUM(${span(parts)}),${decimals})`);
  const total = sum(1, amounts, 1);
  sum(3, alsoAmounts, 3);
  sum(5, costs, 2);
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  const next = say(sheet, recipe, { row: row + 1, column: 2 }, VALUES);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "Zielvorgabe" });
  return tell(kit, sheet, recipe, { row: next + 1, column: 2, as: "pair" }) + 1;
}

/** Two products with decimal commas, written by the program of a dairy. */
function datasheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepturblatt");
  putRow(sheet, 0, 0, ["Hofmolkerei", "Rezepturblatt Speiseeis"]);
  const price = euros(kit.random);
  let top = 2;
  for (const made of kit.make(2)) top = product(kit, made, top, price);
  note(kit, sheet, top, 0, "Ausgabe für die Eisküche, Preise ohne MwSt.");
}

/** A file of a farm dairy. */
export const blaetter: readonly Layout[] = [
  { name: "Hofmolkerei, Rezepturblatt als Datei", language: "de", isCsv: true, build: datasheet },
];
