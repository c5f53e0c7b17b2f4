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
import { called } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { pricesOf } from "./words";

const VOICE: Voice = {
  lead: "Poster at the hatch must say",
  honey: "Honey, so not for babies under 12 months!",
  alcohol: "Contains alcohol: teachers' evening only, not children, not pregnant, not driving.",
  nuts: "Whole nuts! Small children under 5 can choke.",
  egg: "Raw egg yolk, heat it to 71 °C (or pasteurised).",
};

const WORDS = {
  ...{ sugar: "granulated sugar", "orange juice": "orange juice, pressed", water: "tap water" },
  ...{ "brewed coffee": "filter coffee", "sweet cherries": "sweet cherries, pitted" },
};

const SAID: readonly Said[] = [
  { label: "Freezing point (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Lowered by (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "All the water (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Ice, share of the whole mix at −10 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -10, decimals: 0 },
  },
];

/** Marks a sum along a row. */
function acrossSum({ marked }: Kit, sheet: CorpusSheet, parts: readonly Spot[], format: string) {
  const { row, column } = parts.at(-1)!;
  const spot = put(sheet, row, column + 1, shown(`=SUM(${span(parts)})`, format));
  marked.sums.push({ spot, parts });
  return spot;
}

/** A row of formulas, one under each amount. */
function across(
  { marked }: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  plan: {
    readonly amounts: readonly Spot[];
    readonly fixed?: readonly Spot[];
    readonly format: string;
    readonly content: (amount: Spot) => string;
  },
): Spot[] {
  const spots = plan.amounts.map((amount) =>
    put(sheet, heading.row, amount.column, shown(plan.content(amount), plan.format)),
  );
  marked.formulaColumns.push({ spots, heading, fixed: plan.fixed ?? [] });
  return spots;
}

const below = (spot: Spot, rows: number): string => a1({ ...spot, row: spot.row + rows });

/** One flavour, its ingredients from left to right; gives the row of the next. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, buckets: Spot) {
  put(sheet, top, 0, made.title);
  const right = 1 + made.names.length;
  putRow(sheet, top, right, ["TOTAL"]);
  const names = putRow(sheet, top, 1, made.names);
  const [amountLabel, bucketsLabel, , costLabel] = [
    ...["one bucket, g", "all buckets, g", "£ a kilo", "£, all buckets"],
  ].map((word, index) => put(sheet, top + 1 + index, 0, word)) as [Spot, Spot, Spot, Spot];
  const amounts = putRow(sheet, top + 1, 1, made.grams);
  const total = acrossSum(kit, sheet, amounts, "0");
  const alsoAmounts = across(kit, sheet, bucketsLabel, {
    ...{ amounts, format: "0", fixed: [buckets] },
    content: (amount) => `=${a1(amount)}*${fixed(buckets)}`,
  });
  acrossSum(kit, sheet, alsoAmounts, "0");
  putRow(sheet, top + 3, 1, pricesOf(kit, made));
  const costs = across(kit, sheet, costLabel, {
    ...{ amounts, format: "0.00" },
    content: (amount) => `=${below(amount, 1)}*${below(amount, 2)}/1000`,
  });
  acrossSum(kit, sheet, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "g", amountLabel },
  });
  const said = [...SAID, ...ofAlcohol(made, "Alcohol in one bucket (g)")];
  const next = say(sheet, recipe, { row: top + 6, column: 0 }, said);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Scooping" });
  return tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE) + 2;
}

/** Helpers at the hatch, and what was sold last summer. */
function helpers(sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, ["Hatch", "1st hour", "2nd hour", "sold last year"]);
  putRow(sheet, row + 1, 0, ["scoops", "6B", "7A", 212]);
  putRow(sheet, row + 2, 0, ["till", "Mrs Ash", "Mr Penn"]);
  putRow(sheet, row + 3, 0, ["boxes of cones", 3, 2]);
}

/** Two flavours for a school fair, each across the page. */
function schoolFair(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Summer fair");
  put(sheet, 0, 0, "Summer fair, ice hatch. Parents' kitchen group.");
  put(sheet, 1, 0, "Buckets of each");
  const buckets = put(sheet, 1, 1, kit.random.whole(2, 6));
  let row = 3;
  for (const made of kit.make(2)) row = flavour(kit, sheet, called(made, WORDS), row, buckets);
  helpers(sheet, row);
  note(kit, sheet, row + 5, 0, "Scales and buckets go back to the cookery room on Monday.");
}

/** Parents who make ice for a school fair. */
export const schoolFairs: readonly Layout[] = [
  { name: "school fair hatch, flavours across the page", language: "en", build: schoolFair },
];
