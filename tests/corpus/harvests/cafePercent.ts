import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { given } from "../lodgers/words";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Counter card: has",
  honey: "Has honey in it: no tasters for babies under 12 months.",
  alcohol: "Has alcohol in it: not for children, pregnant guests or drivers.",
  nuts: "Has whole nuts in it: under-fives may choke on them.",
  egg: "Has raw egg yolk in it: take the mix to 71 °C or use pasteurised yolk.",
};

/** Per cent first, and what this means for the batch of the day. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batch: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["#", "What goes in", "% of mix", "Today (g)"],
      cells: (item, share, index) => [index + 1, item, shown(share, "0.0")],
      ...{ name: 1, amount: 2 },
    },
  );
  const today = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=$C$3*${a1(spot)}/100`,
  });
  put(sheet, end, 1, "adds up to");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 3 }, today, "0");
  numbersUnder(kit, heads[2]!, amounts, "per cent", total);
  const cells = { names, amounts, unit: "%", amountLabel: heads[2]!, total } as const;
  return markRecipe(kit, made, { ...cells, alsoAmounts: today });
}

/** What is known of a mix, the display's own temperature in a cell. */
function answers(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const display = kit.random.pick([-11, -12, -14]);
  const temperature = given(kit, sheet, [row, 1], ["Display set to", "°C", display]);
  const next = say(sheet, recipe, { row: row + 1, column: 1 }, [
    {
      ...{ label: "Of the water, frozen in the display", inCell: "%", states: "ice of water" },
      ...{ as: "formula", format: "0", temperature, temperatureC: display },
    },
    {
      ...{ label: "Freezing point of the mix", inCell: "°C", states: "freezing point" },
      ...{ as: "formula", format: "0.0" },
    },
    {
      ...{ label: "Sugars in 100 g of mix", inCell: "%", states: "sugar share" },
      ...{ as: "typed", decimals: 1 },
    },
    { label: "Water in 100 g of mix", inCell: "g", states: "water", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "We want it" });
  return next + 2;
}

/** A mix has a sheet. */
function mix(kit: Kit, made: MadeRecipe): void {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, `${made.title} (house mix)`);
  const size = kit.random.pick([2000, 2500, 3000, 4000]);
  const batch = given(kit, sheet, [2, 1], ["Batch today", "g", size]);
  const recipe = shares(kit, sheet, made, batch);
  const next = answers(kit, sheet, recipe, 8 + made.names.length);
  tellIn(sheet, recipe, { row: next, column: 1 }, VOICE);
}

const WEEK = ["Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const OPEN = ["11 to 5", "11 to 5", "11 to 5", "11 to 8", "10 to 8", "10 to 6"];
const SCOOPS = ["Ana", "Ben", "Ben", "Ana", "both", "Tom"];

/** Opening hours, who scoops, and how cold the display was. */
function week(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week");
  put(sheet, 0, 0, "Café hours and who scoops");
  const cold = readings(kit, WEEK.length, [-15, -10]);
  const rows = WEEK.map((day, index) => [day, OPEN[index], SCOOPS[index], cold[index]]);
  const heads = ["Day", "Open", "Scoops", "Display at opening (°C)"];
  const { heads: headings, columns } = table(sheet, { row: 2, column: 0 }, heads, rows);
  numbersUnder(kit, headings[3]!, columns[3]!, "temperature");
  putRow(sheet, 10, 0, ["Monday", "closed"]);
  note(kit, sheet, 12, 0, "Cones: order two boxes before the bank holiday.");
}

/** A café's three mixes, each in per cent with today's batch beside it. */
function cafe(kit: Kit): void {
  const words = { sugar: "caster sugar", strawberries: "strawberries, hulled" };
  for (const made of kit.make(3)) mix(kit, called(largestFirst(made), words));
  week(kit);
}

/** A café that thinks in per cent. */
export const cafePercents: readonly Layout[] = [
  { name: "café, house mixes in per cent with today's batch", language: "en", build: cafe },
];
