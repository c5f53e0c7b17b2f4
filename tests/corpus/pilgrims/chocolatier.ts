import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ownBite, pastes } from "./pastes";
import { readings, warnAt } from "./words";

/** Shares and what they come to in two frames. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { random, marked } = kit;
  const list = listed(
    sheet,
    made,
    { row: 5, column: 1 },
    {
      heads: ["Ingredient", "% of weight", "Small frame, g", "Large frame, g"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  put(sheet, end, 1, "Sum");
  putRow(sheet, 4, 1, ["A frame is filled with, g"]);
  const frames = [random.pick([600, 720, 800]), random.pick([1500, 1800, 2400])];
  const alsoAmounts = frames.flatMap((grams, index) => {
    const frame = put(sheet, 4, 3 + index, grams);
    const spots = beside(kit, heads[2 + index]!, amounts, {
      ...{ sheet, format: "0.0", fixed: [frame] },
      content: (spot) => `=${a1(spot)}*${fixed(frame)}/100`,
    });
    sumOf(kit, sheet, { row: end, column: 3 + index }, spots, "0.0");
    return spots;
  });
  marked.notes.push(put(sheet, end + 1, 1, "Weigh the powders together, sieve them twice."));
  const lines = { names, amounts, alsoAmounts, unit: "%", total } as const;
  return markRecipe(kit, made, { ...lines, amountLabel: heads[1]! });
}

/** What the mix is like, at the temperature of the cabinet. */
function character(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const temperatureC = kit.random.pick([-12, -14, -16]);
  const temperature = input(
    kit,
    sheet,
    { row: 2, column: 1 },
    { label: "Cabinet set to (°C)", bare: "Cabinet set to", value: temperatureC },
  );
  const cold = { temperatureC, temperature, as: "formula", format: "0" } as const;
  const next = say(sheet, recipe, { row: 5, column: 6 }, [
    { label: "First ice at, °C", states: "freezing point", as: "formula" },
    { label: "Depression, K", states: "depression", as: "formula" },
    { label: "Water per 100 g, g", states: "water", as: "formula", format: "0.0" },
    { label: "Sugars per 100 g of water, g", states: "sugar per 100 g water", as: "formula" },
    { label: "Frozen water in the cabinet, % of all water", states: "ice of water", ...cold },
    { label: "Ice in the cabinet, % of the whole mix", states: "ice of mix", ...cold },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Bite" });
  const after = warnAt(sheet, recipe, { row: next + 1, column: 6 }, "Allergens:");
  ownBite(kit, recipe, after + 1);
}

const READ = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

/** The cabinet's readings of a week. */
function cabinet(kit: Kit, made: MadeRecipe): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Cabinet");
  put(sheet, 0, 0, `Display cabinet while ${made.title} was in it`);
  const heads = putRow(sheet, 1, 0, ["Day", "Opening, °C", "Closing, °C", "Pieces sold"]);
  const rows: Spot[][] = READ.map((day, index) =>
    putRow(sheet, 2 + index, 0, [
      ...[day, shown(-random.whole(26, 34) / 2, "0.0"), shown(-random.whole(22, 30) / 2, "0.0")],
      random.whole(8, 60),
    ]),
  );
  [1, 2].forEach((at) => readings(kit, heads[at]!, rows, at));
  sumOf(kit, sheet, { row: 8, column: 3 }, columnOf(rows, 3));
}

/** A centre for frozen bars in per cent, for two frames. */
function chocolatier(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Centre");
  const made = largestFirst(kit.make(1)[0]!);
  put(sheet, 0, 1, `${made.title}, frozen centre for dipping`);
  character(kit, sheet, shares(kit, sheet, made));
  pastes(kit);
  cabinet(kit, made);
  note(kit, sheet, 3, 1, "Dip straight from the freezer, couverture at 32 °C.");
}

/** A chocolate maker. */
export const chocolatiers: readonly Layout[] = [
  { name: "chocolate maker, frozen centre in two frames", language: "en", build: chocolatier },
];
