import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "../kitchens/hand";
import { beside, listed, warn } from "./words";

/** What a measuring jug of a litre of it weighs, in grams to the nearest five. */
function litreWeighs({ names, grams }: MadeRecipe): number {
  const column = (list: readonly (string | number)[]) => list.map((each) => [each]);
  const density = callFunction("DENSITY", column(names), column(grams))[0]![0];
  return typeof density === "number" ? 5 * Math.round(200 * density) : 1080;
}

/** How much mix the tubs take; gives the cell with it. */
function wanted(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot {
  const { random } = kit;
  const ask = (row: number, bare: string, unit: string, value: number, format?: string): Spot => {
    const words = { label: `${bare} (${unit})`, bare, value };
    const place = { row, column: 0 };
    return input(kit, sheet, place, { ...words, ...(format !== undefined && { format }) });
  };
  const tub = ask(2, "Mix to a tub", "L", random.pick([2.5, 4.5, 5]), "0.0");
  const litre = ask(3, "A litre of mix weighs", "g", litreWeighs(made));
  const tubs = putRow(sheet, 4, 0, ["How many tubs", random.whole(3, 8)])[1]!;
  const mix = `=${a1(tub)}*${a1(litre)}*${a1(tubs)}`;
  return putRow(sheet, 5, 0, ["Mix needed (g)", shown(mix, "0")])[1]!;
}

const KNOWN: readonly Said[] = [
  { label: "Begins freezing at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Sugars to 100 g water",
    inCell: "g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 0,
  },
  { label: "Alcohol in the trial", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  {
    ...{ label: "Ice in the whole mix at −18 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const HEADS = ["Ingredient", "Trial", undefined, "For the tubs", undefined, "Lot"];

/** The trial in grams, the tubs in kilograms beside it. */
function scaled(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const mix = wanted(kit, sheet, made);
  const place = { row: 8, column: 0 };
  const cells = (name: string, grams: number) => [name, grams, "g"];
  const { heads, rows, names, amounts, end } = listed(sheet, made, place, { heads: HEADS, cells });
  putRow(sheet, end, 0, ["Weighs in all", undefined, "g", undefined, "kg"]);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const ratio = shown(`=${a1(mix)}/${a1(total)}`, "0.00");
  const times = putRow(sheet, 6, 0, ["Times the trial", ratio])[1]!;
  const large = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [times] },
    content: (spot) => `=${a1(spot)}*${fixed(times)}/1000`,
  });
  large.forEach(({ row }) => putRow(sheet, row, 4, ["kg", `L${kit.random.whole(200, 899)}`]));
  sumOf(kit, sheet, { row: end, column: 3 }, large, "0.000");
  return markRecipe(kit, made, {
    ...{ names, amounts, unitCells: columnOf(rows, 2), alsoAmounts: large, total },
    ...{ unit: "g", amountLabel: heads[1]! },
  });
}

/** A trial from the kitchen, brought up to so many tubs. */
function tubs(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Scale-up");
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar", "skim milk powder": "SMP" });
  putRow(sheet, 0, 0, [`${made.title}: from the trial to the tubs`]);
  const recipe = scaled(kit, sheet, made);
  const isStrong = (trueValue(made, "alcohol", null) ?? 0) > 0;
  const known = KNOWN.filter(({ states }) => states !== "alcohol" || isStrong);
  const next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, known);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Goes out as" });
  const told = warn(sheet, recipe, { row: next + 2, column: 0 }, "Tub sticker: contains");
  note(kit, sheet, told, 0, "Leave two fingers of room under the lid.");
}

/** From the kitchen to the shop. */
export const scaleups: readonly Layout[] = [
  { name: "from the trial to the tubs", language: "en", build: tubs },
];
