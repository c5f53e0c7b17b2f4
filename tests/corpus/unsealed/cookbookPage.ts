import { addSheet, put, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { degrees, inEnglish, readings, smallTable } from "../sidings/words";

const VOICE = inEnglish("Mind:");

const OWN = {
  ...{ sugar: "caster sugar", "whole milk": "full-fat milk", honey: "runny honey" },
  ...{ "egg yolk": "egg yolks", banana: "ripe banana", salt: "table salt" },
};

const SAID = (made: MadeRecipe): readonly Said[] => [
  { label: "starts to set at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "water in there, milk and fruit too", inCell: "g" },
    ...{ states: "water", as: "formula", format: "0" },
  },
  {
    ...{ label: "of that water frozen at −18 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ofAlcohol(made, "pure alcohol", "g"),
];

const FROM = ["from the old blue book", "Liz's", "made up in 2019", "off the radio"];
const REMARKS: Readonly<Record<string, string>> = {
  "caster sugar": "not icing sugar",
  water: "boiled, cooled",
  "lemon juice": "strained",
  "cream 35 % fat": "well chilled",
  strawberries: "weighed without stalks",
};

/** One recipe, what to weigh first; gives the row where the next may begin. */
function recipeAt(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, at: number): number {
  put(sheet, top, 1, `${at + 1}. ${made.title}`);
  put(sheet, top, 3, FROM[at]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 1 },
    {
      heads: ["grams", "of", "remember"],
      cells: (name, grams) => [grams, name, REMARKS[name]],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "altogether");
  const cells = { names, amounts, amountLabel: heads[0]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 2, column: 2 }, SAID(made));
  nameTarget(sheet, recipe, { row: next, column: 2, label: "how we like it" });
  return tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE) + 2;
}

/** What is in the freezer at the moment, and how cold it is. */
function freezer(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 2, 7, "In the freezer now");
  smallTable(
    sheet,
    { row: 3, column: 7 },
    ["tub", "what", "put in"],
    [
      ["round, green lid", "the last of no. 2", "1 August"],
      ["long one", "no. 1", "10 August"],
      ["two small", "stock, not ice!", "July"],
    ],
  );
  const { heads, rows } = smallTable(
    sheet,
    { row: 9, column: 7 },
    ["checked", "top drawer, °C", "bottom drawer, °C"],
    ["June", "July", "August"].map((month) => [
      ...[month, degrees(kit, -18, -15), degrees(kit, -21, -18)],
    ]),
  );
  for (const at of [1, 2]) {
    readings(
      kit,
      heads[at]!,
      rows.map((cells) => cells[at]!),
    );
  }
}

/** Four recipes under each other. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ices");
  put(sheet, 0, 1, "Ices worth making again");
  let top = 2;
  kit.make(4).forEach((made, at) => {
    top = recipeAt(kit, sheet, called(made, OWN), top, at);
  });
  freezer(kit, sheet);
  note(kit, sheet, 14, 7, "Churn takes 35 minutes if the bowl was in overnight.");
}

/** Somebody who keeps what turned out well. */
export const cookbookPages: readonly Layout[] = [
  { name: "home cook, ices worth making again on one long page", language: "en", build },
];
