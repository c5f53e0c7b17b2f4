import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { down } from "../lodgers/words";
import { absolute, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { pricesOf, table } from "./words";

const VOICE: Voice = {
  lead: "enthält",
  honey: "Honig, nicht unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere, Autofahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen.",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "formula" }],
  ["Wasser in 1 kg (g)", { states: "water", as: "typed", decimals: 0 }],
  ["gelöst in 1 kg (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Eis bei −15 °C (% der Masse)",
    { states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  ],
];

const HEAD = 2;
const COLUMNS = { items: 0, price: 1, first: 2 } as const;

/** What a kilogram of raw material costs, in the second column. */
function prices(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  items: readonly Spot[],
) {
  const priceOf = pricesOf(kit);
  return itemsOf(mades).map((name, index) => {
    const made = mades.find(({ names }) => names.includes(name))!;
    const price = priceOf(made, made.names.indexOf(name));
    return put(sheet, items[index]!.row, COLUMNS.price, shown(price, "0.00"));
  });
}

/** What a kilogram of each takes of every raw material, and what that costs. */
function shopping(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], count: number): void {
  const after = COLUMNS.first + count;
  const heads = putRow(sheet, HEAD, after, ["von jedem 1 kg, zusammen (g)", "kostet (€)"]);
  const together = beside(kit, heads[0]!, items, {
    ...{ sheet, format: "0" },
    content: (spot) =>
      `=SUM(${a1({ ...spot, column: COLUMNS.first })}:${a1({ ...spot, column: after - 1 })})`,
  });
  const costs = beside(kit, heads[1]!, together, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: COLUMNS.price })}`,
  });
  const row = HEAD + 1 + items.length;
  sumOf(kit, sheet, { row, column: after }, together, "0");
  sumOf(kit, sheet, { row, column: after + 1 }, costs, "0.00");
}

const CLEANING = [
  ["Putzplan Maschine", "Kürzel"],
  ["Montag", "HB"],
  ["Mittwoch", "LS"],
  ["Freitag", "HB"],
];

/** All ices of the pastry shop beside each other, costs and answers under them. */
function konditorei(kit: Kit): void {
  const mades = kit.make(4).map((made) => perKilogram(made));
  const sheet = addSheet(kit.marked.book, "Eissorten");
  put(sheet, 0, 0, "Eissorten Sommer, Rohstoffe für 1 kg");
  const heads = ["Rohstoff", "EK €/kg", ...mades.map(({ title }) => `${title} (g)`)];
  const spots = putRow(sheet, HEAD, 0, heads);
  const items = down(sheet, [HEAD + 1, COLUMNS.items], itemsOf(mades));
  const paid = absolute(span(prices(kit, sheet, mades, items)));
  const end = HEAD + 1 + items.length;
  putRow(sheet, end, 0, ["Summe"]);
  put(sheet, end + 1, 0, "Wareneinsatz je kg (€)");
  putRow(sheet, end + 7, 0, ["serviert"]);
  putRow(sheet, end + 8, 0, ["Aushang"]);
  const costs = mades.map((made, index) => {
    const column = COLUMNS.first + index;
    const plan = { items, left: COLUMNS.first, unit: "g", format: "0" } as const;
    const recipe = downColumn(kit, sheet, made, index, { ...plan, amountLabel: spots[column]! });
    factsDown(sheet, recipe, FACTS, { row: end + 3, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    tellIn(sheet, recipe, { row: end + 8, column }, VOICE);
    const grams = items.map((spot) => ({ ...spot, column }));
    const content = `=SUMPRODUCT(${paid},${span(grams)})/1000`;
    return put(sheet, end + 1, column, shown(content, "0.00"));
  });
  shopping(kit, sheet, items, mades.length);
  putRow(sheet, end + 10, 0, [
    "teuerste Sorte (€/kg)",
    undefined,
    shown(`=MAX(${a1(costs[0]!)}:${a1(costs.at(-1)!)})`, "0.00"),
  ]);
  table(sheet, { row: end + 12, column: 0 }, CLEANING);
  note(kit, sheet, end + 17, 0, "Preise ohne MwSt., Stand letzte Lieferung.");
}

/** A pastry shop. */
export const konditoreien: readonly Layout[] = [
  {
    name: "Konditorei, vier Eissorten nebeneinander mit Wareneinsatz",
    language: "de",
    build: konditorei,
  },
];
