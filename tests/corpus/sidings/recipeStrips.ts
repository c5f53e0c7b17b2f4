import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { degrees, inEnglish, readings, smallTable } from "./words";

const VOICE = inEnglish("Allergy note:");

const OWN = {
  ...{ sugar: "white sugar", "whole milk": "full-fat milk", strawberries: "strawberries, hulled" },
  ...{ "lemon juice": "fresh lemon juice", walnuts: "walnut halves", honey: "clear honey" },
};

const SAID: readonly Said[] = [
  { label: "freezes from (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "water, whole batch (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "% of water frozen at −18 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "sugars per 100 g of water (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

/** One recipe as a strip: the ingredients across, their grams under them; gives the next free row. */
function recipeStrip(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const names = putRow(sheet, top, 1, made.names);
  const amountLabel = put(sheet, top + 1, 0, "grams");
  const amounts = putRow(sheet, top + 1, 1, made.grams);
  const column = 1 + names.length;
  put(sheet, top, column, "whole batch");
  const total = sumOf(kit, sheet, { row: top + 1, column }, amounts);
  const recipe = markRecipe(kit, made, { names, amounts, amountLabel, total, unit: "g" });
  strip(sheet, recipe, { row: top + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: top + 3, column: 6, label: "serve" });
  return tellIn(sheet, recipe, { row: top + 4, column: 1 }, VOICE) + 1;
}

const MONTHS = ["April", "May", "June", "July", "August", "September"];

/** Whose turn it is, and the freezer in the hall. */
function turns(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Turns");
  put(sheet, 0, 0, "Sunday teas: who brings the ice");
  const who = ["Wendy", "Colin", "Wendy", "Ruth and Bill", "Colin", "to be decided"];
  const { heads, rows } = smallTable(
    sheet,
    { row: 2, column: 0 },
    ["Month", "Who", "Guests last year", "Hall freezer (°C)"],
    MONTHS.map((month, at) => [
      ...[month, who[at], kit.random.whole(18, 46), degrees(kit, -20, -15)],
    ]),
  );
  readings(
    kit,
    heads[3]!,
    rows.map((cells) => cells[3]!),
  );
  put(sheet, 9, 0, "all season");
  sumOf(
    kit,
    sheet,
    { row: 9, column: 2 },
    rows.map((cells) => cells[2]!),
  );
}

/** Five recipes as strips under each other, and whose turn it is. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Recipes");
  put(sheet, 0, 0, "Ices for Sunday teas");
  note(kit, sheet, 0, 4, "Bring your own scoop, the hall has none.");
  let top = 2;
  for (const made of kit.make(5)) top = recipeStrip(kit, sheet, called(made, OWN), top) + 1;
  turns(kit);
}

/** A village hall whose helpers share their recipes. */
export const recipeStrips: readonly Layout[] = [
  { name: "village hall teas, five recipes as strips across", language: "en", build },
];
