import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { beside } from "../newcomers/words";
import { upTo } from "../strollers/words";
import { PLAIN, readings } from "./words";

const SAID: readonly Said[] = [
  { label: "fp, deg C", states: "freezing point", as: "formula", format: "0.00" },
  { label: "fp is down by (K)", states: "depression", as: "typed", decimals: 2 },
  { label: "water in it (g)", states: "water", as: "formula", format: "0" },
  { label: "solids gone into solution (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "% of the water frozen, at −12 °C", states: "ice of water", as: "typed" },
    ...{ temperatureC: -12, decimals: 0 },
  },
];

const DATES = ["4 May", "11 May", "19 May"];

/** A day in the book: the date, what was made and weighed, then what was worked out. */
function day(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, date: string): number {
  putRow(sheet, row, 0, [date, made.title]);
  const [head, share] = putRow(sheet, row + 1, 3, ["g", "% of tub"]) as [Spot, Spot];
  put(sheet, row + 1, 2, "went in");
  const first = row + 2;
  const names = made.names.map((name, index) => put(sheet, first + index, 2, name));
  const amounts = made.grams.map((grams, index) => put(sheet, first + index, 3, grams));
  const end = first + names.length;
  put(sheet, end, 2, "tub weighs");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  const shares = beside(kit, share, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=100*${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 4 }, shares, "0.0");
  const recipe: MarkedRecipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, amountLabel: head, total, unit: "g" },
  });
  strip(sheet, recipe, { row: end + 1, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: end + 3, column: 2, label: "came out as hoped:" });
  return tellIn(sheet, recipe, { row: end + 4, column: 2 }, PLAIN) + 1;
}

/** A book kept day after day, remarks between, the hut's thermometers at the right. */
function journal(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "book");
  put(sheet, 0, 8, "ICE HUT BOOK, dates down the left");
  let row = 1;
  kit.make(DATES.length).forEach((given, index) => {
    const made = called(upTo(given, 2000), { salt: "sea salt", sugar: "fine sugar" });
    row = day(kit, sheet, made, row, DATES[index]!);
    note(
      kit,
      sheet,
      row - 1,
      1,
      ["lovely, sold by three", "rain, gave half to Jo", "again?"][index]!,
    );
    row += 1;
  });
  const heads = ["hut", "big freezer (°C)", "display (°C)"];
  const days = DATES.flatMap((date) => [`${date} am`, `${date} pm`]);
  readings(kit, sheet, { row: 3, column: 9 }, heads, days, [-20, -13]);
  putRow(sheet, 12, 9, ["open", "Fri 2–6", "Sat 10–6"]);
  putRow(sheet, 14, 9, ["price 1 scoop (£)", shown(2.5, "0.00")]);
  putRow(sheet, 15, 9, ["price 2 scoops (£)", shown(4.2, "0.00")]);
}

/** Somebody who keeps a book of an ice hut. */
export const journals: readonly Layout[] = [
  { name: "ice hut book, day under day", language: "en", build: journal },
];
