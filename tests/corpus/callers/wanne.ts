import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { inUnit } from "../list";
import { input } from "../page";
import { called, stillMet } from "../kitchens/hand";
import { perHundred, type MadeRecipe } from "../recipes";
import { desk, down, linesOn, tellBehind } from "./desk";
import { euros } from "./prices";

/** The density of the mix, as weighed in a jug; a usual one where nobody can work it out. */
function density({ names, grams }: MadeRecipe): number {
  const [items, amounts] = [names.map((each) => [each]), grams.map((each) => [each])];
  const answer = callFunction("DENSITY", items, amounts)[0]![0];
  return typeof answer === "number" ? Number(answer.toFixed(2)) : 1.08;
}

/** How much mix fills the tub; gives the cell with its grams. */
function fills(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot {
  const { random } = kit;
  const given = (row: number, label: string, bare: string, value: number): Spot =>
    input(kit, sheet, { row, column: 0 }, { label, bare, value });
  const litres = given(1, "Wanne fasst (l)", "Wanne fasst", random.pick([2.5, 5, 6.5]));
  const air = given(2, "Luftaufschlag (%)", "Luftaufschlag", random.pick([20, 25, 30, 35]));
  const perMl = given(
    3,
    "Dichte, im Messbecher gewogen (g/ml)",
    "Dichte, im Messbecher gewogen",
    density(made),
  );
  const mix = `=${a1(litres)}*1000*${a1(perMl)}/(1+${a1(air)}/100)`;
  return putRow(sheet, 4, 0, ["Masse für die Wanne (g)", shown(mix, "0")])[1]!;
}

const KNOWN: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
  { label: "Erniedrigung des Gefrierpunkts (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g Masse (g)", states: "water", as: "typed", decimals: 1 },
  {
    label: "Zucker auf 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  { label: "gelöst in 100 g Masse (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "in der Vitrine bei −13 °C gefroren (% des Wassers)",
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** The shares, the grams in the tub and what they cost; gives the recipe. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, wanted: Spot): MarkedRecipe {
  const price = euros(kit.random);
  const list = desk(kit, sheet, made, {
    ...{ row: 6, column: 0 },
    heads: ["Das kommt hinein", "Preis je kg (€)", "Anteil", "Wanne in g", "Wanne in €"],
    cells: (index) => [
      ...[made.names[index], shown(price(made, index), "0.00")],
      shown(inUnit(made.grams[index]!, "fraction"), "0.0%"),
    ],
    ...{ name: 0, amount: 2, sum: "zusammen", format: "0.0%" },
  });
  const { heads, amounts, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[3]!, end, format: "0", fixed: [wanted] },
    formula: (cell) => `=${cell}*${fixed(wanted)}`,
  });
  down(kit, sheet, alsoAmounts, {
    ...{ heading: heads[4]!, end, format: "0.00" },
    formula: (cell) => `=${cell}*${cell.replace("D", "B")}/1000`,
  });
  return markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "fraction" });
}

/** The basic recipe, the tub, and what the tub costs. */
function tub(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wanne");
  const words = { Salz: "Speisesalz", Zucker: "Kristallzucker" };
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), words);
  putRow(sheet, 0, 0, ["Hofcafé", made.title]);
  const recipe = shares(kit, sheet, made, fills(kit, sheet, made));
  const next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Wunsch der Wirtin" });
  const free = tellBehind(sheet, recipe, { row: next + 2, column: 0 }, "Aufs Schild: enthält");
  note(kit, sheet, free + 1, 0, "Wanne vor dem Füllen eine Stunde in den Schockfroster.");
}

/** Sheets of a farm café. */
export const wannen: readonly Layout[] = [
  { name: "Hofcafé, auf die Wanne gerechnet", language: "de", build: tub },
];
