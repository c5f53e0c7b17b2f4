import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit } from "../kit";
import {
  freezesAt,
  markRecipe,
  say,
  sumOf,
  type Place,
  type Problem,
  type Said,
} from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { columnOf, stillMet } from "../kitchens/hand";
import { listed } from "../newcomers/words";
import { makeRecipe, perHundred, type MadeRecipe } from "../recipes";
import { line, type StockLine } from "../stock";
import { labelAt } from "../strollers/words";
import type { Grid, Key, Line } from "./grid";

type Shared = Readonly<Partial<Record<Key, Spot>>>;

/** Marks every sample of a grid as a solution; what is not in the grid is shared. */
export function markEach(
  kit: Kit,
  grid: Grid,
  proviso: Spot,
  shared: (index: number) => Shared,
): void {
  for (let index = 0; index < grid.count; index += 1) {
    const others = shared(index);
    const at = (key: Key): Spot => others[key] ?? grid.spot(key, index);
    const hasPoint = grid.has("freezingPoint") || others.freezingPoint !== undefined;
    kit.marked.solutions.push({
      ...{ names: [at("name")], grams: [at("mass")], molarMasses: [at("molar")] },
      particles: [at("particles")],
      moles: [at(grid.has("moles") ? "moles" : "molality")],
      ...{ water: at("water"), constant: at("constant"), depression: at("depression"), proviso },
      freezingPoint: hasPoint ? at("freezingPoint") : null,
    });
  }
}

/** What is typed of a sample, under the heading of this sheet. */
export const typed = (head: string, of: (problem: Problem) => Content, unit?: string): Line => ({
  ...{ head, cell: (_, problem) => of(problem) },
  ...(unit !== undefined && { unit }),
});

/** A formula in each sample. */
export const worked = (
  head: string,
  formula: (at: (key: Key) => string, index: number) => string,
  format: string,
  more: Pick<Line, "unit" | "fixed"> = {},
): Line => ({
  ...{ head, cell: (at, _, index) => shown(`=${formula(at, index)}`, format) },
  ...more,
});

export const molarOf = ({ solute }: Problem): Content => shown(solute.molarMass, "0.00");
export const particlesOf = ({ solute }: Problem): Content => solute.particles;

/** What a good thermometer says of a sample. */
export const reading = ({ solute, waterGrams, grams }: Problem): number =>
  freezesAt(["water", solute.en], [waterGrams, grams]);

/** Labelled rows by name; gives the cells right of the labels. */
export function block<K extends string>(
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: Readonly<Record<K, readonly Content[]>>,
): Record<K, Spot> {
  const keys = Object.keys(rows) as K[];
  const pairs = keys.map((key, at) => [key, putRow(sheet, row + at, column, rows[key])[1]!]);
  return Object.fromEntries(pairs) as Record<K, Spot>;
}

export interface IcePlan extends Place {
  readonly heads: readonly [name: string, amount: string];
  readonly total: string;
  readonly said: readonly Said[];
  readonly target: string;
  readonly lead: string;
  /** The amount stands left of the name. */
  readonly amountFirst?: true;
  /** Per cent of the mix instead of grams. */
  readonly perCent?: true;
  /** Each amount has its unit in the cell right of it. */
  readonly unitCells?: true;
  /** What is said stands so many columns to the right instead of below. */
  readonly saidRight?: number;
  /** Writes columns beside the amounts; gives those that are amounts, too. */
  readonly extra?: (amounts: readonly Spot[], total: Spot) => readonly Spot[];
}

/** The lines of a list and their sum, marked. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: IcePlan): MarkedRecipe {
  const { column, amountFirst, total, perCent } = plan;
  const unit = perCent ? "%" : "g";
  const turned = <T>(pair: readonly [T, T]) => (amountFirst ? [pair[1], pair[0]] : pair);
  const [name, amount] = amountFirst ? [1, 0] : [0, 1];
  const ends = plan.unitCells ? [unit] : [];
  const { heads, rows, names, amounts, end } = listed(sheet, made, plan, {
    ...{ heads: turned(plan.heads), name, amount },
    cells: (item, grams) => [...turned<string | number>([item, grams]), ...ends],
  });
  put(sheet, end, column + name, total);
  const sum = sumOf(kit, sheet, { row: end, column: column + amount }, amounts);
  const alsoAmounts = plan.extra?.(amounts, sum) ?? [];
  const unitCells = ends.length > 0 ? columnOf(rows, 2) : [];
  const cells = { names, amounts, alsoAmounts, amountLabel: heads[amount]!, total: sum };
  return markRecipe(kit, made, { ...cells, unitCells, unit });
}

/** A list with its sum, and what is said of it. */
export function ice(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, plan: IcePlan): MarkedRecipe {
  const { row, saidRight, said, target, lead } = plan;
  const made = plan.perCent ? stillMet(perHundred(given)) : given;
  const recipe = lines(kit, sheet, made, plan);
  const column = plan.column + (saidRight ?? 0);
  const start = saidRight === undefined ? row + made.names.length + 3 : row;
  const next = say(sheet, recipe, { row: start, column }, said);
  nameTarget(sheet, recipe, { row: next, column, label: target });
  labelAt(sheet, recipe, { row: next + 1, column }, lead);
  return recipe;
}

const MILK = { allergen: { en: "milk", de: "Milch" } };

/** A short mix of a lesson, in water or in milk. */
export function shortMix(kit: Kit, wet: "water" | "milk", title: readonly [string, string]) {
  const base: StockLine =
    wet === "milk" ? line("whole milk", "Vollmilch", 700, MILK) : line("water", "Wasser", 700);
  const [en, de] = title;
  const lines = [
    ...[base, line("sugar", "Zucker", 120)],
    ...[line("dextrose monohydrate", "Dextrose-Monohydrat", 40), line("salt", "Salz", 4)],
  ];
  return makeRecipe(kit.random, kit.language, { en, de, lines });
}
