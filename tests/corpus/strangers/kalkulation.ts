import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { inUnit } from "../list";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { batchOf } from "./mengen";
import { eurosPerKg } from "./preise";
import { beside, lines, under } from "./zeilen";

/** What the wholesaler charges; gives the cells with the price of a kilogram. */
function purchases({ marked, random }: Kit, wares: readonly string[]): Spot[] {
  const sheet = addSheet(marked.book, "Einkauf");
  put(sheet, 0, 0, "Einkaufspreise netto, Stand März");
  const heads = putRow(sheet, 2, 0, [
    ...["Ware", "Gebinde (kg)", "Preis je Gebinde (€)", "Preis je kg (€)"],
  ]);
  const spots = wares.map((ware, index) => {
    const size = ware === "Wasser" ? 1000 : random.pick([0.5, 1, 2.5, 5, 10]);
    const cents = Math.round(100 * size * eurosPerKg(random, ware));
    const [, pack, price] = putRow(sheet, 3 + index, 0, [ware, size, shown(cents / 100, "0.00")]);
    return put(sheet, 3 + index, 3, shown(`=${a1(price!)}/${a1(pack!)}`, "0.00"));
  });
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  return spots;
}

/** What the counter wants to know of a scoop. */
const SCOOP = [
  ["Kugel wiegt (g)", "Kugel wiegt", [55, 60, 70]],
  ["Rest in Maschine und Wanne (%)", "Rest in Maschine und Wanne", [3, 4, 6]],
  ["Waffel kostet (€)", "Waffel kostet", [0.05, 0.06, 0.08]],
  ["Nettopreis der Kugel (€)", "Nettopreis der Kugel", [1.26, 1.35, 1.51]],
] as const;

/** From the batch to the scoop; gives the next free row. */
function perScoop(kit: Kit, row: number, total: Spot, cost: Spot, given: readonly Spot[]): number {
  const sheet = kit.marked.book.sheets[0]!;
  const [scoop, rest, cone, price] = given.map(a1) as [string, string, string, string];
  const scoops = put(sheet, row, 2, shown(`=${a1(total)}*1000*(1-${rest}/100)/${scoop}`, "0"));
  const each = put(sheet, row + 1, 2, shown(`=${a1(cost)}/${a1(scoops)}+${cone}`, "0.00"));
  const share = put(sheet, row + 2, 2, shown(`=${a1(each)}/${price}`, "0.0%"));
  put(sheet, scoops.row, 0, "Kugeln aus dem Ansatz");
  put(sheet, each.row, 0, "Wareneinsatz je Kugel mit Waffel (€)");
  put(sheet, share.row, 0, "Wareneinsatz vom Nettopreis");
  return row + 4;
}

/** Goods, purchase price, batch in kg, cost of goods; gives the recipe and what it costs. */
function goods(kit: Kit, made: MadeRecipe): { recipe: MarkedRecipe; cost: Spot } {
  const sheet = addSheet(kit.marked.book, "Kalkulation");
  const heads = putRow(sheet, 6, 0, ["Rohware", "€ je kg", "Ansatz (kg)", "Wareneinsatz (€)"]);
  const perKg = purchases(kit, made.names);
  const cells = lines(sheet, { row: 7, column: 0 }, made, (name, grams, index) => [
    ...[name, shown(`=Einkauf!${a1(perKg[index]!)}`, "0.00"), shown(inUnit(grams, "kg"), "0.000")],
  ]);
  const [names, links, amounts] = cells as [Spot[], Spot[], Spot[]];
  kit.marked.formulaColumns.push({ spots: links, heading: heads[1]!, fixed: [] });
  const costs = beside(kit, amounts, {
    ...{ heading: heads[3]!, format: "0.00" },
    formula: (cell) => `=${cell.replace("C", "B")}*${cell}`,
  });
  const total = under(kit, amounts, "0.000");
  put(sheet, total.row, 0, "Gesamt");
  const amountLabel = heads[2]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total });
  return { recipe, cost: under(kit, costs, "0.00") };
}

const SAID: readonly Said[] = [
  { label: "fängt an zu frieren bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser im Ansatz (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst, ohne Fett und Stücke (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker im Ansatz (%)", states: "sugar share", as: "typed" },
  {
    label: "Eis in der Masse bei −14 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14 },
  },
];

/** A batch costed down to the scoop. */
function scoops(kit: Kit): void {
  const { random } = kit;
  const bought = batchOf(kit.make(1)[0]!, random.whole(4, 8));
  const made = called(bought, { Zucker: "Kristallzucker" });
  const { recipe, cost } = goods(kit, made);
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, 0, 0, ["Sorte", made.title]);
  const given = SCOOP.map(([label, bare, values], index) =>
    input(kit, sheet, { row: 1 + index, column: 0 }, { label, bare, value: random.pick(values) }),
  );
  let next = perScoop(kit, cost.row + 2, recipe.total!, cost, given);
  const told = say(sheet, recipe, { row: 1, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: told, column: 5, label: "in der Theke als" });
  next = tell(kit, sheet, recipe, { row: next, column: 0, as: "pair" });
  note(kit, sheet, next + 1, 0, "Preise nach jeder Lieferung nachtragen.");
}

/** What an ice-cream parlour calculates. */
export const kalkulation: readonly Layout[] = [
  { name: "Eisdiele, vom Ansatz zur Kugel", language: "de", build: scoops },
];
