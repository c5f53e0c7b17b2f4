import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { beside, listed, warn } from "./words";

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];

interface Plan {
  readonly sheet: CorpusSheet;
  /** Batches of each mix in the week. */
  readonly batches: readonly Spot[];
}

/** Batches by day and mix, and how cold the walk-in was. */
function planned(kit: Kit, mades: readonly MadeRecipe[]): Plan {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Plan");
  put(sheet, 0, 0, `Production, week ${random.whole(22, 36)}`);
  const heads = putRow(sheet, 2, 0, [
    ...["Day", ...mades.map(({ title }) => title), "Batches that day", "Walk-in at seven (°C)"],
  ]);
  const rows = DAYS.map((day, index) => {
    const cells = putRow(sheet, 3 + index, 0, [day, ...mades.map(() => random.whole(1, 2))]);
    const [row, column] = [3 + index, cells.length];
    const all = sumOf(kit, sheet, { row, column }, cells.slice(1));
    return [...cells, all, put(sheet, row, column + 1, shown(-random.whole(36, 42) / 2, "0.0"))];
  });
  const end = put(sheet, 3 + DAYS.length, 0, "Batches this week").row;
  const batches = [...mades, "all"].map((_, index) =>
    sumOf(kit, sheet, { row: end, column: 1 + index }, columnOf(rows, 1 + index)),
  );
  const [all, cold] = [1, 2].map((after) => mades.length + after) as [number, number];
  marked.formulaColumns.push({ spots: columnOf(rows, all), heading: heads[all]!, fixed: [] });
  const walkIn = { spots: columnOf(rows, cold), heading: heads[cold]!, total: null } as const;
  marked.numberColumns.push({ ...walkIn, kind: "temperature" });
  return { sheet, batches };
}

interface Batch {
  readonly size: Spot;
  /** How many of them in the week. */
  readonly count: Spot;
}

const HEADS = ["Ingredient", "% of the mix", "A batch (kg)", "All week (kg)"];

/** One mix in per cent, a batch of it and the whole week; gives the weight of a batch, too. */
function shares(kit: Kit, made: MadeRecipe, top: number, { size, count }: Batch) {
  const sheet = kit.marked.book.sheets[1]!;
  put(sheet, top, 0, made.title);
  const cells = (name: string, share: number) => [name, shown(share, "0.0")];
  const place = { row: top + 1, column: 0 };
  const { heads, names, amounts, end } = listed(sheet, made, place, { heads: HEADS, cells });
  const batch = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [size] },
    content: (spot) => `=${fixed(size)}*${a1(spot)}/100`,
  });
  const week = beside(kit, heads[3]!, batch, {
    ...{ sheet, format: "0.00", fixed: [count] },
    content: (spot) => `=${a1(spot)}*Plan!${fixed(count)}`,
  });
  put(sheet, end, 0, "Adds up to");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  const weight = sumOf(kit, sheet, { row: end, column: 2 }, batch, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, week, "0.00");
  const lines = { names, amounts, alsoAmounts: [...batch, ...week], unit: "%", total } as const;
  return { weight, recipe: markRecipe(kit, made, { ...lines, amountLabel: heads[1]! }) };
}

const KNOWN: readonly Said[] = [
  { label: "Starts to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Sugars, % by weight of the mix", states: "sugar share", as: "typed" },
  {
    label: "Of its water, ice at −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** One mix with what is known of it; gives the weight of a batch and the next row. */
function mix(kit: Kit, made: MadeRecipe, top: number, counted: Batch): [Spot, number] {
  const sheet = kit.marked.book.sheets[1]!;
  const { weight, recipe } = shares(kit, made, top, counted);
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Served" });
  const row = Math.max(weight.row, next) + 1;
  return [weight, warn(sheet, recipe, { row, column: 0 }, "Contains:") + 1];
}

/** What a shop makes in a week: a plan by days, the mixes below each other on the next sheet. */
function week(kit: Kit): void {
  const { marked } = kit;
  const mades = kit.make(3).map(hundred);
  const { sheet, batches } = planned(kit, mades);
  const recipes = addSheet(marked.book, "Mixes");
  const words = { label: "Size of a batch (kg)", bare: "Size of a batch" };
  const value = kit.random.pick([2.5, 3, 4]);
  const size = input(kit, recipes, { row: 0, column: 0 }, { ...words, value });
  let top = 2;
  const weights = mades.map((made, index) => {
    const count = batches[index]!;
    const [weight, next] = mix(kit, made, top, { size, count });
    top = next;
    return `=${a1(count)}*Mixes!${a1(weight)}`;
  });
  const row = batches[0]!.row + 1;
  const made = weights.map((content) => shown(content, "0.0"));
  const kilograms = putRow(sheet, row, 0, ["Mix to make (kg)", ...made]).slice(1);
  sumOf(kit, sheet, { row, column: 1 + weights.length }, kilograms, "0.0");
  note(kit, sheet, row + 2, 0, "Fruit comes on Tuesday before eight; order by Sunday noon.");
}

/** Weeks of a shop. */
export const weeks: readonly Layout[] = [
  { name: "week's batches and the mixes", language: "en", build: week },
];
