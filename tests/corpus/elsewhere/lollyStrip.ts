import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { tellIn } from "../caterers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { inEnglish } from "./words";

const SAID: readonly Said[] = [
  { label: "Freezing pt. (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Lowered by (K)", states: "depression", as: "formula" },
  { label: "Water (g in 100 g)", states: "water", as: "formula", format: "0.0" },
  { label: "Dissolved (g in 100 g)", states: "dissolved", as: "typed", decimals: 1 },
  {
    ...{ label: "Water frozen at −18 °C (%)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** Ingredients along a row, their shares under them, and how much goes into a mould's batch. */
function along(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batch: Spot): MarkedRecipe {
  const names = putRow(sheet, 4, 1, made.names);
  const amountLabel = put(sheet, 5, 0, "% by weight");
  const amounts = putRow(
    sheet,
    5,
    1,
    made.grams.map((share) => shown(share, "0.0")),
  );
  const column = 1 + names.length;
  put(sheet, 4, 0, "Ingredient");
  put(sheet, 4, column, "Sum");
  const total = sumOf(kit, sheet, { row: 5, column }, amounts, "0.0");
  put(sheet, 6, 0, "Weigh (g)");
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, 6, spot.column, shown(`=${a1(spot)}/100*${fixed(batch)}`, "0")),
  );
  sumOf(kit, sheet, { row: 6, column }, alsoAmounts, "0");
  return markRecipe(kit, made, { names, amounts, alsoAmounts, amountLabel, total, unit: "%" });
}

const MOULDS: readonly (readonly [string, number])[] = [
  ["rocket", 26],
  ["paddle", 40],
  ["mini", 50],
];

/** Moulds in the cupboard and the bath they go into. */
function moulds(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random } = kit;
  const heads = putRow(sheet, row, 0, [
    ...["Mould", "Pieces", "In cupboard", undefined, "Brine bath run", "Bath °C in", "Bath °C out"],
  ]);
  MOULDS.forEach(([mould, pieces], index) => {
    putRow(sheet, row + 1 + index, 0, [mould, pieces, random.whole(2, 9)]);
    putRow(sheet, row + 1 + index, 4, [
      ...[index + 1, -random.whole(29, 32), -random.whole(23, 27)],
    ]);
  });
  for (const at of [5, 6]) {
    const spots = MOULDS.map((_, index) => ({
      sheet: sheet.name,
      row: row + 1 + index,
      column: at,
    }));
    temperatures(kit, heads[at]!, spots);
  }
}

/** One lolly on a strip of rows. */
function lolly(kit: Kit): void {
  const own = { sugar: "white sugar", water: "still water", salt: "sea salt" };
  const made = called(largestFirst(kit.make(1)[0]!), own);
  const sheet = addSheet(kit.marked.book, "on a stick");
  put(sheet, 0, 0, `Lolly no. ${kit.random.whole(11, 48)} · ${made.title}`);
  put(sheet, 2, 0, "Batch (g)");
  const batch = put(sheet, 2, 1, kit.random.pick([1800, 2400, 3600]));
  kit.marked.inputs.push({ label: { ...batch, column: 0 }, value: batch, bare: "Batch" });
  const recipe = along(kit, sheet, made, batch);
  strip(sheet, recipe, { row: 8, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: 11, column: 0, label: "Eats like" });
  tellIn(sheet, recipe, { row: 12, column: 0 }, inEnglish("Wrapper must say: contains"));
  moulds(kit, sheet, 15);
  note(kit, sheet, 20, 0, "Sticks in after 25 minutes, not before.");
}

/** A maker of ice lollies. */
export const lollyStrip: readonly Layout[] = [
  { name: "lolly maker, everything along rows", language: "en", build: lolly },
];
