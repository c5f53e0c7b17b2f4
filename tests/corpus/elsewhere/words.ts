import { put, type Content, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { isAlcoholic } from "../strollers/words";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Place, type Said } from "../layouts/parts";
import type { SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed, type Listed } from "../newcomers/words";
import { labelWords, type MadeRecipe } from "../recipes";

/** How people warn in English, the lead before the allergens their own. */
export const inEnglish = (lead: string): Voice => ({
  lead,
  honey: "Honey inside, so nothing for babies under 12 months.",
  alcohol: "Alcohol inside: adults only; not when pregnant, not before driving.",
  nuts: "Whole nuts can choke children under 5.",
  egg: "Raw egg yolk: cook the mix to 71 °C or buy pasteurised yolk.",
});

/** How people warn in German. */
export const inGerman = (lead: string): Voice => ({
  lead,
  honey: "Mit Honig: nichts für Babys unter 12 Monaten.",
  alcohol: "Alkohol drin: nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse, Erstickungsgefahr: nicht für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: bis 71 °C abziehen oder pasteurisiertes verwenden.",
});

export interface OwnList extends Listed {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
}

interface OwnPlan {
  readonly heads: readonly Content[];
  readonly cells: (name: string, grams: number, index: number) => readonly Content[];
  /** Which columns hold names, amounts, and units if they do. */
  readonly name: number;
  readonly amount: number;
  readonly units?: number;
  readonly unit: SheetUnit;
  readonly total: string;
  readonly format?: string;
  /** A row for the total that is not the one below the lines. */
  readonly totalRow?: number;
  /** The same amounts in further columns; gets the lines and their total. */
  readonly also?: (list: Listed, total: Spot) => readonly Spot[];
}

/** A recipe one line below the other with its total, marked. */
export function ownList(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  place: Place,
  plan: OwnPlan,
): OwnList {
  const { name, amount, units, unit, format } = plan;
  const list = listed(sheet, made, place, plan);
  const row = plan.totalRow ?? list.end;
  put(sheet, row, place.column + name, plan.total);
  const total = sumOf(kit, sheet, { row, column: place.column + amount }, list.amounts, format);
  const recipe = markRecipe(kit, made, {
    ...{ names: list.names, amounts: list.amounts, unit, total },
    amountLabel: list.heads[amount]!,
    unitCells: units === undefined ? [] : columnOf(list.rows, units),
    alsoAmounts: plan.also?.(list, total) ?? [],
  });
  return { ...list, recipe, total };
}

/** What a kilogram costs, in cents exactly; water is free. */
export const pricePerKilo = (kit: Kit, made: MadeRecipe, index: number): number =>
  made.lines[index]!.en === "water" ? 0 : kit.random.whole(90, 1600) / 100;

/** Something said only of recipes with a spirit in them. */
export const ifAlcoholic = (made: MadeRecipe, said: Said): readonly Said[] =>
  isAlcoholic(made) ? [said] : [];

/** The allergen of one line, for a column of its own. */
export const allergenOf = (made: MadeRecipe, index: number): string | undefined =>
  made.flagged ? made.lines[index]!.allergen?.[made.language] : undefined;

/** The cautions of a recipe one below the other; gives the next free row. */
export function cautionsBelow(sheet: CorpusSheet, recipe: MarkedRecipe, { row, column }: Place) {
  if (!recipe.made.flagged) return row;
  const cautions = labelWords(recipe.made, "caution");
  recipe.flags.push(...cautions.map((each, index) => put(sheet, row + index, column, each)));
  return row + cautions.length;
}
