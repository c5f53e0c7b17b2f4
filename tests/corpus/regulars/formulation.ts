import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { alcoholIn, beside } from "../visitors/lines";
import { priceOf } from "./prices";

const CALLED = { sugar: "white sugar", "skim milk powder": "skimmed milk powder" };
const STATUS = ["yes", "yes", "yes", "second source open"];

const HEADS = [
  ...["Raw material", "% w/w", "g per kg of mix", "Approved", "Price (EUR/kg)"],
  ...["Raw material cost (EUR per 100 kg)", "Declarable allergen"],
];

/** Every raw material in its row, without the formulas. */
function materials({ random }: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot[][] {
  return made.lines.map(({ en, allergen }, index) => {
    const share = shown(made.grams[index]!, "0.0");
    const price = shown(priceOf(random, en), "0.00");
    const told = made.flagged ? allergen?.en : undefined;
    return putRow(sheet, 7 + index, 0, [
      ...[made.names[index], share, undefined, random.pick(STATUS), price, undefined, told],
    ]);
  });
}

/** Shares by weight, the grams of a kilogram and what they cost. */
function body(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = stillMet(called(perHundred(kit.make(1)[0]!), CALLED));
  putRow(sheet, 0, 0, ["Product", made.title]);
  const heads = putRow(sheet, 6, 0, HEADS);
  const rows = materials(kit, sheet, made);
  const [names, amounts, prices] = [columnOf(rows, 0), columnOf(rows, 1), columnOf(rows, 4)];
  const kilo = { column: 2, heading: heads[2]!, fixed: [], format: "0" };
  const alsoAmounts = beside(kit, amounts, kilo, (amount) => `=${amount}*10`);
  const money = { column: 5, heading: heads[5]!, fixed: [], format: "0.00" };
  const costs = beside(kit, prices, money, (price) => `=${price}*${price.replace("E", "B")}`);
  const row = 7 + rows.length;
  put(sheet, row, 0, "Sum");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row, column: 2 }, alsoAmounts, "0");
  sumOf(kit, sheet, { row, column: 5 }, costs, "0.00");
  const heading = heads[1]!;
  kit.marked.numberColumns.push({ spots: amounts, heading, total, kind: "per cent" });
  const lines = { names, amounts, alsoAmounts, amountLabel: heading, total };
  const recipe = markRecipe(kit, made, { ...lines, unit: "%" });
  if (made.flagged) recipe.flags.push(...columnOf(rows, 6));
  return recipe;
}

/** What the file on the product gives; the ice at the temperature in a cell. */
const properties = (made: MadeRecipe, temperature: Spot, temperatureC: number): Said[] => {
  const ice = { temperature, temperatureC, as: "formula", format: "0.0" } as const;
  return [
    { label: "Initial freezing point (°C)", states: "freezing point", as: "formula" },
    { label: "Frozen water at distribution, % of the water", states: "ice of water", ...ice },
    { label: "Ice at distribution, % of the mix", states: "ice of mix", ...ice },
    { label: "Water (g per 100 g)", states: "water", as: "typed", decimals: 1 },
    { label: "Dissolved solids (g per 100 g)", states: "dissolved", as: "typed", decimals: 1 },
    { label: "Sugars (% w/w)", states: "sugar share", as: "typed" },
    ...alcoholIn(made, {
      ...{ label: "Ethanol (g per 100 g)", states: "alcohol", as: "typed", decimals: 2 },
    }),
  ];
};

/** A product of a small factory, formulated by weight. */
export function formulation(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Formulation");
  const recipe = body(kit, sheet);
  putRow(sheet, 1, 0, ["Trial", `R&D ${kit.random.whole(21, 89)}`]);
  const value = kit.random.pick([-18, -20, -15]);
  const words = { label: "Distribution temperature (°C)", bare: "Distribution temperature" };
  const temperature = input(kit, sheet, { row: 3, column: 0 }, { ...words, value });
  const dose = { label: "Pack fill (g)", bare: "Pack fill", value: kit.random.pick([85, 120]) };
  const pack = input(kit, sheet, { row: 4, column: 0 }, dose);
  const list = properties(recipe.made, temperature, value);
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, list);
  const cost = `=F${recipe.total!.row + 1}/100*${fixed(pack)}/1000`;
  putRow(sheet, next++, 0, ["Raw materials of one pack (EUR)", shown(cost, "0.000")]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Texture brief" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next + 1, 0, "Age the mix overnight at 4 °C before freezing.");
}
