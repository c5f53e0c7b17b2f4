import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { table } from "./words";

const VOICE: Voice = {
  lead: "Sign on the stall: contains",
  honey: "Contains honey, please don't give to babies under 12 months.",
  alcohol: "Contains alcohol, over 18s only, not if pregnant or driving.",
  nuts: "Whole nuts, under 5s may choke.",
  egg: "Raw egg yolk: cooked to 71 °C on the hob.",
};

const answers = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "First ice (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water, % of mix", states: "water", as: "typed", decimals: 1 },
  {
    label: "Ice when sold, % of mix",
    ...{ states: "ice of mix", as: "formula", format: "0", temperature, temperatureC },
  },
  {
    label: "Frozen at −20 °C, % of the water",
    ...{ states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  },
];

/** How many moulds, and so how much mix. */
function moulds(kit: Kit, sheet: CorpusSheet): Spot {
  const { random } = kit;
  const given = (row: number, bare: string, unit: string, value: number): Spot =>
    input(kit, sheet, { row, column: 0 }, { label: `${bare} (${unit})`, bare, value });
  const lollies = putRow(sheet, 2, 0, ["Lollies", random.pick([40, 60, 80])])[1]!;
  const each = given(3, "Mix in one mould", "g", random.pick([65, 75, 80]));
  return putRow(sheet, 4, 0, ["So make (g)", `=${a1(lollies)}*${a1(each)}`])[1]!;
}

const STALLS = [
  ["Market", "Day", "Pitch", "Sold last time"],
  ["Green", "Thursday", "by the oak", 52],
  ["Harbour", "Saturday", "no. 14", 78],
  ["Station", "Sunday", "entrance", 31],
];

/** Shares of the mix, and what to weigh for the moulds. */
function lollies(kit: Kit): void {
  const words = { sugar: "caster sugar", "lemon juice": "fresh lemon juice" };
  const made = called(hundred(kit.make(1)[0]!), words);
  const sheet = addSheet(kit.marked.book, "Lollies");
  put(sheet, 0, 0, `${made.title} on a stick`);
  const batch = moulds(kit, sheet);
  const sold = { label: "Box at the stall (°C)", bare: "Box at the stall" };
  const temperatureC = kit.random.pick([-16, -14, -12]);
  const box = input(kit, sheet, { row: 5, column: 0 }, { ...sold, value: temperatureC });
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      heads: ["For the sticks", "Share of the mix", "Weigh (g)"],
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.0%")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "fraction" });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  const next = say(sheet, recipe, { row: 7, column: 4 }, answers(box, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Bite" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  table(sheet, { row: end + 4, column: 0 }, STALLS);
  note(kit, sheet, end + 9, 0, "Sticks go in after 50 minutes, bag them the next morning.");
}

/** A market stall. */
export const lollySheets: readonly Layout[] = [
  { name: "market stall lollies, shares of the mix and moulds", language: "en", build: lollies },
];
