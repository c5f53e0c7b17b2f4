import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { strip } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { readings, shares, table } from "./words";

const PLANT: Voice = {
  lead: "Allergens for the carton:",
  honey: "Print: contains honey, not suitable under 12 months.",
  alcohol: "Print: contains alcohol, not for children, in pregnancy or before driving.",
  nuts: "Print: whole nuts, choking hazard under 5 years.",
  egg: "Raw yolk in it: pasteuriser must reach 71 °C.",
};

const ANSWERS: readonly Said[] = [
  { label: "Freezing point °C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Freezing point depression K", states: "depression", as: "formula" },
  {
    label: "% of mix frozen at -12 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 1 },
  },
  {
    label: "% of water frozen at -22 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -22, decimals: 1 },
  },
];

const SHIFTS = [
  ["Shift", "Mixing", "Filling", "Cold store"],
  ["Early", "J.", "M. + T.", "A."],
  ["Late", "R.", "K.", "A."],
];

/** The weigh sheet: batch weight over the list, answers in a strip under it. */
function weighSheet(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): number {
  const heads = ["Pos.", "Raw material", "Lot", "Set kg", "Share"];
  const {
    names,
    amounts,
    heads: spots,
    end,
  } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads,
      cells: (item, grams, index) => [
        ...[index + 1, item, `L${kit.random.whole(1000, 9999)}`],
        shown(inUnit(grams, "kg"), "0.000"),
      ],
      ...{ name: 1, amount: 3 },
    },
  );
  put(sheet, 3, 1, "Batch weight (kg)");
  const total = sumOf(kit, sheet, { row: 3, column: 3 }, amounts, "0.000");
  const alsoAmounts = shares(kit, sheet, spots[4]!, amounts, { total, percent: "format" });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: spots[3]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "kg" });
  strip(sheet, recipe, { row: end + 1, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: end + 4, column: 1, label: "Texture wanted" });
  return tellIn(sheet, recipe, { row: end + 5, column: 1 }, PLANT);
}

/** A batch of a small plant with the day's readings of the cold store. */
function card(kit: Kit): void {
  const size = kit.random.pick([20, 40, 60]);
  const made = kilos(kit.make(1)[0]!, size);
  const sheet = addSheet(kit.marked.book, "Batch card");
  putRow(sheet, 0, 0, ["Batch card", undefined, undefined, "Version 7"]);
  putRow(sheet, 1, 0, ["Product", made.title, undefined, "Line 2"]);
  const next = weighSheet(kit, sheet, made);
  const end = readings(
    kit,
    sheet,
    { row: next + 1, column: 1 },
    {
      heads: ["Cold store", "Air °C", "Product °C"],
      labels: ["6:00", "10:00", "14:00", "18:00", "22:00"],
      ranges: [
        [-27, -23],
        [-23, -20],
      ],
    },
  );
  table(sheet, { row: end + 1, column: 1 }, SHIFTS);
  note(kit, sheet, end + 5, 1, "Sign and hand in at the office with the thermograph strip.");
}

/** A small plant. */
export const batchCards: readonly Layout[] = [
  { name: "small plant, batch card with lots and cold store", language: "en", build: card },
];
