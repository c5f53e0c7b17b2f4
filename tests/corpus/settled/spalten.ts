import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { stimme } from "./stimme";
import { halfDegrees, table } from "./words";

const OWN = {
  ...{ Wasser: "Leitungswasser", Honig: "Blütenhonig", Zitronensaft: "Zitronensaft frisch" },
  ...{ Naturjoghurt: "Joghurt natur 3,5 %", Heidelbeeren: "Blaubeeren TK" },
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser in g", { states: "water", as: "formula", format: "0" }],
  ["Gelöstes in g", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zucker je 100 g Wasser in g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Eis in der Masse bei −14 °C in %",
    { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

const TOP = 4;

/** Prices a kilogram beside the ingredients. */
function preise(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  items: readonly Spot[],
) {
  const names = mades.flatMap((made) => made.names);
  const lines = mades.flatMap((made) => made.lines);
  return itemsOf(mades).map((item, index) => {
    const price = usualPrice(kit.random, lines[names.indexOf(item)]!.en);
    return put(sheet, items[index]!.row, 1, shown(price, "0.00"));
  });
}

/** One flavour: grams, euros beside them, its answers below. */
function sorte(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number, at: Grund): void {
  const { items, prices, amountLabel } = at;
  const column = 2 + 3 * index;
  put(sheet, TOP - 2, column, made.title);
  const [, heading] = putRow(sheet, TOP - 1, column, ["g", "€"]);
  const plan = { items, left: 2, step: 3, unit: "g", format: "0", amountLabel } as const;
  const recipe = downColumn(kit, sheet, made, index, plan);
  const spots = items.map((item, line) => {
    const grams = a1({ ...item, column });
    const formula = `=${grams}*$${a1(prices[line]!)}/1000`;
    return put(sheet, item.row, column + 1, shown(formula, "0.00"));
  });
  kit.marked.formulaColumns.push({ spots, heading: heading!, fixed: [] });
  const end = TOP + items.length;
  sumOf(kit, sheet, { row: end, column: column + 1 }, spots, "0.00");
  factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
  nameTarget(sheet, recipe, { row: end + 2 + FACTS.length, column });
  tellIn(sheet, recipe, { row: end + 3 + FACTS.length, column }, stimme("Allergene:"));
}

interface Grund {
  readonly items: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly amountLabel: Spot;
}

/** What the tasting day gave. */
function probetag(kit: Kit, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Probetag");
  put(sheet, 0, 0, "Probetag im Garten, Noten von 1 bis 6");
  const rows = mades.map(({ title }) => [
    ...[title, kit.random.whole(1, 4), kit.random.whole(1, 4), kit.random.whole(1, 4)],
    shown(halfDegrees(kit, -14, -10), "0.0"),
  ]);
  const heads = ["Sorte", "Note Ute", "Note Jan", "Note Gäste", "beim Löffeln gemessen (°C)"];
  const list = table(sheet, { row: 2, column: 0 }, heads, rows);
  temperatures(kit, list.heads[4]!, columnOf(list.rows, 4));
  note(kit, sheet, list.end + 1, 0, "Gäste sagen immer 2.");
}

/** Three flavours in columns with their costs. */
function spalten(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorten");
  const mades = kit.make(3).map((made) => called(upTo(made, 1500), OWN));
  put(sheet, 0, 0, "Kräutergarten, Sorten dieses Sommers, Mengen in g");
  const [amountLabel] = putRow(sheet, TOP - 1, 0, ["Zutat (Mengen in g)", "€/kg"]);
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const prices = preise(kit, sheet, mades, items);
  const end = TOP + items.length;
  put(sheet, end, 0, "Summe");
  put(sheet, end + 2 + FACTS.length, 0, "Sollte sein");
  put(sheet, end + 3 + FACTS.length, 0, "Schildchen");
  const grund = { items, prices, amountLabel: amountLabel! };
  mades.forEach((made, index) => sorte(kit, sheet, made, index, grund));
  note(kit, sheet, end + 5 + FACTS.length, 0, "Minze und Melisse kommen erst am Tisch dazu.");
  probetag(kit, mades);
}

/** A herb garden that serves ices. */
export const sortenspalten: readonly Layout[] = [
  { name: "Kräutergarten, Sorten in Spalten mit Euro daneben", language: "de", build: spalten },
];
