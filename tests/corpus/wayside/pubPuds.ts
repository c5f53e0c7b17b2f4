import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { lineup, PLAIN, readings } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "goes slushy at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "that's colder than water by", inCell: "K", states: "depression", as: "typed" },
  { label: "wet stuff (all the water)", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "of its water, hard at −14 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "sugars to 100 g water, g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
];

/** One pud; what it makes stands on top. */
function pud(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number): void {
  put(sheet, 2, column, made.title.toUpperCase());
  const { recipe } = lineup(kit, sheet, made, {
    ...{ row: 4, column, heads: ["weight (g)", "of what", "tick"], name: 1, amount: 0 },
    cells: (name, amount) => [amount, name],
    ...{ unit: "g", format: "0", total: { label: "MAKES, all in", above: true } },
  });
  const words = { label: "one scoop (g)", bare: "one scoop", value: kit.random.pick([55, 60, 70]) };
  const scoop = input(kit, sheet, { row: 13, column }, words);
  const count = shown(`=${a1(recipe.total!)}/${a1(scoop)}`, "0.0");
  putRow(sheet, 14, column, ["scoops out of it", count]);
  const next = say(sheet, recipe, { row: 16, column }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column, label: "how we want it" });
  tellIn(sheet, recipe, { row: 22, column }, PLAIN);
}

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** Two puds beside each other, the chest freezer's log under them. */
function pubPuds(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "puds");
  put(sheet, 0, 3, "PUB KITCHEN – frozen puds this fortnight");
  kit.make(2).forEach((made, index) => {
    pud(kit, sheet, called(made, { sugar: "granulated sugar", salt: "table salt" }), 5 * index);
  });
  note(kit, sheet, 24, 0, "Kev: if the big tub runs out swap puds, do NOT water it down");
  const heads = ["chest freezer", "opening up, °C", "last orders, °C"];
  readings(kit, sheet, { row: 26, column: 2 }, heads, DAYS, [-22, -16]);
  putRow(sheet, 26, 7, ["who's on", "lates"]);
  ["Dee", "Kev", "Dee", "Marla", "Kev", "all", "Marla"].forEach((who, index) => {
    putRow(sheet, 27 + index, 7, [who, index % 2 === 0 ? "x" : undefined]);
  });
}

/** A pub kitchen. */
export const pubKitchens: readonly Layout[] = [
  { name: "pub kitchen, what it makes on top, two puds abreast", language: "en", build: pubPuds },
];
