import { put, type Content, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Place, type Problem, type Said } from "../layouts/parts";
import type { SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { tellIn, type Voice } from "../caterers/words";
import type { Grid, Key } from "../scholars/grid";
import { dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

/** Substances that teachers dissolve, too; nothing is seeded into them. */
const OTHERS: readonly Dissolved[] = [
  { en: "ethanol", de: "Ethanol", molarMass: 46.07, particles: 1, gramsPerKg: [15, 45] },
  { en: "glycerol", de: "Glycerin", molarMass: 92.09, particles: 1, gramsPerKg: [25, 60] },
  { en: "erythritol", de: "Erythrit", molarMass: 122.12, particles: 1, gramsPerKg: [25, 60] },
];

/** Substances by their English names. */
export const solutes = (...names: readonly string[]): Dissolved[] =>
  names.map((name) => [...dissolved, ...OTHERS].find(({ en }) => en === name)!);

/** How near the ideal law comes to all of some samples, as one writes it. */
export function toleranceOf({ language }: Kit, list: readonly Problem[]): string {
  const gaps = list.map(({ solute, grams, waterGrams }) => idealGap([solute], [grams], waterGrams));
  const text = tolerated(Math.max(...gaps));
  return language === "de" ? text.replace(".", ",") : text;
}

/** A sample of each substance, in one of these amounts of water. */
export const samples = (
  { random }: Kit,
  list: readonly Dissolved[],
  waters: readonly number[],
): Problem[] =>
  list.map((solute) => {
    const waterGrams = random.pick(waters);
    return { solute, waterGrams, grams: gramsOf(random, solute, waterGrams) };
  });

/** One substance, more of it each time: so many grams for a kilogram of water. */
export const series = (solute: Dissolved, water: number, perKg: readonly number[]): Problem[] =>
  perKg.map((each) => ({ solute, waterGrams: water, grams: (each * water) / 1000 }));

/** Marks the samples of a grid as solutions; what the grid has not is shared. */
export function markSamples(
  kit: Kit,
  grid: Grid,
  list: readonly Problem[],
  proviso: Spot,
  shared: Readonly<Partial<Record<Key, Spot>>>,
): void {
  list.forEach(({ solute }, index) => {
    if (!dissolved.includes(solute)) return;
    const at = (key: Key): Spot => shared[key] ?? grid.spot(key, index);
    kit.marked.solutions.push({
      ...{ names: [at("name")], grams: [at("mass")], molarMasses: [at("molar")] },
      ...{ particles: [at("particles")], moles: [at(grid.has("moles") ? "moles" : "molality")] },
      ...{ water: at("water"), constant: at("constant"), depression: at("depression"), proviso },
      freezingPoint: grid.has("freezingPoint") ? at("freezingPoint") : null,
    });
  });
}

export interface MixPlan extends Place {
  readonly heads: readonly Content[];
  readonly cells: (name: string, grams: number, index: number) => readonly Content[];
  /** The columns of the names, the amounts and the units. */
  readonly name: number;
  readonly amount: number;
  readonly unitColumn?: number;
  readonly unit?: SheetUnit;
  readonly format?: string;
  /** The label of the sum, which stands under the lines or over the headings. */
  readonly total?: string;
  readonly above?: true;
}

export interface Mix {
  readonly recipe: MarkedRecipe;
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  /** The first row under it all. */
  readonly end: number;
}

/** A mix line by line, with its sum where there is one. */
export function mix(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  plan: MixPlan,
  also: (rows: readonly (readonly Spot[])[], total: Spot | null) => readonly Spot[] = () => [],
): Mix {
  const { column, name, amount, unit = "g", unitColumn, total: label, above, format } = plan;
  const { heads, rows, names, amounts, end } = listed(sheet, made, plan, plan);
  const row = above ? plan.row - 1 : end;
  if (label !== undefined) put(sheet, row, column + name, label);
  const place = { row, column: column + amount };
  const total = label === undefined ? null : sumOf(kit, sheet, place, amounts, format);
  const unitCells = unitColumn === undefined ? [] : columnOf(rows, unitColumn);
  const lines = { names, amounts, unitCells, unit, total, amountLabel: heads[amount]! };
  const recipe = markRecipe(kit, made, { ...lines, alsoAmounts: also(rows, total) });
  return { recipe, heads, rows, end: label === undefined || above ? end : end + 1 };
}

export interface Telling {
  readonly said: readonly Said[];
  readonly target: string;
  readonly voice: Voice;
}

/** What is said of a mix, for which use it is and what the eater has to know; gives the next free row. */
export function about(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  { said, target, voice }: Telling,
): number {
  const next = say(sheet, recipe, { row, column }, said);
  nameTarget(sheet, recipe, { row: next, column, label: target });
  return tellIn(sheet, recipe, { row: next + 2, column }, voice);
}

/** Short rows of a small table that nothing reads. */
export const small = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): void =>
  rows.forEach((cells, down) =>
    cells.forEach((content, right) => {
      if (content !== undefined) put(sheet, row + down, column + right, content);
    }),
  );
