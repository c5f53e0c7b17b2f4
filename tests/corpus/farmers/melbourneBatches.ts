import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Cabinet tag: contains",
  honey: "Contains honey, not suitable for infants under 12 months.",
  alcohol: "Contains alcohol: not for kids, if pregnant, or before you drive.",
  nuts: "Contains whole nuts: choking hazard for kids under 5.",
  egg: "Raw yolk: pasteurise at 71 °C or use pasteurised yolk.",
};

const OWN = { "whole milk": "full cream milk", sugar: "white sugar", banana: "bananas" };

const SAID: readonly Said[] = [
  { label: "freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "depression", inCell: "K", states: "depression", as: "typed" },
  {
    ...{ label: "water frozen at the blast freezer's −30 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -30, decimals: 0 },
  },
  {
    ...{ label: "sugars in 100 g of water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

const DAYS = ["Tue 7 Jan", "Thu 9 Jan", "Sat 11 Jan", "Sun 12 Jan"];

interface Base {
  readonly sheet: CorpusSheet;
  readonly amounts: readonly Spot[];
  readonly end: number;
}

/** What was made on each day: so many times the base. */
function batches(kit: Kit, { sheet, amounts, end }: Base): Spot[] {
  putRow(sheet, 2, 1, ["mixes churned"]);
  return DAYS.flatMap((day, index) => {
    const column = 4 + index;
    const heading = put(sheet, 3, column, day);
    const times = put(sheet, 2, column, kit.random.pick([0.5, 1, 1.5, 2, 3]));
    put(sheet, 4, column, "kg");
    const spots = amounts.map((spot) =>
      put(sheet, spot.row, column, shown(`=${a1(spot)}*${fixed(times)}`, "0.000")),
    );
    kit.marked.formulaColumns.push({ spots, heading, fixed: [times] });
    sumOf(kit, sheet, { row: end, column }, spots, "0.000");
    return spots;
  });
}

/** One flavour's log: the base in kilograms, then a column a day. */
function flavour(kit: Kit, made: MadeRecipe): void {
  const sheet = addSheet(kit.marked.book, made.title);
  putRow(sheet, 0, 1, [`${made.title}: base and what we churned`]);
  const heads = putRow(sheet, 3, 1, ["raw material", "base"]);
  putRow(sheet, 4, 2, ["kg"]);
  const names = made.names.map((name, index) => put(sheet, 5 + index, 1, name));
  const amounts = made.grams.map((grams, index) =>
    put(sheet, 5 + index, 2, shown(inUnit(grams, "kg"), "0.000")),
  );
  const end = 5 + names.length;
  put(sheet, end, 1, "batch weight");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  const alsoAmounts = batches(kit, { sheet, amounts, end });
  const lines = { names, amounts, alsoAmounts, total, unit: "kg", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "serve" });
  tellIn(sheet, recipe, { row: next + 2, column: 1 }, VOICE);
}

/** Three flavours' logs and the cabinet's readings. */
function melbourne(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(upTo(made, 6000), OWN));
  for (const made of mades) flavour(kit, made);
  const sheet = addSheet(kit.marked.book, "Cabinet");
  put(sheet, 0, 0, "Display cabinet, both ends");
  const end = readings(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["day", "left °C", "right °C", "blast freezer °C"],
      labels: DAYS,
      ranges: [
        [-14, -11],
        [-13, -10],
        [-32, -29],
      ],
    },
  );
  note(kit, sheet, end + 1, 0, "Right end runs warm when the arvo sun gets in, pull the blind.");
}

/** A gelato bench that logs its batches. */
export const melbourneBenches: readonly Layout[] = [
  { name: "Brunswick bench, base in kilos and a column a day", language: "en", build: melbourne },
];
