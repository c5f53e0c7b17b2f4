import { a1, addSheet, put, putRow, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { hasAlcohol, tellOnce } from "./words";

/** A recipe without milk, with a little gin if it had no spirit; one with a mistake as it is. */
function boozy(kit: Kit): MadeRecipe {
  const mades = kit.make(4);
  const isIce = ({ lines }: MadeRecipe) => lines.every(({ allergen }) => allergen === undefined);
  const made = mades.find(({ seeded }) => seeded !== undefined) ?? mades.find(isIce) ?? mades[0]!;
  if (made.seeded !== undefined || hasAlcohol(made)) return made;
  const grams = Math.round(massOf(made) * kit.random.between(0.02, 0.035));
  return stillMet(withLines(made, [...made.lines, line("gin 40 %", "Gin 40 %", grams, ALCOHOL)]));
}

const SAID: readonly Said[] = [
  { label: "Alcohol by itself, g", states: "alcohol", as: "formula", format: "0.0" },
  { label: "Freezing begins, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "That is below water by, K", states: "depression", as: "typed", decimals: 1 },
  { label: "Sugars for each 100 g of water, g", states: "sugar per 100 g water", as: "typed" },
  { label: "Total water, g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Ice in the sorbet at −18 °C, % of the sorbet", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

/** The sorbet, weights first. */
function sorbet(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = called(boozy(kit), { sugar: "caster sugar", "lemon juice": "fresh lemon juice" });
  put(sheet, 2, 0, made.title);
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Step", "Into the jug", "Weight", "Unit"],
      cells: (name, grams, index) => [index + 1, name, grams, "g"],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  put(sheet, end, 1, "Jug holds now");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  put(sheet, end, 3, "g");
  return markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[2]!, total, unitCells: columnOf(rows, 3) },
  });
}

const SHOTS = [
  ["gin 40 %", 40],
  ["white rum 40 %", 40],
  ["vodka 37.5 %", 37.5],
  ["vodka 40 %", 40],
  ["tequila 40 %", 40],
] as const;

/** What the barman pours over a scoop. */
function poured(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 2, 5, "Poured over at the bar");
  const heads = putRow(sheet, 3, 5, ["Bottle", "% vol", "A pour (g)", "Alcohol in a pour (g)"]);
  const rows = SHOTS.map(([bottle, abv], index) =>
    putRow(sheet, 4 + index, 5, [bottle, abv, random.pick([12, 15, 20, 24])]),
  );
  const alcohol = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.0" },
    content: (abv, index) => `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(rows[index]![2]!)}`,
  });
  rows.forEach(([, abv, grams], index) =>
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: alcohol[index]! }),
  );
}

/** A sorbet for grown-ups with its pours. */
function wineBar(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Friday sorbet");
  put(sheet, 0, 0, "Wine bar: sorbet of the week");
  const recipe = sorbet(kit, sheet);
  poured(kit, sheet);
  const warning = "Every pour has alcohol: not for children, in pregnancy or before driving.";
  recipe.flags.push(put(sheet, 10, 5, warning));
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Wanted texture" });
  next = tellOnce(sheet, recipe, { row: next, column: 1 }, "Allergy card:");
  note(kit, sheet, next + 1, 1, "Glasses into the freezer at five.");
}

/** A wine bar with sorbets. */
export const wineBars: readonly Layout[] = [
  { name: "wine bar, sorbet of the week and its pours", language: "en", build: wineBar },
];
