import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { about, declare, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Menu must list:",
  honey: "Honey, not for infants under 12 months.",
  alcohol: "Contains alcohol, adults only, not in pregnancy, not for drivers.",
  nuts: "Whole nuts, choking hazard under 5 years.",
  egg: "Raw egg yolk, heat to 71 °C or use pasteurised yolk.",
};

const BOTTLES = [
  ["gin 40 %", 40],
  ["white rum 40 %", 40],
  ["vodka 37.5 %", 37.5],
  ["tequila 40 %", 40],
] as const;

/** What is poured over each coupe. */
function pours(kit: Kit, sheet: CorpusSheet, row: number, guests: Spot): void {
  const { random, marked } = kit;
  put(sheet, row, 0, "Poured over at the table");
  const heads = putRow(sheet, row + 1, 0, [
    ...["Bottle", "ABV (% vol)", "Measure (ml)", "Weighs (g)", "Pure alcohol (g)"],
    "For the party (ml)",
  ]);
  const rows = BOTTLES.map(([name, abv], index) =>
    putRow(sheet, row + 2 + index, 0, [name, abv, random.pick([10, 12.5, 15, 20])]),
  );
  const weights = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=RIME.GRAMS(${a1({ ...spot, column: 0 })},${a1(spot)},"mL")`,
  });
  const pure = beside(kit, heads[4]!, weights, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})`,
  });
  beside(kit, heads[5]!, columnOf(rows, 2), {
    ...{ sheet, format: "0", fixed: [guests] },
    content: (spot) => `=${a1(spot)}*${fixed(guests)}`,
  });
  weights.forEach((grams, index) =>
    marked.alcohols.push({ grams, abv: rows[index]![1]!, alcohol: pure[index]! }),
  );
}

/** Bar syrups, their strength told both ways. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 8, "Syrups for the bar");
  putRow(sheet, 1, 8, [
    ...["Syrup", "Sugar (g)", "Water (g)", "g sugar to 100 g water", "Sugar, % of the syrup"],
  ]);
  ["Thin", "Medium", "Rich"].forEach((name, index) => {
    const water = 500;
    const sugar = [250, 500, 1000][index]! + 10 * random.whole(-4, 4);
    const perWater = Number(((100 * sugar) / water).toFixed(1));
    const share = Number(((100 * sugar) / (sugar + water)).toFixed(1));
    const cells = putRow(sheet, 2 + index, 8, [name, sugar, water, perWater, share]);
    marked.strengths.push({
      ...{ sugar: cells[1]!, water: cells[2]!, perWater: cells[3]!, share: cells[4]! },
    });
  });
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Freezing starts (°C)", states: "freezing point", as: "formula", format: "0.0" },
  ...ofAlcohol(made, "Alcohol in the lot, pure (g)"),
  { label: "Water in the lot (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars, % by weight", states: "sugar share", as: "typed" },
  {
    label: "Part of the water frozen at −17 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -17 },
  },
];

/** The sorbet, and what a guest gets of it. */
function sorbet(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, guests: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Into the churn", "Grams", "A guest gets (g)"],
      cells: (name, grams) => [name, grams],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [guests] },
    content: (spot) => `=${a1(spot)}/${fixed(guests)}`,
  });
  put(sheet, end, 0, "Total");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.0");
  const amountLabel = heads[1]!;
  return markRecipe(kit, made, { names, amounts, total, amountLabel, alsoAmounts, unit: "g" });
}

/** A caterer for weddings in a tent: a boozy sorbet and its pours. */
function marquee(kit: Kit): void {
  const made = about(madeOf(kit, 1, isAlcoholic)[0]!, 4000);
  const sheet = addSheet(kit.marked.book, "Wedding ice");
  put(sheet, 0, 0, "Between courses");
  put(sheet, 1, 0, made.title);
  const guests = putRow(sheet, 2, 0, ["Guests", kit.random.pick([60, 80, 95])])[1]!;
  const bare = "Van freezer";
  const van = { label: `${bare} (°C)`, bare, value: -kit.random.whole(16, 19) };
  input(kit, sheet, { row: 2, column: 4 }, van);
  const recipe = sorbet(kit, sheet, made, guests);
  const next = say(sheet, recipe, { row: 5, column: 4 }, answers(made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Should be" });
  syrups(kit, sheet);
  const row = Math.max(recipe.total!.row, next) + 2;
  pours(kit, sheet, row, guests);
  recipe.flags.push(
    put(sheet, row + 6, 0, "All pours are alcohol: adults only, not pregnant, not driving."),
  );
  const last = declare(sheet, recipe, { row: row + 8, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Coupes in the van freezer by noon.");
}

export const marquees: readonly Layout[] = [
  { name: "marquee caterer, an ice, its pours and bar syrups", language: "en", build: marquee },
];
