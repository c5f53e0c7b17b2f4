import { put, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Place, type Problem } from "../layouts/parts";
import type { SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed, type Listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import type { Grid, Key } from "../scholars/grid";
import { dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { usualPrice } from "../unseen/shared";

const solute = (en: string, de: string, molarMass: number, particles: number, to: number) => ({
  ...{ en, de, molarMass, particles },
  gramsPerKg: [to / 2, to] as const,
});

/** What these people dissolve besides the usual sugars and salts. */
export const others = {
  xylitol: solute("xylitol", "Xylit", 152.15, 1, 60),
  erythritol: solute("erythritol", "Erythrit", 122.12, 1, 50),
  sorbitol: solute("sorbitol", "Sorbit", 182.17, 1, 70),
  ethanol: solute("ethanol", "Ethanol", 46.07, 1, 20),
  glycerol: solute("glycerol", "Glycerin", 92.09, 1, 40),
  calcium: solute("calcium chloride dihydrate", "Calciumchlorid-Dihydrat", 147.01, 3, 14),
  magnesium: solute("magnesium chloride hexahydrate", "Magnesiumchlorid-Hexahydrat", 203.3, 3, 16),
} as const satisfies Readonly<Record<string, Dissolved>>;

/** One of the usual solutes by its English name. */
export const usual = (name: string): Dissolved => dissolved.find(({ en }) => en === name)!;

/** A number in the sheet's language. */
export const inWords = (kit: Kit, number: string): string =>
  kit.language === "de" ? number.replace(".", ",") : number;

/** Each of some solutes in water, and how near the ideal law comes to all of them. */
export function problemsOf(
  kit: Kit,
  solutes: readonly Dissolved[],
  waters: readonly number[],
): { readonly list: readonly Problem[]; readonly tolerance: string } {
  const list = solutes.map((each): Problem => {
    const waterGrams = kit.random.pick(waters);
    return { solute: each, waterGrams, grams: gramsOf(kit.random, each, waterGrams) };
  });
  const gaps = list.map((each) => idealGap([each.solute], [each.grams], each.waterGrams));
  return { list, tolerance: inWords(kit, tolerated(Math.max(...gaps))) };
}

/** Marks those samples of a grid as solutions whose solutes are the usual ones. */
export function markUsual(
  kit: Kit,
  grid: Grid,
  list: readonly Problem[],
  proviso: Spot,
  shared: Readonly<Partial<Record<Key, Spot>>>,
): void {
  list.forEach((problem, index) => {
    if (!dissolved.includes(problem.solute)) return;
    const at = (key: Key): Spot => shared[key] ?? grid.spot(key, index);
    kit.marked.solutions.push({
      ...{ names: [at("name")], grams: [at("mass")], molarMasses: [at("molar")] },
      ...{ particles: [at("particles")], water: at("water"), constant: at("constant") },
      ...{ moles: [at(grid.has("moles") ? "moles" : "molality")], depression: at("depression") },
      ...{ freezingPoint: at("freezingPoint"), proviso },
    });
  });
}

export interface WeighedPlan {
  readonly heads: readonly Content[];
  readonly cells: (name: string, grams: number, index: number) => readonly Content[];
  readonly name: number;
  readonly amount: number;
  readonly unit: SheetUnit;
  readonly total?: string;
  readonly format?: string;
  /** The column of units after the amounts. */
  readonly units?: number;
  /** More cells of amounts in the same rows. */
  readonly also?: number;
}

export interface Weighed extends Listed {
  readonly recipe: MarkedRecipe;
}

/** A recipe's lines with their sum below, marked. */
export function weighed(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  place: Place,
  plan: WeighedPlan,
): Weighed {
  const { name, amount, unit, total, format, units, also } = plan;
  const list = listed(sheet, made, place, plan);
  const { heads, rows, names, amounts, end } = list;
  if (total !== undefined) put(sheet, end, place.column + name, total);
  const sum =
    total === undefined
      ? null
      : sumOf(kit, sheet, { row: end, column: place.column + amount }, amounts, format);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit, total: sum, amountLabel: heads[amount] ?? null },
    ...(units !== undefined && { unitCells: columnOf(rows, units) }),
    ...(also !== undefined && {
      alsoAmounts: amounts.map((spot) => ({ ...spot, column: place.column + also })),
    }),
  });
  return { ...list, recipe };
}

/** What a kilogram of everything in some recipes costs, by the names it has there. */
export function pricesOf(kit: Kit, mades: readonly MadeRecipe[]): ReadonlyMap<string, number> {
  const all = mades.flatMap(({ names, lines }) =>
    names.map((name, index) => [name, lines[index]!.en] as const),
  );
  return new Map([...new Map(all)].map(([name, en]) => [name, usualPrice(kit.random, en)]));
}

/** Typed temperatures one below the other. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  values: readonly Content[],
): void {
  const { row, column } = heading;
  const spots = values.map((value, index) => put(sheet, row + 1 + index, column, value));
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}
