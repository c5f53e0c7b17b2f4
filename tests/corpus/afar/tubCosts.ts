import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, temperatures, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";

const VOICE: Voice = {
  lead: "Lid sticker, in bold:",
  honey: "Honey – keep from infants under 12 months.",
  alcohol: "Alcohol – adults only; not in pregnancy; do not drive.",
  nuts: "Nuts left whole – choking risk, keep from children under 5.",
  egg: "Raw egg yolk – hold at 71 °C, or swap for pasteurised yolk.",
};

const ANSWERS: readonly Said[] = [
  { label: "FP (°C)", states: "freezing point", as: "formula", format: "0.00" },
  { label: "FP below water's by (K)", states: "depression", as: "typed" },
  { label: "Water (g)", states: "water", as: "formula", format: "0" },
  { label: "In solution (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Sugars, g to 100 g water",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "Ice at −15 °C, % of whole mix",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

interface Churn {
  readonly total: Spot;
  readonly cost: Spot;
}

/** Grams, prices and costs from left to right, totals at the right end. */
function across(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const names = putRow(sheet, 4, 1, made.names);
  const end = 1 + names.length;
  putRow(sheet, 4, end, ["TOTAL"]);
  const labels = ["Grams in one churn", "€ per kg", "€ in one churn", "Of the money (%)"];
  const heads = labels.map((label, index) => put(sheet, 5 + index, 0, label));
  put(sheet, 4, 0, "Ingredient →");
  const amounts = putRow(sheet, 5, 1, made.grams);
  const prices = putRow(
    sheet,
    6,
    1,
    made.lines.map(({ en }) => shown(usualPrice(kit.random, en), "0.00")),
  );
  const costs = amounts.map((spot, index) =>
    put(sheet, 7, 1 + index, shown(`=${a1(spot)}/1000*${a1(prices[index]!)}`, "0.00")),
  );
  const total = sumOf(kit, sheet, { row: 5, column: end }, amounts);
  const cost = sumOf(kit, sheet, { row: 7, column: end }, costs, "0.00");
  const shares = costs.map((spot) =>
    put(sheet, 8, spot.column, shown(`=100*${a1(spot)}/${fixed(cost)}`, "0.0")),
  );
  sumOf(kit, sheet, { row: 8, column: end }, shares, "0.0");
  kit.marked.formulaColumns.push(
    { spots: costs, heading: heads[2]!, fixed: [] },
    { spots: shares, heading: heads[3]!, fixed: [cost] },
  );
  const cells = { names, amounts, total, amountLabel: heads[0]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, cells), total, cost };
}

/** From the churn to the tub on the shelf. */
function tubs(kit: Kit, sheet: CorpusSheet, { total, cost }: Churn): void {
  const { random } = kit;
  put(sheet, 15, 0, "THE TUB");
  const at = (row: number) => ({ row, column: 0 });
  const fill = input(kit, sheet, at(16), {
    ...{ label: "Filled weight, g", bare: "Filled weight", value: random.pick([320, 340, 360]) },
  });
  const loss = input(kit, sheet, at(17), {
    ...{ label: "Stays in the churn, g", bare: "Stays in the churn", value: random.pick([40, 60]) },
  });
  const line = (row: number, label: string, content: string | number, format: string): Spot =>
    putRow(sheet, row, 0, [label, shown(content, format)])[1]!;
  const count = `=(${a1(total)}-${a1(loss)})/${a1(fill)}`;
  const filled = line(18, "Tubs from a churn", count, "0.0");
  const pack = line(19, "Tub, lid, sticker, €", random.whole(28, 55) / 100, "0.00");
  line(20, "A tub costs, €", `=${a1(cost)}/${a1(filled)}+${a1(pack)}`, "0.00");
}

const SHOPS = ["Farm shop", "Wholefood co-op", "Cinema", "Campsite"];

/** Who took how many, and how cold their freezers were at the last visit. */
function rounds(kit: Kit, sheet: CorpusSheet): void {
  const heads = ["Customer", "Tubs taken", "Tubs returned", "Their freezer (°C)"];
  const [, , , cold] = putRow(sheet, 16, 4, heads);
  const rows = SHOPS.map((shop, index) => {
    const counts = [kit.random.whole(12, 60), kit.random.whole(0, 4)];
    const reading = shown(-kit.random.whole(170, 225) / 10, "0.0");
    return putRow(sheet, 17 + index, 4, [shop, ...counts, reading]);
  });
  put(sheet, 21, 4, "Round in all");
  [1, 2].forEach((at) => {
    const parts = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: 21, column: 4 + at }, parts);
  });
  temperatures(
    kit,
    cold!,
    rows.map((cells) => cells[3]!),
  );
}

/** One churn laid out sideways, what a tub of it costs and who takes it. */
function tubCosts(kit: Kit): void {
  const own = { sugar: "beet sugar", "cream 35 % fat": "whipping cream 35 %" };
  const made = called(upTo(kit.make(1)[0]!, 3000), own);
  const sheet = addSheet(kit.marked.book, "Tub costing");
  putRow(sheet, 0, 0, ["Costing", made.title, undefined, "valid from", "1 May"]);
  const churn = across(kit, sheet, made);
  const said = [...ANSWERS, ...ofAlcohol(made, "Alcohol (g)")];
  strip(sheet, churn.recipe, { row: 10, column: 1 }, said);
  put(sheet, 10, 0, "Checks");
  nameTarget(sheet, churn.recipe, { row: 2, column: 0, label: "Eats as" });
  tellIn(sheet, churn.recipe, { row: 13, column: 0 }, VOICE);
  tubs(kit, sheet, churn);
  rounds(kit, sheet);
  note(kit, sheet, 24, 0, "Energy for the blast freezer is in the rent, not here.");
}

/** A maker who fills tubs for shops. */
export const tubCostings: readonly Layout[] = [
  {
    name: "tub costing, one churn sideways and the delivery round",
    language: "en",
    build: tubCosts,
  },
];
