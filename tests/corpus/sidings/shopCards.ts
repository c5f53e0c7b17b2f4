import { addSheet, put, putRow } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { cautionsIn } from "../caterers/words";
import { say, type Said } from "../layouts/parts";
import { List } from "../list";
import type { MadeRecipe } from "../recipes";
import { degrees, inEnglish, readings, smallTable } from "./words";

const VOICE = inEnglish("");

const OWN = {
  ...{ sugar: "caster sugar", "whole milk": "whole milk 3.5 %", salt: "table salt" },
  ...{ raspberries: "frozen raspberries", "lemon juice": "lemon juice, fresh" },
};

const SAID: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  {
    ...{ label: "Sugars to 100 g water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Share of water frozen in the dipping case, −12 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** A flavour's card with one pan and what is made today. */
function card(kit: Kit, made: MadeRecipe, at: number): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, `Card ${at + 1}`);
  put(sheet, 0, 0, made.title);
  put(sheet, 0, 4, ["white lid", "red lid", "blue lid", "green lid"][at]);
  const [, factor] = putRow(sheet, 1, 0, ["Pans today", random.pick([2, 3, 4])]);
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: 3, left: 0, unit: "g", total: "Into the pasteuriser", factor: factor! },
    columns: ["name", "amount", "scaled", "allergen"],
    headings: {
      ...{ name: "Item", amount: "One pan (g)", scaled: "Today (g)", allergen: "Allergen" },
    },
  });
  const next = say(sheet, recipe, { row: totalRow + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Texture" });
  const words = cautionsIn(made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, next + 1, 0, words));
}

/** Who does what, and what the cabinets were at. */
function rota(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rota");
  put(sheet, 0, 0, "Week 27");
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
  const makers = ["Priya", "Tom", "closed for cleaning", "Priya", "Tom", "Ana", "Ana"];
  const { heads, rows } = smallTable(
    sheet,
    { row: 2, column: 0 },
    ["Day", "Makes", "Case, 9 am (°C)", "Back freezer, 9 am (°C)"],
    days.map((day, at) => [day, makers[at], degrees(kit, -14, -11), degrees(kit, -22, -18)]),
  );
  for (const at of [2, 3]) {
    readings(
      kit,
      heads[at]!,
      rows.map((cells) => cells[at]!),
    );
  }
  note(kit, sheet, 11, 0, "Swap shifts between yourselves but write it here.");
}

/** Four cards and the week's rota. */
function build(kit: Kit): void {
  kit.make(4).forEach((made, at) => card(kit, called(made, OWN), at));
  rota(kit);
}

/** A shop with laminated cards. */
export const shopCards: readonly Layout[] = [
  { name: "ice cream shop, a card for each flavour by the pan", language: "en", build },
];
