import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import {
  anchored,
  again,
  answer,
  hundred,
  kilos,
  markRecipe,
  namesOf,
  sumAt,
  tellAll,
} from "./marking";

interface Table {
  readonly sheet: CorpusSheet;
  /** The heading row, the row of the first trial, and the first column of ingredients. */
  readonly head: number;
  readonly first: number;
  readonly left: number;
  readonly unit: "g" | "%";
  readonly unitLabel: Spot;
  readonly sum?: string;
}

/** Trials of one recipe, the kit's own last. */
function trialsOf(kit: Kit, count: number, as: (made: MadeRecipe) => MadeRecipe): MadeRecipe[] {
  const [made] = kit.make(1);
  const before = Array.from({ length: count - 1 }, () => again(kit, made!));
  return [...before, made!].map(as);
}

/** Writes ingredients across and a trial a row; gives the recipes and the call of each. */
function table(kit: Kit, plan: Table, mades: readonly MadeRecipe[]) {
  const { sheet, head, first, left, unit } = plan;
  const items = namesOf(mades);
  const heads = putRow(sheet, head, left, items);
  if (plan.sum !== undefined) put(sheet, head, left + items.length, plan.sum);
  return mades.map((made, index) => {
    const row = first + index;
    const all = heads.map(({ column }) => ({ sheet: sheet.name, row, column }));
    const at = made.names.map((name) => items.indexOf(name));
    const amounts = at.map((step, line) => put(sheet, row, left + step, made.grams[line]));
    const right: [number, number] = [row, left + items.length];
    const total = plan.sum === undefined ? null : sumAt(kit, sheet, right, all);
    const names = at.map((step) => heads[step]!);
    const cells = { names, amounts, unit, shared: true, total, amountLabel: plan.unitLabel };
    const lines = `${anchored(span(heads))},${span(all)}`;
    return { recipe: markRecipe(kit, made, cells), lines, row };
  });
}

const markColumn = (kit: Kit, heading: Spot, recipes: readonly MarkedRecipe[]): void => {
  const spots = recipes.map(({ results }) => results[0]!.spot);
  if (recipes.every(({ results }) => results[0]?.typed === false)) {
    kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  }
};

const freezing = { states: "freezing point", as: "formula" } as const;
const measured = { states: "freezing point", as: "typed", decimals: 1 } as const;

/** Trials for a kilogram, calculated and measured. */
function germanTrials(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuche Juli");
  const mades = trialsOf(kit, 6, (made) => kilos(made));
  put(sheet, 0, 0, `Versuchsreihe ${mades[0]!.title}`);
  const unitLabel = put(sheet, 1, 0, "Einwaagen in Gramm, Thermometer auf 0,1 K");
  const plan = { sheet, head: 3, first: 4, left: 2, unit: "g", unitLabel, sum: "Summe" } as const;
  const trials = table(kit, plan, mades);
  putRow(sheet, 3, 0, ["Versuch", "Datum"]);
  const after = 2 + namesOf(mades).length + 1;
  const verdicts = ["glatt", "gut", "noch einmal"];
  trials.forEach(({ recipe, lines, row }, index) => {
    putRow(sheet, row, 0, [`V${index + 1}`, shown(46210 + index * 2, "dd.mm.yyyy")]);
    const words = "Gefrierpunkt berechnet (°C)";
    answer(sheet, recipe, [words, 3, after], [row, after], freezing, lines);
    const other = "Gefrierpunkt gemessen (°C)";
    answer(sheet, recipe, [other, 3, after + 1], [row, after + 1], measured);
    put(sheet, row, after + 2, kit.random.pick(verdicts));
  });
  put(sheet, 3, after + 2, "Urteil");
  const recipes = trials.map(({ recipe }) => recipe);
  markColumn(kit, { sheet: sheet.name, row: 3, column: after }, recipes);
  tellAll(sheet, recipes, [11, 0]);
  note(kit, sheet, 13, 0, "Jeder Versuch einen Tag gereift, dann gemessen.");
}

/** A table over a whole sheet, per cent by mass, a trial a row. */
function wholeTable(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trials");
  const mades = trialsOf(kit, 5, hundred);
  const unitLabel = put(sheet, 0, 0, "Trial (% by mass)");
  const plan = { sheet, head: 0, first: 1, left: 1, unit: "%", unitLabel, sum: "Sum" } as const;
  const trials = table(kit, plan, mades);
  const after = 1 + namesOf(mades).length + 1;
  const heads = ["Freezing point (°C)", "Frozen at −18 °C, % of water", "Allergens", "Taster"];
  putRow(sheet, 0, after, heads);
  trials.forEach(({ recipe, lines, row }, index) => {
    put(sheet, row, 0, `T-${index + 1}`);
    answer(sheet, recipe, [heads[0]!, 0, after], [row, after], freezing, lines);
    const frozen = { states: "ice of water", as: "typed", temperatureC: -18 } as const;
    answer(sheet, recipe, [heads[1]!, 0, after + 1], [row, after + 1], frozen);
    tellAll(sheet, [recipe], [row, after + 2]);
    put(sheet, row, after + 3, kit.random.pick(["morning shift", "evening shift"]));
  });
  const range = { top: 0, left: 0, bottom: mades.length, right: after + 3 };
  const columns = sheet.cells[0]!.map((cell) => cell!.content as string);
  sheet.tables.push({ name: "TrialTable", range, columns, hasTotals: false });
  const recipes = trials.map(({ recipe }) => recipe);
  markColumn(kit, { sheet: sheet.name, row: 0, column: after }, recipes);
  const remarks = addSheet(kit.marked.book, "Remarks");
  note(kit, remarks, 0, 0, "All trials churned in the small machine.");
  note(kit, remarks, 1, 0, "T-2 stood an hour too long.");
}

/** A file of values: what was measured first, then what went in. */
function exported(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Messwerte");
  const mades = trialsOf(kit, 4, (made) => kilos(made, 2));
  const unitLabel = put(sheet, 0, 0, "Versuch (Mengen in g)");
  const plan = { sheet, head: 0, first: 1, left: 4, unit: "g", unitLabel } as const;
  table(kit, plan, mades).forEach(({ recipe, row }, index) => {
    put(sheet, row, 0, `Reihe B ${index + 1}`);
    answer(sheet, recipe, ["Gefrierpunkt (°C)", 0, 1], [row, 1], measured);
    const frozen = { states: "ice of water", as: "typed", temperatureC: -14 } as const;
    answer(sheet, recipe, ["Ausgefroren bei −14 °C (% des Wassers)", 0, 2], [row, 2], frozen);
    nameTarget(sheet, recipe, { row, column: 3 });
    tellAll(sheet, [recipe], [row, 4 + namesOf(mades).length]);
  });
  put(sheet, 0, 3, "Ziel");
  put(sheet, 0, 4 + namesOf(mades).length, "Allergene/Hinweise");
}

/** Test series, one row a trial. */
export const trials: readonly Layout[] = [
  { name: "Versuchsreihe mit Messwert", language: "de", build: germanTrials },
  { name: "trials as one table", language: "en", build: wholeTable },
  { name: "Messwerte vor den Mengen", language: "de", isCsv: true, build: exported },
];
