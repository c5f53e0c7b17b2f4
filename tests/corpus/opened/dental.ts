import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { again } from "../layouts/marking";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { trueValue } from "../marks";
import { placesOf } from "../regulars/columns";
import { withLines, type MadeRecipe } from "../recipes";
import { line } from "../stock";
import { itemsOf, temperatures } from "../strollers/words";
import { about, fill, toldBy, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Contains",
  honey: "Honey: no under-12-month-olds.",
  alcohol: "Alcohol: adults only, not in pregnancy, not before driving.",
  nuts: "Whole nuts: choking hazard for under-5s.",
  egg: "Raw egg yolk: heat to 71 °C or pasteurised.",
};

const SWAPS = [
  ["fructose", "Fruktose", "all fructose"],
  ["dextrose monohydrate", "Dextrose-Monohydrat", "all dextrose"],
  ["maple syrup", "Ahornsirup", "all maple syrup"],
] as const;

const isSugar = (en: string): boolean => /^(sugar|sucrose)$/.test(en);

/** The ice with another sweetener for its sugar, gram for gram. */
function swapped(made: MadeRecipe, [en, de, title]: (typeof SWAPS)[number]): MadeRecipe {
  const sugar = made.lines.find((each) => isSugar(each.en))?.grams ?? 0;
  const there = made.lines.find((each) => each.en === en)?.grams ?? 0;
  const others = made.lines.filter((each) => !isSugar(each.en) && each.en !== en);
  const lines = [...others, line(en, de, sugar + there)];
  return { ...stillMet(withLines(made, lines)), title };
}

interface Frame {
  readonly items: readonly Spot[];
  readonly heads: readonly Spot[];
  readonly weighed: Spot;
}

/** One version in its row; gives what was computed, read, and the gap. */
function version(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, frame: Frame) {
  const { items, heads, weighed } = frame;
  put(sheet, row, 0, made.title);
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) => put(sheet, row, 1 + item, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, row }));
  const first = 1 + items.length;
  const total = sumOf(kit, sheet, { row, column: first }, all);
  const names = at.map((item) => items[item]!);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, amountLabel: weighed, unit: "g", shared: true },
  });
  const plans = [
    { states: "freezing point", as: "formula", format: "0.0" },
    { states: "sugar per 100 g water", as: "typed", decimals: 0 },
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ] as const;
  const cells = plans.map((plan, index) => ({
    ...{ plan, label: heads[first + 1 + index]!, at: { row, column: first + 1 + index } },
  }));
  fill(sheet, recipe, cells, `${absolute(span(items))},${span(all)}`);
  const real = trueValue(made, "freezing point", null) ?? -3;
  const read = put(
    sheet,
    row,
    first + 4,
    shown(Number((real + kit.random.whole(-2, 2) / 10).toFixed(1)), "0.0"),
  );
  const computed = { ...read, column: first + 1 };
  const gap = put(sheet, row, first + 5, shown(`=${a1(read)}-${a1(computed)}`, "0.0"));
  nameTarget(sheet, recipe, { row, column: first + 6 });
  const words = toldBy(made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, row, first + 7, words));
  return [read, gap, computed, total];
}

/** A dental nurse who wants to know what becomes of an ice without white sugar. */
function dental(kit: Kit): void {
  const { marked } = kit;
  const base = about(kit.make(1)[0]!, 1000);
  const clean = base.seeded === undefined ? base : about(again(kit, base), 1000);
  const first = { ...base, title: "as in the book" };
  const versions = [first, ...SWAPS.map((swap) => swapped(clean, swap))];
  const sheet = addSheet(marked.book, "Swaps");
  put(sheet, 0, 0, `${base.title}, white sugar swapped gram for gram`);
  const names = itemsOf(versions);
  const weighed = put(sheet, 1, 0, "Everything weighed in grams");
  const heads = putRow(sheet, 2, 0, [
    ...["Version", ...names, "Sum (g)", "Freezing point, computed (°C)"],
    ...["Sugars (g per 100 g water)", "Water frozen at −18 °C (%)"],
    ...["Freezing point, probe (°C)", "Probe less computed (K)", "Suits", "Allergens and warnings"],
  ]);
  const items = heads.slice(1, 1 + names.length);
  const frame = { items, heads, weighed };
  const rows = versions.map((made, index) => version(kit, sheet, made, 3 + index, frame));
  const end = 1 + names.length;
  temperatures(kit, heads[end + 4]!, columnOf(rows, 0));
  marked.formulaColumns.push(
    { spots: columnOf(rows, 1), heading: heads[end + 5]!, fixed: [] },
    { spots: columnOf(rows, 2), heading: heads[end + 1]!, fixed: [] },
    { spots: columnOf(rows, 3), heading: heads[end]!, fixed: [] },
  );
  note(kit, sheet, 8, 0, "None of these is kind to teeth, whatever the packet says.");
}

export const dentalNurses: readonly Layout[] = [
  { name: "dental nurse, one ice and its sweeteners by rows", language: "en", build: dental },
];
