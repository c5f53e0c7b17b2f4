import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { perKilo, rowsAt, WIRT } from "./words";

const PRICES = "Preisliste";
const sheetOf = (at: number): string => `Produkt ${at + 1}`;

/** What was last paid; gives the range in which the others look. */
function prices(kit: Kit, items: readonly string[]): string {
  const sheet = addSheet(kit.marked.book, PRICES);
  putRow(sheet, 0, 0, ["Rohstoff", "€ je kg netto", "bestellt bei"]);
  const rows = rowsAt(
    sheet,
    { row: 1, column: 0 },
    items.map((item, index) => [
      ...[item, shown(perKilo(kit, item), "0.00")],
      index % 3 === 0 ? "Großmarkt" : undefined,
    ]),
  );
  note(kit, sheet, items.length + 2, 0, "Stand Quartalsbeginn, Fracht nicht drin");
  return `${PRICES}!${absolute(span(rows.flatMap((cells) => cells.slice(0, 2))))}`;
}

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung in K", states: "depression", as: "formula" },
  { label: "Zucker, g auf 100 g Wasser", states: "sugar per 100 g water", as: "typed" },
  {
    label: "Eis in der Masse bei −18 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

interface Product {
  readonly recipe: MarkedRecipe;
  readonly end: number;
  readonly cost: Spot;
}

/** Shares, kilograms of the charge, and euros; the charge's size stands over them. */
function charge(kit: Kit, made: MadeRecipe, at: number, table: string): Product {
  const sheet = addSheet(kit.marked.book, sheetOf(at));
  putRow(sheet, 0, 0, ["Produkt", made.title]);
  const words = { label: "Charge (kg)", bare: "Charge", value: kit.random.pick([8, 12, 20]) };
  const size = input(kit, sheet, { row: 1, column: 0 }, words);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Masse-%", "einwiegen kg", "Kosten €"],
      cells: (item, grams) => [item, shown(grams, "0.0")],
    },
  );
  const kilos = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [size] },
    content: (spot) => `=${a1(spot)}/100*${fixed(size)}`,
  });
  const costs = beside(kit, heads[3]!, kilos, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*VLOOKUP(${a1({ ...spot, column: 0 })},${table},2,FALSE)`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, kilos, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const lines = { names, amounts, alsoAmounts: kilos, amountLabel: heads[1]!, total };
  const recipe = markRecipe(kit, made, { ...lines, unit: "%" });
  const perKg = shown(`=${a1(cost)}/${fixed(size)}`, "0.00");
  putRow(sheet, end + 1, 0, ["Rohstoffe je kg Eis", undefined, undefined, perKg]);
  const next = say(sheet, recipe, { row: 3, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Ziel" });
  tellIn(sheet, recipe, { row: end + 3, column: 0 }, WIRT);
  return { recipe, end, cost };
}

/** A price list first, then a sheet for each product, at last the sum of a production day. */
function hofmanufaktur(kit: Kit): void {
  const mades = kit.make(3).map(hundred);
  const table = prices(kit, itemsOf(mades));
  const products = mades.map((made, index) => charge(kit, made, index, table));
  const sheet = addSheet(kit.marked.book, "Produktionstag");
  putRow(sheet, 0, 0, ["Blatt", "Produkt", "Rohstoffe €", "Frostung bis Uhr"]);
  const rows = rowsAt(
    sheet,
    { row: 1, column: 0 },
    products.map(({ recipe, cost }, index) => [
      ...[sheetOf(index), recipe.made.title, shown(`='${sheetOf(index)}'!${a1(cost)}`, "0.00")],
      ["10:30", "13:00", "15:15"][index],
    ]),
  );
  const row = 1 + rows.length;
  put(sheet, row, 1, "Tag gesamt");
  sumOf(kit, sheet, { row, column: 2 }, columnOf(rows, 2), "0.00");
}

/** A farm that makes and sells ice. */
export const hofmanufakturen: readonly Layout[] = [
  { name: "Hofmanufaktur, Preisliste und Chargenblätter", language: "de", build: hofmanufaktur },
];
