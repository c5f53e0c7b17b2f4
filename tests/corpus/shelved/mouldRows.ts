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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { readings, tableAt, worked } from "./words";

const VOICE: Voice = {
  lead: "Sleeve: allergens",
  honey: "Honey – keep from babies under 12 months.",
  alcohol: "Alcohol – over 18s, not when pregnant, not before driving.",
  nuts: "Whole nuts – under 5s may choke.",
  egg: "Raw yolk – pasteurised, or cooked to 71 °C.",
};

const SAID: readonly Said[] = [
  { label: "ice starts, °C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "of the water, ice at −18 °C, %",
    states: "ice of water",
    as: "typed",
    temperatureC: -18,
    decimals: 0,
  },
  { label: "sugars per 100 g water, g", states: "sugar per 100 g water", as: "typed", decimals: 0 },
  { label: "water altogether, g", states: "water", as: "typed", decimals: 0 },
];

/** A flavour across the page: its ingredients, a mix, the day's mixes. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): Spot {
  const mixes = putRow(sheet, row, 0, [made.title, "mixes today", kit.random.whole(2, 5)])[2]!;
  const names = putRow(sheet, row + 1, 2, made.names);
  const label = put(sheet, row + 2, 1, "one mix (kg)");
  const kilos = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, row + 2, 2, kilos);
  const heading = put(sheet, row + 3, 1, "today (kg)");
  const today = amounts.map((spot) =>
    put(sheet, row + 3, spot.column, shown(`=${a1(spot)}*${fixed(mixes)}`, "0.000")),
  );
  worked(kit, heading, today, [mixes]);
  const column = 2 + made.names.length;
  put(sheet, row + 1, column, "total");
  const total = sumOf(kit, sheet, { row: row + 2, column }, amounts, "0.000");
  const all = sumOf(kit, sheet, { row: row + 3, column }, today, "0.000");
  const cells = { names, amounts, alsoAmounts: today, total, amountLabel: label } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "kg" });
  strip(sheet, recipe, { row: row + 4, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: row + 4, column: 7, label: "should be" });
  tellIn(sheet, recipe, { row: row + 6, column: 2 }, VOICE);
  return all;
}

/** Moulds and the brine tank they hang in. */
function tank(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Moulds and tank");
  tableAt(sheet, { row: 2, column: 0 }, [
    ["Mould", "Lollies in it", "One lolly (ml)", "How many we own"],
    ["slim", 26, 65, 8],
    ["chubby", 18, 90, 5],
    ["rocket", 22, 75, 4],
  ]);
  const clock = ["07:30", "09:00", "10:30", "12:00", "13:30"];
  const [heads, ...rows] = tableAt(sheet, { row: 8, column: 0 }, [
    ["Time", "Tank in (°C)", "Tank out (°C)"],
    ...clock.map((time) => {
      const tenths = kit.random.whole(278, 312);
      return [time, shown(-tenths / 10, "0.0"), shown((21 - tenths) / 10, "0.0")];
    }),
  ]);
  [1, 2].forEach((at) => {
    readings(
      kit,
      heads![at]!,
      rows.map((cells) => cells[at]!),
    );
  });
  const coldest = `=MIN(${span(rows.map((cells) => cells[1]!))})`;
  putRow(sheet, 15, 0, ["coldest", shown(coldest, "0.0")]);
}

/** A day's plan of a lolly maker, each flavour across. */
function day(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Plan");
  put(sheet, 0, 0, "Lolly shed, plan of the day");
  const own = { sugar: "granulated sugar", hazelnuts: "whole hazelnuts" };
  const all = kit
    .make(3)
    .map((made, at) => flavour(kit, sheet, called(upTo(made, 6000), own), 2 + 9 * at));
  put(sheet, 30, 1, "everything today (kg)");
  put(sheet, 30, 2, shown(`=${all.map(a1).join("+")}`, "0.000"));
  note(kit, sheet, 32, 0, "Wash sticks' box out before refilling.");
  tank(kit, addSheet(kit.marked.book, "Moulds"));
}

/** A shed where lollies are made. */
export const mouldRows: readonly Layout[] = [
  { name: "lolly shed, ingredients across the day's plan", language: "en", build: day },
];
