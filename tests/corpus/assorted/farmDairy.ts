import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { upTo } from "../strollers/words";
import { aside, asTemperatures, readings } from "./words";

const VOICE: Voice = {
  lead: "Label must read: contains",
  honey: "Honey: not for infants under 12 months.",
  alcohol: "Alcohol: not for children, not in pregnancy, not before driving.",
  nuts: "Whole nuts: choking hazard, not under 5 years.",
  egg: "Raw yolk: pasteurise at 71 °C or above, or use pasteurised yolk.",
};

const OWN = {
  sugar: "beet sugar",
  "skim milk powder": "skimmed milk powder",
  honey: "clear honey",
};

const SAID: readonly Said[] = [
  { label: "Expect first ice at (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water, all told (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Solids that dissolve (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Of the water, frozen in the store at −22 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -22, decimals: 0 },
  },
  {
    label: "Ice in the whole mix in the store at −22 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -22, decimals: 0 },
  },
];

const lotOf = ({ random }: Kit): string => `${random.whole(1000, 9999)}/${random.pick(["A", "B"])}`;

/** What went into the vat, the sum over the headings. */
function vat(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = called(upTo(kit.make(1)[0]!, 30000), OWN);
  putRow(sheet, 0, 0, ["BATCH RECORD", undefined, made.title]);
  putRow(sheet, 1, 0, ["Made on", "14 Aug", "Batch", `F${kit.random.whole(200, 399)}`]);
  const { heads, rows, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Seq", "Raw material", "Lot", "Qty", undefined, "Share of batch", "Weighed", "Seen"],
      cells: (item, grams, index) => [
        ...[index + 1, item, item === "water" ? "mains" : lotOf(kit)],
        ...[shown(inUnit(grams, "kg"), "0.000"), "kg", undefined],
        ...[kit.random.pick(["MH", "JO"]), kit.random.pick(["RT", "JO"])],
      ],
      ...{ name: 1, amount: 3 },
    },
  );
  put(sheet, 3, 1, "In the vat");
  const total = sumOf(kit, sheet, { row: 3, column: 3 }, amounts, "0.000");
  put(sheet, 3, 4, "kg");
  const shares = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}`,
  });
  const unitCells = columnOf(rows, 4);
  const cells = { names, amounts, unitCells, total, alsoAmounts: shares, amountLabel: heads[3]! };
  return markRecipe(kit, made, { ...cells, unit: "kg" });
}

/** The pasteuriser's chart read by hand, and the milk that came in. */
function plant(kit: Kit, sheet: CorpusSheet, row: number): void {
  const times = ["06:40", "06:50", "07:00", "07:10", "07:20"];
  const rows = times.map((time) => [time, shown(kit.random.whole(826, 848) / 10, "0.0")]);
  const heads = aside(
    sheet,
    { row, column: 1 },
    ["Pasteuriser", "Product °C", "Ice bank °C"],
    rows,
  );
  const spots = times.map((_, index) => ({ ...heads[1]!, row: row + 1 + index }));
  asTemperatures(kit, heads[1]!, spots);
  readings(kit, sheet, heads[2]!, { count: times.length, from: 0, to: 3, by: 2 });
  aside(
    sheet,
    { row, column: 5 },
    ["Packed", "tubs", "labels used"],
    [
      ...[
        ["500 ml", kit.random.whole(20, 40), undefined],
        ["125 ml", kit.random.whole(60, 140)],
      ],
    ],
  );
}

/** A batch record of a farm with its own milk. */
function record(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "F-record");
  const recipe = vat(kit, sheet);
  const end = 6 + recipe.names.length;
  const next = say(sheet, recipe, { row: end, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Sold to be" });
  const under = tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  plant(kit, sheet, under + 1);
  note(kit, sheet, under + 8, 1, "Keep one 125 ml tub of each batch until its date has passed.");
}

/** A dairy farm that makes ice cream. */
export const farmDairies: readonly Layout[] = [
  { name: "farm dairy batch record, total over the list", language: "en", build: record },
];
