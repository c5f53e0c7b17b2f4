import { emptyBook, put, type CorpusSheet, type Spot } from "./book";
import { mark, type MarkedBook, type MarkedRecipe } from "./marks";
import type { Chance } from "./random";
import { labelWords, makeRecipes, type MadeRecipe } from "./recipes";
import type { Language } from "./stock";

/** Changes a recipe before it is laid out; null where it cannot. */
export type Prepare = (made: MadeRecipe, random: Chance) => MadeRecipe | null;

/** What a layout builds with. */
export interface Kit {
  readonly random: Chance;
  readonly language: Language;
  readonly marked: MarkedBook;
  /** Recipes for this book; one of them prepared by the mutation, where it is of that kind. */
  readonly make: (count: number) => MadeRecipe[];
}

/** A way in which someone lays out a workbook. */
export interface Layout {
  readonly name: string;
  readonly language: Language;
  /** Whether the file holds values separated by semicolons instead of cells with formulas. */
  readonly isCsv?: true;
  readonly build: (kit: Kit) => void;
}

function prepareOne(list: MadeRecipe[], prepare: Prepare, random: Chance): MadeRecipe[] {
  for (const [index, made] of list.entries()) {
    const changed = prepare(made, random);
    if (changed !== null) return list.with(index, changed);
  }
  return list;
}

/** Lays a book out. */
export function buildBook(layout: Layout, random: Chance, prepare?: Prepare): MarkedBook {
  const { language, name } = layout;
  const marked = mark(name, { ...emptyBook(), isCsv: layout.isCsv === true });
  let pending = prepare;
  const make = (count: number): MadeRecipe[] => {
    const list = makeRecipes(random, language, count);
    if (pending === undefined) return list;
    const prepared = prepareOne(list, pending, random);
    if (prepared !== list) pending = undefined;
    return prepared;
  };
  layout.build({ random, language, marked, make });
  return marked;
}

/** Free text that nothing reads. */
export function note(
  { marked }: Kit,
  sheet: CorpusSheet,
  row: number,
  column: number,
  text: string,
) {
  marked.notes.push(put(sheet, row, column, text));
}

const ALLERGENS = { en: "Allergens", de: "Allergene" } as const;

/** Tells the eater what a recipe brings: in one sentence, or beside a label; nothing where there is nothing. */
export function tell(
  kit: Kit,
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  place: { readonly row: number; readonly column: number; readonly as: "sentence" | "pair" },
): number {
  if (!recipe.made.flagged) return place.row;
  const [allergens, cautions] = [
    labelWords(recipe.made, "allergen"),
    labelWords(recipe.made, "caution"),
  ];
  const { row, column, as } = place;
  const label = ALLERGENS[kit.language];
  const add = (...spots: Spot[]) => recipe.flags.push(...spots);
  if (as === "sentence") {
    const all = [
      ...(allergens.length > 0 ? [`${label}: ${allergens.join(", ")}.`] : []),
      ...cautions,
    ];
    if (all.length > 0) add(put(sheet, row, column, all.join(" ")));
    return all.length > 0 ? row + 1 : row;
  }
  let next = row;
  if (allergens.length > 0) {
    add(put(sheet, next, column, label), put(sheet, next, column + 1, allergens.join(", ")));
    next += 1;
  }
  for (const caution of cautions) add(put(sheet, next++, column, caution));
  return next;
}

/** Names the serving target that the recipe was made for, if there is one. */
export function nameTarget(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  place: { readonly row: number; readonly column: number; readonly label?: string },
): void {
  const { target } = recipe.made;
  if (target === null) return;
  const { row, column, label } = place;
  if (label !== undefined) put(sheet, row, column, label);
  recipe.targets.push(put(sheet, row, label === undefined ? column : column + 1, target));
}
