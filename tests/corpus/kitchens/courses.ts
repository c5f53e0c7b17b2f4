import { a1, addSheet, fixed, over, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { called, columnOf, perKilogram } from "./hand";

const TRAYS = ["Small tray", "Middle tray", "Large tray"];

/** What a kilogram takes, and what the trays of the class take. */
function trays(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Week 5");
  const made = called(perKilogram(kit.make(1)[0]!), { "skim milk powder": "skimmed milk powder" });
  put(sheet, 0, 0, "Gelato course, week 5");
  put(sheet, 1, 0, made.title);
  put(sheet, 3, 1, "Mix wanted (g)");
  const sizes = putRow(sheet, 3, 2, [600, 1500, 200 * random.whole(12, 20)]);
  const trayHeads = TRAYS.map((each) => `${each} (g)`);
  const heads = putRow(sheet, 4, 0, ["What", "For 1000 g (g)", ...trayHeads]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 5 + rows.length;
  put(sheet, row, 0, "all together");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const alsoAmounts = TRAYS.flatMap((_, at) => {
    const [column, size] = [2 + at, sizes[at]!];
    const spots = amounts.map((spot) =>
      put(sheet, spot.row, column, shown(`=${a1(spot)}*${fixed(size)}/1000`, "0")),
    );
    marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: [size] });
    sumOf(kit, sheet, { row, column }, spots, "0");
    return spots;
  });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total },
  });
  let next = say(sheet, recipe, { row: row + 2, column: 0 }, [
    { label: "Freezing begins at (°C)", states: "freezing point", as: "formula" },
    { label: "That is a depression of (K)", states: "depression", as: "formula" },
    { label: "Water in 1000 g of mix (g)", states: "water", as: "formula", format: "0" },
    {
      ...{ label: "Sugars to 100 g of water (g)", decimals: 1 },
      ...{ states: "sugar per 100 g water", as: "typed" },
    },
    {
      label: "Of the water, frozen at −16 °C (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -16 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "We want it to be" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next + 1, 0, "Ask the class: which tray freezes first, and why?");
}

interface Evening {
  readonly left: number;
  /** The first row under the longest list. */
  readonly below: number;
}

function evening(kit: Kit, made: MadeRecipe, { left, below }: Evening): void {
  const sheet = kit.marked.book.sheets[0]!;
  const title = put(sheet, 2, left, made.title);
  sheet.merged.push(over([title, { ...title, column: left + 2 }]));
  const heads = putRow(sheet, 3, left, ["Was", "Gramm", "% der Masse"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, left, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, below, left, "zusammen");
  const total = sumOf(kit, sheet, { row: below, column: left + 1 }, amounts);
  const shares = amounts.map((spot) =>
    put(sheet, spot.row, left + 2, shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0")),
  );
  sumOf(kit, sheet, { row: below, column: left + 2 }, shares, "0.0");
  kit.marked.formulaColumns.push({ spots: shares, heading: heads[2]!, fixed: [total] });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: below + 1, column: left }, [
    { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Zuckeranteil (%)", states: "sugar share", as: "typed" },
    { label: "Alkohol (g)", states: "alcohol", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: left, label: "gedacht als" });
  tell(kit, sheet, recipe, { row: next + 2, column: left, as: "pair" });
}

/** The evening's kinds beside each other, their sums on one line. */
function evenings(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kursabend 3");
  const mades = kit.make(3);
  const below = 5 + Math.max(...mades.map(({ names }) => names.length));
  put(sheet, 0, 0, "Kursabend 3: drei Sorten im Vergleich");
  mades.forEach((made, index) => evening(kit, made, { left: 4 * index, below }));
  const spot: Spot = put(
    sheet,
    below + 12,
    0,
    "Jede Gruppe wiegt selbst ein und notiert die Zeit.",
  );
  kit.marked.notes.push(spot);
}

/** Sheets of someone who teaches. */
export const courses: readonly Layout[] = [
  { name: "gelato course, a kilo and three trays", language: "en", build: trays },
  { name: "Kursabend, drei Sorten in einer Reihe", language: "de", build: evenings },
];
