import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { cautionsAt, readings } from "./worte";

const UNITS = ["Erdgeschoss", "1. Stock", "2. Stock", "Haus am Garten", "Tagespflege"];

/** Who eats how much on Sunday; gives the grams that are needed. */
function portions(kit: Kit, sheet: CorpusSheet): Spot {
  const { random, marked } = kit;
  const heads = putRow(sheet, 2, 0, [
    ...["Wohnbereich", "Essen", "davon passiert", "normale Portionen", "Ausgabe (°C)"],
  ]);
  const rows = UNITS.map((unit, index) =>
    putRow(sheet, 3 + index, 0, [unit, random.whole(14, 32), random.whole(0, 4)]),
  );
  const normal = rows.map(([, all, strained], index) =>
    put(sheet, 3 + index, 3, `=${a1(all!)}-${a1(strained!)}`),
  );
  marked.formulaColumns.push({ spots: normal, heading: heads[3]!, fixed: [] });
  readings(kit, sheet, heads[4]!, { count: UNITS.length, tenths: [-135, -98] });
  put(sheet, 8, 0, "Haus gesamt");
  sumOf(kit, sheet, { row: 8, column: 1 }, columnOf(rows, 1));
  sumOf(kit, sheet, { row: 8, column: 2 }, columnOf(rows, 2));
  const count = sumOf(kit, sheet, { row: 8, column: 3 }, normal);
  const words = { label: "Portion (g)", bare: "Portion", value: random.pick([60, 70, 80]) };
  const size = input(kit, sheet, { row: 10, column: 0 }, words);
  const need = `=${a1(count)}*${a1(size)}`;
  return putRow(sheet, 11, 0, ["Bedarf (g)", shown(need, "0")])[1]!;
}

const PLAN = {
  heads: ["Lebensmittel", "Grundrezept g", "heute g", "Allergene"],
  cells: (name: string, grams: number) => [name, grams],
};

/** The basic recipe and what it takes today, the allergens beside each line. */
function today(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, need: Spot): MarkedRecipe {
  const list = listed(sheet, made, { row: 14, column: 0 }, PLAN);
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Gesamtmenge");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [need, total] },
    content: (spot) => `=${a1(spot)}*${fixed(need)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total },
  });
  made.lines.forEach(({ allergen }, index) => {
    if (!made.flagged || allergen === undefined) return;
    recipe.flags.push(put(sheet, names[index]!.row, 3, allergen.de));
  });
  return recipe;
}

const SAID: readonly Said[] = [
  { label: "Das Eis beginnt zu gefrieren bei (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser im Grundrezept (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Zucker im Grundrezept (%)", states: "sugar share", as: "typed" },
  {
    label: "Eis in der Portion bei −12 °C (% der Masse)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** Sunday's dessert for all the units of a home. */
function sunday(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sonntag");
  const [first] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(first!, { Zucker: "Kristallzucker", Vollmilch: "Vollmilch 3,5 %" });
  put(sheet, 0, 0, "Küche Seniorenheim, Nachtisch am Sonntag");
  const need = portions(kit, sheet);
  put(sheet, 13, 0, made.title);
  const recipe = today(kit, sheet, made, need);
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Konsistenz" });
  next = cautionsAt(sheet, recipe, { row: next, column: 0 });
  const kinds = `${span(recipe.names)},${span(recipe.amounts)}`;
  const sweet = shown(`=RIME.SWEETNESS(${kinds})`, "0");
  putRow(sheet, next, 0, ["Süße (wie g Zucker je 100 g)", sweet]);
  note(kit, sheet, next + 2, 0, "Passierte Portionen: Creme statt Eis, siehe Diätplan.");
}

/** A kitchen that cooks for old people. */
export const sundays: readonly Layout[] = [
  { name: "Seniorenheim, Portionen je Wohnbereich", language: "de", build: sunday },
];
