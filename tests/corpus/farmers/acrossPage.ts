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
import type { MadeRecipe } from "../recipes";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "CONTAINS",
  honey: "HONEY: NOT FOR BABIES UNDER 12 MONTHS.",
  alcohol: "ALCOHOL: NOT FOR CHILDREN, PREGNANT WOMEN OR DRIVERS.",
  nuts: "WHOLE NUTS: CHOKING HAZARD UNDER 5 YEARS.",
  egg: "RAW YOLK: HEAT TO 71 °C OR USE PASTEURISED.",
};

const OWN = { water: "Water", sugar: "Caster sugar", "whole milk": "Whole milk", salt: "Sea salt" };

const SAID: readonly Said[] = [
  { label: "Freezing pt °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Depression K", states: "depression", as: "typed", decimals: 1 },
  { label: "Dissolved g", states: "dissolved", as: "formula", format: "0" },
  { label: "Ice in mix at −13 °C, %", states: "ice of mix", as: "typed", temperatureC: -13 },
  { label: "Ice in mix at −18 °C, %", states: "ice of mix", as: "typed", temperatureC: -18 },
];

/** A recipe across: what, how much, which share; then what comes of it in a strip. */
function across(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): void {
  put(sheet, row, 0, made.title.toUpperCase());
  sheet.merged.push({ top: row, left: 0, bottom: row, right: 3 });
  const [, ...names] = putRow(sheet, row + 1, 0, ["Ingredient", ...made.names]);
  const [amountLabel, ...amounts] = putRow(sheet, row + 2, 0, ["Grams", ...made.grams]);
  const end = 1 + names.length;
  put(sheet, row + 1, end, "TOTAL");
  const total = sumOf(kit, sheet, { row: row + 2, column: end }, amounts);
  const heading = put(sheet, row + 3, 0, "% of total");
  const shares = amounts.map((spot) =>
    put(sheet, row + 3, spot.column, shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0")),
  );
  kit.marked.formulaColumns.push({ spots: shares, heading, fixed: [total] });
  sumOf(kit, sheet, { row: row + 3, column: end }, shares, "0.0");
  const lines = { names, amounts, total, unit: "g", amountLabel: amountLabel! } as const;
  const recipe = markRecipe(kit, made, { ...lines, alsoAmounts: shares });
  strip(sheet, recipe, { row: row + 5, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: row + 7, column: 0, label: "Texture" });
  tellIn(sheet, recipe, { row: row + 7, column: 3 }, VOICE);
}

const PRICES = [
  ["one scoop", 3.2],
  ["two scoops", 4.8],
  ["half litre to take away", 7.5],
] as const;

/** What is charged, with the number sold and the takings. */
function takings(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Sold as", "£", "Sold Sat", "Takings £"]);
  const rows = PRICES.map(([words, pounds], index) =>
    putRow(sheet, row + 1 + index, 0, [words, shown(pounds, "0.00"), kit.random.whole(8, 70)]),
  );
  const spots: Spot[] = rows.map(([, pounds, sold]) =>
    put(sheet, sold!.row, 3, shown(`=${a1(pounds!)}*${a1(sold!)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  const end = row + 1 + rows.length;
  put(sheet, end, 0, "Saturday");
  for (const list of [rows.map((cells) => cells[2]!), spots]) {
    const spot = put(sheet, end, list[0]!.column, `=SUM(${span(list)})`);
    kit.marked.sums.push({ spot, parts: list });
  }
}

/** Three recipes across, stacked, then the till and the freezers. */
function acrossPage(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "LAMINATE ME");
  const mades = kit.make(3).map((made) => called(made, OWN));
  mades.forEach((made, index) => across(kit, sheet, made, 10 * index));
  takings(kit, sheet, 31);
  readings(
    kit,
    sheet,
    { row: 31, column: 5 },
    {
      heads: ["Freezer check", "Chest °C", "Counter °C"],
      labels: ["open", "2 pm", "close"],
      ranges: [
        [-21, -18],
        [-15, -12],
      ],
    },
  );
  note(kit, sheet, 38, 0, "Wipe the laminate, don't scrub it, the last one went blank.");
}

/** A tea room with its recipes on a laminated page. */
export const tearooms: readonly Layout[] = [
  { name: "tea room in Conwy, recipes across a laminated page", language: "en", build: acrossPage },
];
