import { callFunction } from "../../src/worksheet/callFunction";
import type { CorpusBook, Spot } from "./book";
import type { MadeRecipe } from "./recipes";

/** What a number beside a recipe says of it. */
export type States =
  | "freezing point"
  | "depression"
  | "ice of water"
  | "ice of mix"
  | "water"
  | "dissolved"
  | "alcohol"
  | "sugar per 100 g water"
  | "sugar share";

export interface MarkedResult {
  readonly states: States;
  readonly spot: Spot;
  readonly label: Spot;
  readonly temperatureC: number | null;
  /** How many of the sheet's unit are one of ours: 100 for per cent, 1 else. */
  readonly scale: number;
  readonly decimals: number;
  readonly typed: boolean;
}

/** Where a recipe stands, and all that the sheet says of it. */
export interface MarkedRecipe {
  readonly made: MadeRecipe;
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  /** The same lines for more batches, or as shares, where the sheet works them out. */
  readonly alsoAmounts: readonly Spot[];
  /** The heading over, or beside, the amounts. */
  readonly amountLabel: Spot | null;
  /** The sheet's number for one gram. */
  readonly perGram: number;
  readonly unit: "g" | "kg" | "%" | "fraction";
  readonly unitCells: readonly Spot[];
  /** Whether other recipes share the names' cells. */
  readonly shared: boolean;
  readonly total: Spot | null;
  readonly results: MarkedResult[];
  readonly targets: Spot[];
  readonly flags: Spot[];
}

/** A class sheet that calculates with molar masses by hand. */
export interface MarkedSolution {
  readonly names: readonly Spot[];
  readonly grams: readonly Spot[];
  readonly molarMasses: readonly Spot[];
  readonly particles: readonly Spot[];
  readonly moles: readonly Spot[];
  /** Where the solutes are counted before their particles are, if in cells of their own. */
  readonly counted?: readonly Spot[];
  readonly water: Spot;
  readonly constant: Spot;
  readonly depression: Spot;
  readonly freezingPoint: Spot | null;
  /** Says how near the ideal law has to come here. */
  readonly proviso: Spot;
}

export interface FormulaColumn {
  readonly spots: readonly Spot[];
  readonly heading: Spot;
  /** Cells that every formula of the column reads, fixed. */
  readonly fixed: readonly Spot[];
}

/** A column of numbers under a heading, with its sum where there is one. */
export interface NumberColumn {
  readonly spots: readonly Spot[];
  readonly heading: Spot;
  readonly total: Spot | null;
  readonly kind: "per cent" | "fraction" | "temperature";
}

/** A book with the places that a mutation can touch. */
export interface MarkedBook {
  readonly layout: string;
  readonly book: CorpusBook;
  readonly recipes: MarkedRecipe[];
  readonly solutions: MarkedSolution[];
  readonly formulaColumns: FormulaColumn[];
  readonly numberColumns: NumberColumn[];
  /** Sums over some spots, some of them sums over others. */
  readonly sums: { readonly spot: Spot; readonly parts: readonly Spot[] }[];
  /** Free text that nothing reads: notes, sources, remarks. */
  readonly notes: Spot[];
  /** Labelled numbers that formulas read, and the label without its unit. */
  readonly inputs: { readonly label: Spot; readonly value: Spot; readonly bare: string }[];
  /** Lines of an own-ingredients table: the cells of each by heading. */
  readonly ownLines: Readonly<Record<string, Spot>>[];
  /** Alcohol worked out by hand: grams of drink, per cent by volume, grams of alcohol. */
  readonly alcohols: { readonly grams: Spot; readonly abv: Spot; readonly alcohol: Spot }[];
  /** Sugar solutions by hand: sugar, water, and both ways of giving their strength. */
  readonly strengths: {
    readonly sugar: Spot;
    readonly water: Spot;
    readonly perWater: Spot;
    readonly share: Spot;
  }[];
}

export const mark = (layout: string, book: CorpusBook): MarkedBook => ({
  ...{ layout, book, recipes: [], solutions: [], formulaColumns: [], numberColumns: [] },
  ...{ sums: [], notes: [], inputs: [], ownLines: [], alcohols: [], strengths: [] },
});

const first = (name: string, ...args: readonly unknown[]): number | null => {
  const value = callFunction(name, ...args)[0]?.[0];
  return typeof value === "number" ? value : null;
};

type Line = readonly (readonly (string | number)[])[];

const part = (items: Line, grams: Line, name: string): number | null =>
  first("COMPONENT", items, grams, name);

const ratio = (above: number | null, below: number | null): number | null =>
  above === null || below === null ? null : above / below;

/** What a recipe would really give, in our unit; null where there is no such number. */
export function trueValue(
  made: Pick<MadeRecipe, "names" | "grams">,
  states: States,
  temperatureC: number | null,
): number | null {
  const items = made.names.map((name) => [name]);
  const grams = made.grams.map((amount) => [amount]);
  const of = (name: string) => part(items, grams, name);
  const mass = made.grams.reduce((total, amount) => total + amount, 0);
  const answers: Readonly<Record<States, () => number | null>> = {
    "freezing point": () => first("FREEZINGPOINT", items, grams),
    depression: () => first("DEPRESSION", items, grams),
    "ice of water": () => first("ICEFRACTION", items, grams, temperatureC, "water"),
    "ice of mix": () => first("ICEFRACTION", items, grams, temperatureC, "mix"),
    water: () => of("water"),
    dissolved: () => of("dissolved solids"),
    alcohol: () => of("ethanol"),
    "sugar per 100 g water": () => ratio(100 * (of("sugars") ?? NaN), of("water")),
    "sugar share": () => ratio(of("sugars"), mass),
  };
  return answers[states]();
}
