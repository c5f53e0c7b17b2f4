import {
  a1,
  addSheet,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { freezerLabels } from "./freezerLabels";
import { priceFor } from "./prices";
import { costsOf, times } from "./words";

const OURS = /milk$|^cream|strawberries|raspberries|blueberries|cherries|apple|honey|yolk|hazel/;

/** What goes into the churn and what it costs us. */
function churn(kit: Kit) {
  const sheet = addSheet(kit.marked.book, "Costing");
  const made = times(kit.make(1)[0]!, 15);
  put(sheet, 0, 0, "Dairy shop: what does it really cost us?");
  putRow(sheet, 1, 0, ["Ice", undefined, made.title]);
  const heads = putRow(sheet, 3, 0, ["kg", "into the churn", "comes from", "£ a kg", "£"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[shown(inUnit(made.grams[index]!, "kg"), "0.000"), name],
      OURS.test(name) ? "the farm" : name === "water" ? "tap" : "wholesaler",
      shown(priceFor(kit.random, name), "0.00"),
    ]),
  );
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const costs = costsOf(kit, heads[4]!, amounts, { sheet, column: 3 });
  const row = 4 + rows.length;
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts, "0.000");
  put(sheet, row, 1, "full churn");
  const cost = sumOf(kit, sheet, { row, column: 4 }, costs, "0.00");
  const amountLabel = heads[0]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total });
  return { sheet, recipe, total, cost };
}

type Churn = ReturnType<typeof churn>;

/** Tubs, time and power; gives how many tubs and all that was spent. */
function besides(kit: Kit, { sheet, recipe, total, cost }: Churn, top: number): [Spot, Spot] {
  const words = { label: "Fill of a tub (g)", bare: "Fill of a tub", value: 380 };
  const fill = input(kit, sheet, { row: top, column: 0 }, words);
  const filled = shown(`=1000*${a1(total)}/${a1(fill)}`, "0");
  const [, tubs] = putRow(sheet, top + 1, 0, ["Tubs filled", filled]) as [Spot, Spot];
  const heads = putRow(sheet, top + 3, 0, ["Besides", "how much", "unit", "£ each", "£"]);
  const things: readonly (readonly Content[])[] = [
    ["tub and lid", `=${a1(tubs)}`, "piece", 0.31],
    ["sticker", `=${a1(tubs)}`, "piece", 0.06],
    ["churn and hardening", kit.random.whole(9, 16), "kWh", 0.27],
    ["hands", kit.random.pick([1.5, 2, 2.5]), "hour", 12.6],
  ];
  const rows = things.map(([what, much, unit, each], index) =>
    putRow(sheet, top + 4 + index, 0, [
      ...[what, typeof much === "string" ? shown(much, "0") : much, unit],
      shown(each as number, "0.00"),
    ]),
  );
  const parts = costsOf(kit, heads[4]!, columnOf(rows, 1), { sheet, column: 3 });
  const sum = sumOf(kit, sheet, { row: top + 8, column: 4 }, parts, "0.00");
  put(sheet, top + 8, 0, "besides, together");
  put(sheet, top + 9, 0, `everything for ${recipe.made.title.toLowerCase()}`);
  const all = put(sheet, top + 9, 4, shown(`=${a1(cost)}+${a1(sum)}`, "0.00"));
  return [tubs, all];
}

const CHARACTER: readonly Said[] = [
  { label: "Begins to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the churn (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars (% by weight)", states: "sugar share", as: "typed" },
  {
    label: "Shop cabinet −20 °C: water frozen (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  },
];

/** What is left of the price of a tub. */
function leftOver(kit: Kit, sheet: CorpusSheet, top: number, [tubs, all]: [Spot, Spot]): void {
  const price = ["Price in the shop (£ a tub)", shown(kit.random.pick([5.95, 6.5]), "0.00")];
  const asked = putRow(sheet, top, 0, price)[1]!;
  const rate = { label: "VAT in it (%)", bare: "VAT in it", value: 20 };
  const vat = input(kit, sheet, { row: top + 1, column: 0 }, rate);
  const line = (at: number, label: string, formula: string, format = "0.00"): Spot =>
    putRow(sheet, top + at, 0, [label, shown(formula, format)])[1]!;
  const net = line(2, "Price without VAT (£)", `=${a1(asked)}/(1+${a1(vat)}/100)`);
  const each = line(3, "A tub costs us (£)", `=${a1(all)}/${a1(tubs)}`);
  const left = line(4, "Left on a tub (£)", `=${a1(net)}-${a1(each)}`);
  line(5, "Left, of the price without VAT", `=${a1(left)}/${a1(net)}`, "0%");
}

/** A churn's costs by kilogram and tub, what is left of the price, and what the ice is like. */
function costing(kit: Kit): void {
  const made = churn(kit);
  const { sheet, recipe } = made;
  const top = recipe.total!.row + 2;
  leftOver(kit, sheet, top + 11, besides(kit, made, top));
  const next = say(sheet, recipe, { row: 4, column: 6 }, CHARACTER);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Wanted" });
  const free = tell(kit, sheet, recipe, { row: next + 2, column: 6, as: "pair" });
  note(kit, sheet, free + 1, 6, `Sold out by noon on ${busyDay(kit)}, make two churns next time.`);
}

const busyDay = ({ random }: Kit): string => random.pick(["Easter Monday", "open day", "Sunday"]);

/** Sheets of a farm with a dairy and a shop. */
export const farm: readonly Layout[] = [
  { name: "farm shop, a churn costed to the tub", language: "en", build: costing },
  { name: "farm shop, labels for the freezer", language: "en", build: freezerLabels },
];
