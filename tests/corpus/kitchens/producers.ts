import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { called, columnOf, largestFirst, strip } from "./hand";

/** What the suppliers charge, by the pack and by the kilogram; gives the block to look up in. */
function suppliers(kit: Kit, wanted: readonly string[]): string {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Suppliers");
  put(sheet, 0, 0, "Suppliers, spring list");
  const heads = putRow(sheet, 1, 0, ["Goods", "Pack (kg)", "Pack price (£)", "Price (£/kg)"]);
  const rows = [...new Set([...wanted, "caster sugar", "whole milk", "lemon juice"])].map(
    (goods, index) => {
      const packKg = goods === "water" ? 20 : random.pick([0.5, 1, 2.5, 5]);
      const perKg = goods === "water" ? 2 : random.between(80, 1100);
      const price = Math.round(packKg * perKg) / 100;
      const cells = putRow(sheet, 2 + index, 0, [goods, packKg, shown(price, "0.00")]);
      const formula = `=${a1(cells[2]!)}/${a1(cells[1]!)}`;
      return [...cells, put(sheet, 2 + index, 3, shown(formula, "0.00"))];
    },
  );
  marked.formulaColumns.push({ spots: columnOf(rows, 3), heading: heads[3]!, fixed: [] });
  return `Suppliers!${absolute(span(rows.flat()))}`;
}

/** A batch in kilograms, its costs by the suppliers' list, and what a tub of it costs. */
function tubs(kit: Kit): void {
  const { marked, random } = kit;
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar", "cream 35 % fat": "cream 35 %" });
  const sheet = addSheet(marked.book, "Batch sheet");
  const goods = suppliers(kit, made.names);
  putRow(sheet, 0, 0, ["Batch", `No. ${random.whole(100, 400)}`, made.title]);
  const heads = putRow(sheet, 5, 0, ["Quantity (kg)", "Ingredient", "£ per kg", "Cost (£)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 6 + index, 0, [shown(inUnit(made.grams[index]!, "kg"), "0.000"), name]),
  );
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const costs = amounts.map((spot, index) => {
    const found = `=VLOOKUP(${a1(names[index]!)},${goods},4,FALSE)`;
    const price = put(sheet, spot.row, 2, shown(found, "0.00"));
    return put(sheet, spot.row, 3, shown(`=${a1(spot)}*${a1(price)}`, "0.00"));
  });
  marked.formulaColumns.push({ spots: costs, heading: heads[3]!, fixed: [] });
  const row = 6 + rows.length;
  put(sheet, row, 1, "Batch total");
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: heads[0]!, total },
  });
  strip(sheet, recipe, { row: 2, column: 0 }, [
    { label: "Freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Dissolved solids (g)", states: "dissolved", as: "typed", decimals: 0 },
    {
      label: "Ice in the mix at −18 °C (%)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
    },
    { label: "Pure alcohol (g)", states: "alcohol", as: "typed", decimals: 1 },
  ]);
  const place = { row: row + 2, column: 0 };
  const words = { label: "Mix in a tub (g)", bare: "Mix in a tub", value: random.pick([90, 110]) };
  const tub = input(kit, sheet, place, words);
  const each = `=${a1(cost)}/${a1(total)}*${a1(tub)}/1000`;
  putRow(sheet, row + 3, 0, ["Cost of a tub (£)", shown(each, "0.00")]);
  nameTarget(sheet, recipe, { row: row + 4, column: 0, label: "Sold as" });
  const next = tell(kit, sheet, recipe, { row: row + 6, column: 0, as: "sentence" });
  note(kit, sheet, next, 0, "Van leaves at seven, ice packs in the night before.");
}

/** Shares from the largest to the smallest as on a label, kilograms for a batch beside them. */
function label(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Etikett");
  const made = largestFirst(kit.make(1)[0]!);
  put(sheet, 1, 1, made.title);
  const place = { row: 2, column: 1 };
  const words = { label: "Charge (kg)", bare: "Charge", value: random.pick([8, 12, 20]) };
  const batch = input(kit, sheet, place, words);
  const heads = putRow(sheet, 4, 1, ["Anteil in %", "Zutat", "Einwaage (kg)", "Allergen"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 1, [shown(made.grams[index]!, "0.0"), name]),
  );
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const weighed: Spot[] = amounts.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}*${fixed(batch)}/100`, "0.000")),
  );
  marked.formulaColumns.push({ spots: weighed, heading: heads[2]!, fixed: [batch] });
  const row = 5 + rows.length;
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.0");
  put(sheet, row, 2, "Summe");
  sumOf(kit, sheet, { row, column: 3 }, weighed, "0.000");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weighed, unit: "%", amountLabel: heads[0]!, total },
  });
  if (made.flagged) {
    const told = made.lines.map(({ allergen }, at) => put(sheet, 5 + at, 4, allergen?.de));
    recipe.flags.push(...told);
  }
  const next = say(sheet, recipe, { row: 5, column: 6 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Zucker (Massen-%)", states: "sugar share", as: "typed" },
    { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 1 },
    { label: "Gelöstes in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Soll werden" });
  const free = tell(kit, sheet, recipe, { row: row + 2, column: 1, as: "sentence" });
  note(kit, sheet, free + 1, 1, "Bei −18 °C lagern, nach dem Antauen nicht wieder einfrieren.");
}

/** Sheets of those who sell what they freeze. */
export const producers: readonly Layout[] = [
  { name: "market stall, batch and tub", language: "en", build: tubs },
  { name: "Hofladen, Etikett und Charge", language: "de", build: label },
];
