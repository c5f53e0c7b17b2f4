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
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "Honey: do not serve to infants under 12 months.",
  alcohol: "Contains alcohol: not for children, in pregnancy or if you drive home.",
  nuts: "Whole nuts: choking hazard for under-fives.",
  egg: "Raw egg yolk: pasteurised only, or heat the mix to 71 °C.",
};

const OWN = { sugar: "granulated sugar", cream: "double cream", salt: "fine salt" };

const FACTS: readonly Fact[] = [
  ["Freezing point, °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Water in the batch, g", { states: "water", as: "formula", format: "0" }],
  ["Solids in solution, g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "% of the water frozen, home freezer at −18 °C",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  [
    "% of the mix that is ice when served at −12 °C",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

const TOP = 4;

/** The per-cent column of a recipe, with its hundred below. */
function perCent(
  kit: Kit,
  sheet: CorpusSheet,
  items: readonly Spot[],
  column: number,
  total: Spot,
) {
  const heading = { sheet: sheet.name, row: TOP - 1, column };
  const amounts = items.map((spot) => ({ ...spot, column: column - 1 }));
  const used = amounts.filter(({ row }) => sheet.cells[row]?.[column - 1] !== undefined);
  const spots = used.map((spot) =>
    put(sheet, spot.row, column, shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0")),
  );
  kit.marked.formulaColumns.push({ spots, heading, fixed: [total] });
  const parts = items.map((spot) => ({ ...spot, column }));
  const spot = put(sheet, total.row, column, shown(`=SUM(${span(parts)})`, "0.0"));
  kit.marked.sums.push({ spot, parts: spots });
}

/** Recipes beside each other, grams and per cent, what follows from them below. */
function table(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): number {
  const amountLabel = put(sheet, TOP - 1, 0, "In the pan");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const totalRow = TOP + items.length;
  put(sheet, totalRow, 0, "Weighs");
  put(sheet, totalRow + 7, 0, "Served as");
  put(sheet, totalRow + 8, 0, "Tell your guests");
  mades.forEach((made, index) => {
    const column = 1 + 2 * index;
    put(sheet, TOP - 2, column, made.title);
    putRow(sheet, TOP - 1, column, ["g", "%"]);
    const plan = {
      items,
      left: 1,
      step: 2,
      again: 1,
      unit: "g",
      format: "0",
      amountLabel,
    } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    perCent(kit, sheet, items, column + 1, recipe.total!);
    factsDown(sheet, recipe, FACTS, { row: totalRow + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: totalRow + 7, column });
    tellIn(sheet, recipe, { row: totalRow + 8, column }, VOICE);
  });
  return totalRow + 10;
}

/** A course tutor's hand-out: recipes in columns, the day's plan below. */
function saturdayHandout(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Handout 4");
  put(sheet, 0, 0, "Saturday course, hand-out 4: three mixes, one table");
  const mades = kit.make(3).map((made) => called(made, OWN));
  const row = table(kit, sheet, mades);
  putRow(sheet, row, 0, ["When", "What we do", undefined, "Freezer drawer, °C"]);
  const plan = [
    ["10.00", "Weigh and warm"],
    ["10.45", "Chill over ice"],
    ["11.30", "Churn, one batch a team"],
    ["12.30", "Harden, wash up"],
    ["14.00", "Taste and score"],
  ];
  plan.forEach((cells, index) => putRow(sheet, row + 1 + index, 0, cells));
  const values = plan.map(() => -kit.random.whole(30, 37) / 2);
  readings(kit, sheet, { sheet: sheet.name, row, column: 3 }, values);
  note(kit, sheet, row + 7, 0, "Bring a lidded tub that holds a litre; write your name on it.");
}

/** Hand-outs of a course. */
export const handouts: readonly Layout[] = [
  {
    name: "Saturday course hand-out, grams and per cent in columns",
    language: "en",
    build: saturdayHandout,
  },
];
