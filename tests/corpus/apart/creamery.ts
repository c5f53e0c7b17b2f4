import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { hundredth, rowsOf } from "./words";

const VOICE: Voice = {
  lead: "Lid reads: contains",
  honey: "Do not feed to infants under 12 months (honey).",
  alcohol: "Contains alcohol. Not for minors, during pregnancy or before driving.",
  nuts: "Whole nuts. Choking hazard for children under 5.",
  egg: "Raw egg yolk: pasteurised only, or cook base to 71 °C.",
};

/** A pack as bought, and how much of it a kettle takes. */
function line(kit: Kit, made: MadeRecipe, index: number): Content[] {
  const { random } = kit;
  const size = random.pick([1, 2.5, 5, 10, 25]);
  const paid = Math.max(0.05, usualPrice(random, made.lines[index]!.en) * size);
  return [size, shown(Number(paid.toFixed(2)), "$0.00"), made.grams[index]];
}

/** The list; what each line costs and its part of all costs. */
function costing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 9, column: 1 },
    {
      heads: ["goes in", "pack kg", "pack price", "grams", "line cost", "of cost"],
      cells: (name, _, index) => [name, ...line(kit, made, index)],
      ...{ name: 0, amount: 3 },
    },
  );
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "$0.00" },
    content: (spot) => {
      const [size, paid] = [2, 3].map((column) => a1({ ...spot, column }));
      return `=${a1(spot)}/1000*${paid}/${size}`;
    },
  });
  put(sheet, end, 1, "kettle");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "$0.00");
  const parts = beside(kit, heads[5]!, costs, {
    ...{ sheet, format: "0%", fixed: [cost] },
    content: (spot) => `=${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: end, column: 6 }, parts, "0%");
  const lines = { names, amounts, amountLabel: heads[3]!, total, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost, end };
}

/** From the kettle to the pint that is sold. */
function pint(
  kit: Kit,
  sheet: CorpusSheet,
  row: number,
  [total, cost]: readonly [Spot, Spot],
): void {
  const { random } = kit;
  const [label, fill] = putRow(sheet, row, 1, [
    "pint is filled to (g)",
    random.pick([380, 400, 420]),
  ]);
  kit.marked.inputs.push({ label: label!, value: fill!, bare: "pint is filled to" });
  const [carton, price] = rowsOf(sheet, { row: row + 1, column: 1 }, [
    ["carton and lid", shown(random.whole(28, 46) / 100, "$0.00")],
    ["price in the case", shown(random.whole(14, 19) / 2, "$0.00")],
  ]) as [Spot, Spot];
  const [pints] = rowsOf(sheet, { row: row + 3, column: 1 }, [
    ["pints from a kettle", shown(`=${a1(total)}/${a1(fill!)}`, "0.0")],
  ]) as [Spot];
  const [whole] = rowsOf(sheet, { row: row + 4, column: 1 }, [
    ["a pint costs us", shown(`=${a1(cost)}/${a1(pints)}+${a1(carton)}`, "$0.00")],
  ]) as [Spot];
  rowsOf(sheet, { row: row + 5, column: 1 }, [
    ["stays with us", shown(`=${a1(price)}-${a1(whole)}`, "$0.00")],
  ]);
}

/** What a mix is like, along the top. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe): void {
  strip(sheet, recipe, { row: 3, column: 1 }, [
    { label: "freezes at °C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "water, g a kettle", states: "water", as: "formula", format: "0" },
    { label: "dissolved, g a kettle", states: "dissolved", as: "typed", decimals: 0 },
    {
      ...{ label: "ice at 0 °F (−18 °C), % of mix", states: "ice of mix", as: "typed" },
      ...{ temperatureC: -18, decimals: 0 },
    },
    { label: "sugar, g/100 g water", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: 6, column: 1, label: "style" });
  tellIn(sheet, recipe, { row: 7, column: 1 }, VOICE);
}

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];

/** Who is at the kettle and who at the case. */
function roster(kit: Kit, sheet: CorpusSheet): void {
  const columns = ["day", "kettle", "case", "open"];
  putRow(sheet, 9, 9, columns);
  const range = { top: 9, left: 9, bottom: 9 + DAYS.length, right: 12 };
  sheet.tables.push({ name: "roster", range, columns, hasTotals: false });
  DAYS.forEach((day, index) => {
    const people = [kit.random.pick(["Odile", "Bram"]), kit.random.pick(["Juno", "Piet", "Alma"])];
    putRow(sheet, 10 + index, 9, [day, ...people, index < 4 ? "1 to 8 pm" : "1 to 10 pm"]);
  });
}

function creamery(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "costing");
  const made = called(upTo(kit.make(1)[0]!, 8000), {
    ...{ "cream 35 % fat": "cream, 35 %", sugar: "granulated sugar", "egg yolk": "yolks" },
  });
  put(sheet, 0, 1, `${made.title.toLowerCase()}, what a pint costs`);
  const { recipe, total, cost, end } = costing(kit, sheet, made);
  facts(sheet, recipe);
  pint(kit, sheet, end + 2, [total, cost]);
  roster(kit, sheet);
  hundredth(
    kit,
    sheet,
    { row: end + 2, column: 4 },
    {
      heads: ["who buys", "% of pints"],
      ...{ items: ["walk-ins", "grocers", "restaurants"], total: "all pints" },
    },
  );
  note(kit, sheet, 1, 1, "prices off the invoices in the blue folder");
}

/** A creamery's costing. */
export const creameries: readonly Layout[] = [
  { name: "small creamery, what a pint costs", language: "en", build: creamery },
];
