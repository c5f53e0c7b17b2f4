import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { goodsOf, numbersUnder, readings, table, type Goods } from "./words";

const VOICE: Voice = {
  lead: "Aushang:",
  honey: "Honig (unter 12 Monaten nicht geben).",
  alcohol: "Alkohol (nicht an Kinder, Schwangere, Fahrer).",
  nuts: "Ganze Nüsse (Erstickungsgefahr unter 5 Jahren).",
  egg: "Rohes Eigelb (71 °C im Pasteur oder pasteurisiert).",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Zucker in % der Masse", { states: "sugar share", as: "typed", decimals: 1 }],
  ["Wasser in g", { states: "water", as: "typed", decimals: 0 }],
  ["Wasser gefroren in der Theke, %", { states: "ice of water", as: "formula", format: "0" }],
];

const TOP = 5;

/** Prices and ingredients at the side. */
function seite(kit: Kit, sheet: CorpusSheet, goods: readonly Goods[]) {
  const [, label] = putRow(sheet, TOP - 2, 0, ["€/kg", "Angaben in kg"]);
  put(sheet, TOP - 1, 1, "Ansatz");
  const rows = goods.map(({ name, en }, index) =>
    putRow(sheet, TOP + index, 0, [shown(usualPrice(kit.random, en), "0.00"), name]),
  );
  const [prices, items] = [0, 1].map((at) => rows.map((cells) => cells[at]!));
  return { label: label!, prices: prices!, items: items! };
}

/** A flavour in its column, the sum over the ingredients. */
function sorte(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  { items, prices, label }: ReturnType<typeof seite>,
) {
  const listed = items.map((spot) => sheet.cells[spot.row]![spot.column]!.content);
  put(sheet, TOP - 2, column, made.title);
  const names = made.names.map((name) => items[listed.indexOf(name)]!);
  const amounts = names.map(({ row }, index) =>
    put(sheet, row, column, shown(inUnit(made.grams[index]!, "kg"), "0.000")),
  );
  const all = items.map((spot) => ({ ...spot, column }));
  const total = sumOf(kit, sheet, { row: TOP - 1, column }, all, "0.000");
  const cost = `=SUMPRODUCT(${absolute(span(prices))},${span(all)})`;
  const paid = put(sheet, TOP + items.length + 1, column, shown(cost, "0.00"));
  const cells = { names, amounts, unit: "kg", amountLabel: label, total, shared: true } as const;
  return { recipe: markRecipe(kit, made, cells), paid };
}

/** All flavours of the season side by side. */
function sorten(kit: Kit, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Sorten 2026");
  put(sheet, 0, 0, "Eisdiele, Sorten der Saison");
  const cold = kit.random.pick([-12, -13, -14]);
  const words = { label: "Theke in °C", bare: "Theke", value: cold };
  const temperature = input(kit, sheet, { row: 1, column: 1 }, words);
  const side = seite(kit, sheet, goodsOf(mades));
  const end = TOP + side.items.length + 1;
  const label = put(sheet, end, 1, "Kosten in €");
  const facts = FACTS.map(([text, plan]): Fact =>
    plan.states.startsWith("ice")
      ? [text, { ...plan, temperature, temperatureC: cold }]
      : [text, plan],
  );
  const after = end + 1 + facts.length;
  putRow(sheet, after, 1, ["Ausgabe"]);
  putRow(sheet, after + 1, 1, ["Allergene, Hinweise"]);
  const paid: Spot[] = mades.map((made, index) => {
    const column = 2 + index;
    const { recipe, paid: cost } = sorte(kit, sheet, made, column, side);
    const place = { row: end + 1, column, labels: 1, items: side.items };
    factsDown(sheet, recipe, facts, place);
    nameTarget(sheet, recipe, { row: after, column });
    tellIn(sheet, recipe, { row: after + 1, column }, VOICE);
    return cost;
  });
  kit.marked.formulaColumns.push({ spots: paid, heading: label, fixed: side.prices });
  note(kit, sheet, after + 3, 1, "Spalten nie sortieren, die Waage druckt danach.");
}

/** Who serves, and what the counter showed in the morning. */
function plan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Woche 23");
  const days = ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"];
  const [left, right] = [readings(kit, 7, [-15, -11]), readings(kit, 7, [-15, -11])];
  const people = ["Carla", "Carla", "Nico", "Nico", "Carla", "beide", "beide"];
  const { heads, columns } = table(
    sheet,
    { row: 1, column: 0 },
    ["Tag", "Dienst", "Theke links °C", "Theke rechts °C"],
    days.map((day, index) => [day, people[index], left[index], right[index]]),
  );
  for (const at of [2, 3]) numbersUnder(kit, heads[at]!, columns[at]!, "temperature");
  putRow(sheet, 10, 0, ["offen", "11 bis 21 Uhr"]);
}

function eisdiele(kit: Kit): void {
  const words = { Zucker: "Kristallzucker", Kakaopulver: "Kakao", Salz: "Speisesalz" };
  sorten(
    kit,
    kit.make(6).map((made) => called(upTo(made, 9000), words)),
  );
  plan(kit);
}

/** An ice parlour with all flavours side by side. */
export const eisdielen: readonly Layout[] = [
  { name: "Eisdiele, Sorten nebeneinander mit Summe oben", language: "de", build: eisdiele },
];
