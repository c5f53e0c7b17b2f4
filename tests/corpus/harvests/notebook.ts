import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { massOf, type MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Watch out:",
  honey: "honey, so not for babies under 12 months.",
  alcohol: "alcohol, so not for the children, not when pregnant and not before driving.",
  nuts: "whole nuts, so not for little ones under 5, they choke.",
  egg: "raw egg yolk, so warm the mix to 71 °C or get pasteurised yolk.",
};

const OCCASIONS = ["Birthdays", "Sundays", "When Gran comes", "Barbecue", "School holidays"];

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Goes icy below", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Sugars altogether", inCell: "% of the mix", states: "sugar share", as: "typed" },
  ...ofAlcohol(made, "Pure alcohol", "g"),
  {
    label: "Frozen part of its water at −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** A recipe under the one before; gives the row for the next. */
function entry(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): number {
  put(sheet, row, 0, made.title.toUpperCase());
  put(sheet, row, 2, `${kit.random.pick(OCCASIONS)}, ${Math.round(massOf(made) / 60)} scoops`);
  const { heads, names, amounts, rows, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["How much", undefined, "Of what"],
      cells: (item, grams) => [grams, "g", item],
      ...{ name: 2, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "in the bowl"]);
  const unitCells = columnOf(rows, 1);
  const cells = { names, amounts, unitCells, unit: "g", amountLabel: heads[0]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: row + 1, column: 4 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Ours is" });
  return tellIn(sheet, recipe, { row: Math.max(end, next) + 1, column: 0 }, VOICE) + 1;
}

/** Where things stand in the freezer, and how cold each drawer is. */
function drawers(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freezer");
  put(sheet, 0, 0, "Chest freezer in the garage");
  const cold = readings(kit, 4, [-21, -16]);
  const inside = ["Bread", "Peas, beans", "Ices", "Ice packs, spare bowl"];
  const { heads, columns } = table(
    sheet,
    { row: 2, column: 0 },
    ["Basket", "What is in it", "Thermometer °C"],
    inside.map((what, index) => [index + 1, what, cold[index]]),
  );
  numbersUnder(kit, heads[2]!, columns[2]!, "temperature");
  putRow(sheet, 8, 0, ["Defrosted", "October"]);
}

/** A family's ices, one under the other as they were found out. */
function notebook(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ices");
  put(sheet, 0, 0, "Our ices");
  note(kit, sheet, 1, 0, "Bowl of the machine has to be in the freezer overnight.");
  const words = { sugar: "caster sugar", "egg yolk": "egg yolks", strawberries: "strawberry" };
  let row = 3;
  for (const made of kit.make(5)) row = entry(kit, sheet, called(made, words), row);
  note(kit, sheet, row + 1, 0, "Next to try: something with plums.");
  drawers(kit);
}

/** A family that writes its ices down. */
export const notebooks: readonly Layout[] = [
  { name: "family notebook, ices under each other", language: "en", build: notebook },
];
