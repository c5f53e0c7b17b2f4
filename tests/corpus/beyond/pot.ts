import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { formulas } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { declare, readings, table } from "./words";

/** What the cook looks up; the freezer's temperature stands in a cell. */
const said = (temperature: Spot, temperatureC: number): readonly Said[] => [
  {
    ...{ label: "Freezing pt", inCell: "°C" },
    ...{ states: "freezing point", as: "formula", format: "0.0" },
  },
  { label: "Depression", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    ...{ label: "Frozen / all water, in my freezer", percent: "format" },
    ...{ states: "ice of water", as: "formula", temperature, temperatureC },
  },
  { label: "Sugars / mix", percent: "format", states: "sugar share", as: "typed" },
];

/** Parts of one, and what they come to in the tub of the day. */
function parts(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tub: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 1 },
    {
      heads: ["Part of 1", "Tub today, g", undefined, "Stuff"],
      cells: (item, grams) => [
        shown(inUnit(grams, "fraction"), "0.000"),
        undefined,
        undefined,
        item,
      ],
      ...{ name: 3, amount: 0 },
    },
  );
  const contents = amounts.map((spot) => shown(`=${a1(spot)}*${fixed(tub)}`, "0"));
  const alsoAmounts = formulas(kit, heads[1]!, contents, { sheet, at: [5, 2], fixed: [tub] });
  put(sheet, end + 1, 0, "Σ");
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end + 1, column: 2 }, alsoAmounts, "0");
  const heading = heads[0]!;
  kit.marked.numberColumns.push({ spots: amounts, heading, total, kind: "fraction" });
  const lines = { names, amounts, alsoAmounts, amountLabel: heading, total };
  return markRecipe(kit, made, { ...lines, unit: "fraction" });
}

/** How the mix cooled in the machine, and how the last tubs went down. */
function logs(kit: Kit, sheet: CorpusSheet): void {
  const [, out] = putRow(sheet, 4, 10, ["min in the machine", "out of the spout, °C"]);
  table(
    sheet,
    { row: 5, column: 10 },
    [20, 25, 30, 35].map((minutes) => [minutes]),
  );
  readings(kit, sheet, out!, 4, [-8, -5]);
  table(sheet, { row: 11, column: 10 }, [
    ["Tub", "Opened", "Neighbours said"],
    [7, "2 May", "too sweet"],
    [8, "9 May", "good, a bit hard"],
    [9, "16 May", "more please"],
  ]);
}

/** A hobbyist's page for one mix. */
function pot(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "tub 10");
  const names = { sugar: "caster sugar", "whole milk": "full fat milk", honey: "runny honey" };
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), names);
  put(sheet, 0, 1, `Tub 10, ${made.title.toLowerCase()}`);
  note(kit, sheet, 1, 1, "weigh everything cold, whisk powders into the sugar first");
  const words = { label: "Tub holds, g", bare: "Tub holds" };
  const value = kit.random.pick([650, 700, 850]);
  const tub = input(kit, sheet, { row: 2, column: 1 }, { ...words, value });
  const celsius = kit.random.pick([-14, -16, -18]);
  const freezer = input(
    kit,
    sheet,
    { row: 2, column: 6 },
    { label: "My freezer, °C", bare: "My freezer", value: celsius },
  );
  const recipe = parts(kit, sheet, made, tub);
  const next = say(sheet, recipe, { row: 4, column: 6 }, said(freezer, celsius));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Want" });
  declare(sheet, recipe, { row: next + 2, column: 6 }, "Lid says: contains");
  logs(kit, sheet);
}

/** A notebook of someone who makes ices at the weekend. */
export const pots: readonly Layout[] = [
  { name: "hobby notebook, tub ten in parts of one", language: "en", build: pot },
];
