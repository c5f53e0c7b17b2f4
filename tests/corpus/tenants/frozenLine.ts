import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { ofSpirit, readings, tellOnce } from "./words";

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Initial freezing point, °C", states: "freezing point", as: "formula" },
  { label: "Moisture, g in 100 g", states: "water", as: "typed", decimals: 1 },
  { label: "Soluble solids, g in 100 g", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Total sugars, % by weight", states: "sugar share", as: "typed" },
  {
    ...{ label: "Water frozen at −15 °C, % of the water", states: "ice of water" },
    ...{ as: "typed", temperatureC: -15 },
  },
  ...ofSpirit(made, { label: "Ethanol, g in 100 g" }),
];

/** The shares and the pilot batch beside them. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, batch: Spot) {
  const place = { row, column: 0 };
  const { heads, names, amounts, end } = listed(sheet, made, place, {
    heads: ["% by weight", "Raw material", "Pilot batch (kg)"],
    cells: (name, share) => [shown(share, "0.0"), name],
    ...{ name: 1, amount: 0 },
  });
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (share) => `=${a1(share)}/100*${fixed(batch)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.0");
  put(sheet, end, 1, "Formula total");
  sumOf(kit, sheet, { row: end, column: 2 }, weighed, "0.000");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weighed, total, amountLabel: heads[0]!, unit: "%" },
  });
}

/** One formula with its pilot batch; gives the row where the next begins. */
function formula(kit: Kit, given: MadeRecipe, top: number, batch: Spot): number {
  const sheet = kit.marked.book.sheets[0]!;
  const made = called(stillMet(perHundred(given)), { sugar: "granulated sugar" });
  putRow(sheet, top, 0, [`FD-${100 + top}`, made.title]);
  const recipe = shares(kit, sheet, made, top + 1, batch);
  const next = say(sheet, recipe, { row: top + 1, column: 4 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Texture brief" });
  const last = Math.max(recipe.total!.row + 1, next + 2);
  return tellOnce(sheet, recipe, { row: last, column: 0 }, "Declare:") + 1;
}

/** What the blast freezer's probe read during the run. */
function probe(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Hardening");
  const heads = putRow(sheet, 0, 0, ["Minutes in", "Air (°C)", "Centre of the tub (°C)"]);
  const rows = [0, 30, 60, 90, 120, 150].map((minutes, index) => {
    const centre = -5 - 2.4 * index - random.whole(0, 8) / 10;
    const air = -random.whole(290, 340) / 10;
    return putRow(sheet, 1 + index, 0, [minutes, shown(air, "0.0"), shown(centre, "0.0")]);
  });
  readings(kit, heads[1]!, columnOf(rows, 1));
  readings(kit, heads[2]!, columnOf(rows, 2));
}

/** Formulas of a maker of frozen desserts, in per cent with a pilot batch beside. */
function frozenLine(kit: Kit): void {
  const { random, marked } = kit;
  const sheet: CorpusSheet = addSheet(marked.book, "Formulas");
  put(sheet, 0, 0, "Frozen line, formulas under development");
  const words = { label: "Pilot batch size (kg)", bare: "Pilot batch size" };
  const value = random.pick([5, 8, 12.5]);
  const batch = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  let top = 3;
  for (const made of kit.make(3)) top = formula(kit, made, top, batch);
  note(kit, sheet, top, 0, "Keep two retained samples of each run.");
  probe(kit);
}

/** A food technologist at a small factory. */
export const frozenLines: readonly Layout[] = [
  { name: "frozen line, formulas with a pilot batch", language: "en", build: frozenLine },
];
