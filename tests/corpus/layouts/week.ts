import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import {
  anchored,
  answer,
  formulas,
  kilos,
  markRecipe,
  namesOf,
  sumAt,
  tellAll,
  toldOf,
} from "./marking";

const DAYS = ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag"];
const FIRST = 5;

/** One day of the plan: its amounts, its sum and all that is said of it. */
function day(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, heads: Spot[]): void {
  const items = heads.map(({ row }) => ({ sheet: sheet.name, row, column }));
  putRow(sheet, FIRST - 2, column, [DAYS[column - 1]]);
  putRow(sheet, FIRST - 1, column, [made.title]);
  const at = made.names.map((name) =>
    heads.findIndex((_, index) => sheet.cells[FIRST + index]![0]!.content === name),
  );
  const amounts = at.map((index, line) =>
    put(sheet, FIRST + index, column, shown(inUnit(made.grams[line]!, "kg"), "0.000")),
  );
  const total = sumAt(kit, sheet, [FIRST + heads.length, column], items, "0.000");
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((index) => heads[index]!), amounts, unit: "kg", shared: true, total },
    amountLabel: { sheet: sheet.name, row: 1, column: 0 },
  });
  const below = FIRST + heads.length + 1;
  const lines = `${anchored(span(heads))},${span(items)}`;
  const freezing = { states: "freezing point", as: "formula" } as const;
  answer(sheet, recipe, ["Gefrierpunkt (°C)", below, 0], [below, column], freezing, lines);
  const frozen = { states: "ice of water", as: "typed", temperatureC: -14 } as const;
  const words = "Ausgefrorenes Wasser bei −14 °C (%)";
  answer(sheet, recipe, [words, below + 1, 0], [below + 1, column], frozen, lines);
  const target = { row: below + 2, column };
  nameTarget(sheet, recipe, target);
  const told = toldOf([made]);
  if (told !== "") recipe.flags.push(put(sheet, below + 4, column, told));
}

/** A week's varieties in columns, with what the week needs of each ingredient. */
function weekPlan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "KW 32");
  const mades = kit.make(DAYS.length).map((made) => kilos(made, kit.random.whole(4, 9)));
  put(sheet, 0, 0, "Produktionsplan Woche 32");
  put(sheet, 1, 0, "Alle Mengen in kg");
  const heads = namesOf(mades).map((name, index) => put(sheet, FIRST + index, 0, name));
  putRow(sheet, FIRST - 2, 0, ["Tag"]);
  const last = putRow(sheet, FIRST - 1, 0, ["Zutat"])[0]!;
  mades.forEach((made, index) => day(kit, sheet, made, index + 1, heads));
  const end = DAYS.length + 1;
  const heading = put(sheet, last.row, end, "Bedarf der Woche");
  const rows = heads.map(({ row }) =>
    DAYS.map((_, index) => ({ sheet: sheet.name, row, column: index + 1 })),
  );
  const needs = rows.map((parts) => shown(`=SUM(${span(parts)})`, "0.000"));
  const spots = formulas(kit, heading, needs, { sheet, at: [FIRST, end] });
  spots.forEach((spot, index) => kit.marked.sums.push({ spot, parts: rows[index]! }));
  put(sheet, FIRST + heads.length, 0, "Tagesmenge");
  sumAt(kit, sheet, [FIRST + heads.length, end], spots, "0.000");
  const below = FIRST + heads.length + 3;
  put(sheet, below, 0, "Ziel");
  const cores = DAYS.map((_, index) => put(sheet, below + 1, index + 1, -kit.random.whole(12, 16)));
  const label = put(sheet, below + 1, 0, "Kern am Abend (°C)");
  const temperatures = { spots: cores, heading: label, total: null, kind: "temperature" } as const;
  kit.marked.numberColumns.push(temperatures);
  put(sheet, below + 2, 0, "Allergene, Hinweise");
  note(kit, sheet, below + 4, 0, "Freitag nur bei trockenem Wetter.");
}

const BLOCK_DAYS = ["Mon 3 Aug", "Tue 4 Aug", "Thu 6 Aug", "Sat 8 Aug"];

/** One batch as a block of two columns, what it comes to above its lines. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number, when: string): void {
  putRow(sheet, 0, left, [when, made.title]);
  putRow(sheet, 6, left, ["what", "kg"]);
  const names = made.names.map((name, index) => put(sheet, 7 + index, left, name));
  const amounts = made.grams.map((grams, index) =>
    put(sheet, 7 + index, left + 1, shown(inUnit(grams, "kg"), "0.000")),
  );
  put(sheet, 1, left, "Batch (kg)");
  const total = sumAt(kit, sheet, [1, left + 1], amounts, "0.000");
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", total });
  const freezing = { states: "freezing point", as: "formula" } as const;
  answer(sheet, recipe, ["Freezing point (°C)", 2, left], [2, left + 1], freezing);
  const sweet = { states: "sugar share", as: "typed" } as const;
  answer(sheet, recipe, ["Sugars (% of the mix)", 3, left], [3, left + 1], sweet);
  nameTarget(sheet, recipe, { row: 4, column: left, label: "Serve as" });
  tellAll(sheet, [recipe], [8 + names.length, left]);
}

/** Four batches of a week, each in a block beside the next. */
function weekBlocks(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week 32");
  kit
    .make(BLOCK_DAYS.length)
    .map((made) => kilos(made, kit.random.whole(3, 8)))
    .forEach((made, index) => block(kit, sheet, made, index * 3, BLOCK_DAYS[index]!));
  const log = addSheet(kit.marked.book, "Hardening");
  putRow(log, 0, 0, ["Batch", "Into the freezer", "Shelf (°C)", "Batch mass (kg)"]);
  kit.marked.recipes.forEach(({ total }, index) => {
    const shelf = -kit.random.whole(16, 21);
    const mass = shown(`='Week 32'!${a1(total!)}`, "0.000");
    putRow(log, index + 1, 0, [BLOCK_DAYS[index], `${14 + index}:30`, shelf, mass]);
  });
  const spots = BLOCK_DAYS.map((_, index) => ({ sheet: log.name, row: index + 1, column: 2 }));
  const heading = { sheet: log.name, row: 0, column: 2 };
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** A week's batches side by side. */
export const week: readonly Layout[] = [
  { name: "Wochenplan, fünf Tage", language: "de", build: weekPlan },
  { name: "week of batches in blocks", language: "en", build: weekBlocks },
];
