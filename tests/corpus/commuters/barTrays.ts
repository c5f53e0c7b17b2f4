import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { alcoholIn, asked, counted, warnAt } from "./words";

interface Needed {
  readonly needed: Spot;
  readonly next: number;
}

/** From the trays to the mix that they take, at the right of the sheet. */
function trays(kit: Kit, sheet: CorpusSheet): Needed {
  const { random } = kit;
  put(sheet, 2, 6, "Silicone trays");
  const at = (row: number) => [row, 6] as const;
  const holes = counted(sheet, at(3), ["Bars in a tray", random.pick([6, 8, 10])]);
  const weight = asked(kit, sheet, at(4), ["Mix for one bar", "g", random.whole(58, 84)]);
  const count = counted(sheet, at(5), ["Trays for the class", random.whole(3, 6)]);
  const lost = counted(sheet, at(6), ["Sticks to bowl and spatula (%)", random.pick([3, 4])]);
  const filled = `${a1(holes)}*${a1(weight)}*${a1(count)}`;
  const formula = `=${filled}*(1+${a1(lost)}/100)`;
  const needed = putRow(sheet, 7, 6, ["Mix needed (g)", shown(formula, "0")])[1]!;
  return { needed, next: 10 };
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Initial freezing temp. (°C)", states: "freezing point", as: "formula" },
  {
    ...{ label: "Frozen water at −18 °C (% of water)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
  {
    ...{ label: "Ice at −18 °C (% of bar)", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
  { label: "Water per kg of mix (g)", states: "water", as: "formula", format: "0" },
  { label: "Dissolved solids per kg (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...alcoholIn(made, "Alcohol per kg (g)"),
];

/** The lines per kilogram, and for the trays. */
function weighed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, needed: Spot) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Step", "Item", "For 1 kg (g)", "For the trays (g)", "Initials"],
      cells: (item, grams, index) => [index + 1, item, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "Check sum");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [needed, total] },
    content: (spot) => `=${a1(spot)}*${fixed(needed)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0");
  const lines = { names, amounts, unit: "g", amountLabel: heads[2]!, total, alsoAmounts } as const;
  return { recipe: markRecipe(kit, made, lines), end };
}

/** A bar for the class. */
function bars(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Lab ${at + 4}`);
  put(sheet, 0, 0, `Culinary arts 210, lab ${at + 4}: ${made.title} on a stick`);
  const { needed, next } = trays(kit, sheet);
  const { recipe, end } = weighed(kit, sheet, made, needed);
  const row = say(sheet, recipe, { row: next, column: 6 }, answers(made));
  nameTarget(sheet, recipe, { row, column: 6, label: "Bite we want" });
  const last = warnAt(sheet, recipe, { row: end + 2, column: 1 }, "Label must say: contains");
  note(kit, sheet, last + 1, 1, "Freeze trays empty overnight so the skin sets fast.");
}

/** Two labs of a course. */
function course(kit: Kit): void {
  const mades = kit.make(2).map((made) => called(perKilogram(made), { sugar: "white sugar" }));
  mades.forEach((made, index) => bars(kit, made, index));
}

/** Somebody who teaches at a college. */
export const barTrays: readonly Layout[] = [
  { name: "culinary college, a kilo to the trays", language: "en", build: course },
];
