import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { larder } from "../guests/larder";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { input } from "../page";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { fact, tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Allergy note:",
  honey: "made with honey, never for babies under 12 months",
  alcohol: "made with alcohol, 18 and over, not for drivers or in pregnancy",
  nuts: "whole nuts, choking risk for small children under 5",
  egg: "raw yolk, bring to 71 °C or take pasteurised",
};

const CASKS: readonly (readonly [string, number, number])[] = [
  ["still cider, dry", 58, 74],
  ["keeved cider", 34, 48],
  ["perry", 50, 66],
  ["cider from the oak", 72, 84],
  ["apple brandy", 400, 420],
];

const WARNING = "Contains alcohol: 18 and over, not in pregnancy, not before driving.";

/** What goes in from our own casks, by volume turned into grams. */
function casks(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "From our casks into the summer sorbets");
  const heads = putRow(sheet, 2, 0, ["Cask", "ABV (% vol)", "Ladled out (g)", "Ethanol (g)"]);
  const rows = CASKS.map(([cask, from, to], index) => {
    const ladled = from > 100 ? random.whole(20, 60) : 10 * random.whole(15, 40);
    const strength = shown(random.whole(from, to) / 10, "0.0");
    const [, abv, grams] = putRow(sheet, 3 + index, 0, [cask, strength, ladled]);
    const content = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(content, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return [grams!, alcohol];
  });
  const end = 3 + CASKS.length;
  marked.formulaColumns.push({ spots: columnOf(rows, 1), heading: heads[3]!, fixed: [] });
  put(sheet, end, 0, "Ladled altogether");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 0));
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 1), "0.0");
  note(kit, sheet, end + 3, 0, "Strengths by the hydrometer, checked at bottling.");
}

const answers = (made: MadeRecipe, at: Spot, temperatureC: number): readonly Said[] => [
  { label: "Freezes from, °C", states: "freezing point", as: "formula" },
  { label: "Drop below pure water, K", states: "depression", as: "formula" },
  {
    ...{ label: "Ice in the tub, % of the sorbet", format: "0" },
    ...{ states: "ice of mix", as: "formula", temperature: at, temperatureC },
  },
  {
    ...{ label: "Water that has frozen, % of the water", format: "0" },
    ...{ states: "ice of water", as: "formula", temperature: at, temperatureC },
  },
  { label: "Water, g", states: "water", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Ethanol, g"),
];

/** A sorbet with spirit, calculated by functions. */
function sorbet(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = madeOf(kit, 1, isAlcoholic)[0]!;
  put(sheet, 0, 0, made.title);
  const celsius = -kit.random.whole(11, 15);
  const words = { label: "Dipping cabinet (°C)", bare: "Dipping cabinet", value: celsius };
  const cabinet = input(kit, sheet, { row: 1, column: 0 }, words);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Tip in", "Grams", "Where it stands"],
      cells: (name, grams) => [
        name,
        grams,
        /vodka|juice|puree|milk|cream|berries/.test(name) ? "cold store" : "press room",
      ],
    },
  );
  put(sheet, end + 1, 0, "Tub holds");
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts);
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 3, column: 4 }, answers(made, cabinet, celsius));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Aim" });
  tellBy(sheet, recipe, { row: end + 3, column: 0 }, VOICE);
  return recipe;
}

const PRESSED = [
  { name: "must of bittersweets", sugars: 13, fat: 0, protein: 0, inert: 0.5 },
  { name: "perry pear must", sugars: 15, fat: 0, protein: 0, inert: 0.5 },
  { name: "apple syrup, boiled down", sugars: 62, fat: 0, protein: 0.5, inert: 1.5 },
];

/** Our own musts, in 100 g, and an ice with them only. */
function musts(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Our musts, g in 100 g, by refractometer");
  const own = larder(kit, sheet, { row: 2, column: 0 }, PRESSED);
  const heads = putRow(sheet, 8, 0, ["Children's ice, without alcohol", "Grams"]);
  const lines = [
    ...[[PRESSED[0]!.name, 10 * kit.random.whole(50, 70)] as const],
    ...[[PRESSED[2]!.name, 10 * kit.random.whole(8, 14)] as const],
    ["sugar", 10 * kit.random.whole(3, 7)] as const,
  ];
  const rows = lines.map((each, index) => putRow(sheet, 9 + index, 0, each));
  const end = 9 + rows.length;
  put(sheet, end, heads[0]!.column, "Together");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 1));
  const both = `${span(columnOf(rows, 0))},${span(columnOf(rows, 1))},${own}`;
  const point = shown(`=RIME.FREEZINGPOINT(${both})`, "0.00");
  fact(sheet, { row: end + 1, column: 0 }, "Freezes from, °C", point);
}

/** Casks, a sorbet and the musts, a sheet each. */
function ciderSorbet(kit: Kit): void {
  const ladled = addSheet(kit.marked.book, "Casks");
  casks(kit, ladled);
  const { made, flags } = sorbet(kit, addSheet(kit.marked.book, "Tap room sorbet"));
  if (made.flagged) flags.push(put(ladled, 5 + CASKS.length, 0, WARNING));
  musts(kit, addSheet(kit.marked.book, "Musts"));
}

/** A cider maker's sorbet. */
export const ciderSorbets: readonly Layout[] = [
  { name: "cider house, casks, sorbet and musts", language: "en", build: ciderSorbet },
];
