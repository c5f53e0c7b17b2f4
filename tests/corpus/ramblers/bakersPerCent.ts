import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, temperatures } from "../strollers/words";
import { tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Allergen line:",
  honey: "With honey, keep from infants under 12 months",
  alcohol: "With alcohol, adults only, not when pregnant, not before driving",
  nuts: "Nuts left whole, not for under-fives, choking",
  egg: "Yolks go in raw, take the mix to 71 °C or use pasteurised",
};

/** The heaviest line, which the others are counted against. */
const heaviest = ({ grams }: MadeRecipe): number => grams.indexOf(Math.max(...grams));

/** The grams of a bowl of so many kilograms, by the baker's per cent. */
function bowls(kit: Kit, list: Listed, parts: readonly Spot[], sizes: readonly Spot[]): Spot[] {
  const { sheet, heads, end } = list;
  const sum = { sheet: sheet.name, row: end, column: 2 };
  return sizes.flatMap((size, index) => {
    const spots = beside(kit, heads[3 + index]!, parts, {
      ...{ sheet, format: "0", fixed: [size, sum] },
      content: (spot) => `=${a1(spot)}/${fixed(sum)}*${fixed(size)}*1000`,
    });
    sumOf(kit, sheet, { row: end, column: 3 + index }, spots, "0");
    return spots;
  });
}

/** The mix for a kilogram, its baker's per cent and the bowls that are made from them. */
function formula(kit: Kit, sheet: CorpusSheet, sizes: readonly Spot[]): MarkedRecipe {
  const made = perKilogram(kit.make(1)[0]!);
  const list = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: [
        ...["Into the bowl", "Trial kilo (g)", "Baker's % (heaviest = 100)"],
        ...["Weekday bowl (g)", "Saturday bowl (g)"],
      ],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  const base = amounts[heaviest(made)]!;
  const parts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [base] },
    content: (spot) => `=${a1(spot)}/${fixed(base)}*100`,
  });
  put(sheet, end, 0, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, parts, "0.0");
  const alsoAmounts = [...parts, ...bowls(kit, list, parts, sizes)];
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[1]! },
  });
}

const answers = (made: MadeRecipe, cabinet: Spot, temperatureC: number): readonly Said[] => [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Water in the trial kilo", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    label: "Solids gone into solution",
    inCell: "g",
    states: "dissolved",
    as: "typed",
    decimals: 0,
  },
  {
    ...{ label: "Sugars on 100 g of water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Of its water, frozen in the case", inCell: "%", format: "0" },
    ...{ states: "ice of water", as: "formula", temperature: cabinet, temperatureC },
  },
  ...ofAlcohol(made, "Alcohol in the trial kilo", "g"),
];

const BAKES = ["first bowl", "less air", "held overnight", "new paddle", "as sold"];

/** How the trial bowls came out of the machine. */
function trials(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 6, 6, ["Bowl", "Out of the machine (°C)", "Minutes", "Crumb of it"]);
  const spots = BAKES.map((bake, index) => {
    const out = shown(-random.whole(10, 15) / 2, "0.0");
    const crumb = random.pick(["tight", "open", "sandy at the rim", "just like it should"]);
    return putRow(sheet, 7 + index, 6, [bake, out, random.whole(11, 19), crumb])[1]!;
  });
  temperatures(kit, heads[1]!, spots);
}

/** A baker writes an ice the way bread is written. */
function bakersPerCent(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Bowl sizes");
  put(sheet, 0, 0, "Ices, written like the doughs");
  const asked = (row: number, bare: string, unit: string, value: number) =>
    input(kit, sheet, { row, column: 0 }, { ...{ label: `${bare} (${unit})`, bare }, value });
  const weekday = asked(2, "Weekday bowl takes", "kg", random.pick([4, 5, 6]));
  const saturday = asked(3, "Saturday bowl takes", "kg", random.pick([9, 11, 12]));
  const celsius = -random.whole(13, 19);
  const cabinet = asked(4, "Case stands at", "°C", celsius);
  const recipe = formula(kit, sheet, [weekday, saturday]);
  put(sheet, 1, 0, recipe.made.title);
  trials(kit, sheet);
  const row = Math.max(recipe.total!.row, 12) + 2;
  const next = say(sheet, recipe, { row, column: 0 }, answers(recipe.made, cabinet, celsius));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Eaten as" });
  const last = tellBy(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Bowl never more than two thirds full.");
}

/** A bakery's own way of writing a mix. */
export const bakers: readonly Layout[] = [
  { name: "bakery freezer case, baker's per cent and bowls", language: "en", build: bakersPerCent },
];
