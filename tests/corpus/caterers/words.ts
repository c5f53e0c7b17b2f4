import { put, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { absolute, markRecipe, sumOf, type Place } from "../layouts/parts";
import { inUnit, type SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";

/** How somebody tells the eater what is in it. */
export type Voice = Readonly<Record<"lead" | "honey" | "alcohol" | "nuts" | "egg", string>>;

const KINDS: readonly (readonly [RegExp, Exclude<keyof Voice, "lead">])[] = [
  [/^Hon/, "honey"],
  [/alcohol|Alkohol/, "alcohol"],
  [/nuts|Nüsse/, "nuts"],
  [/yolk|Eigelb/, "egg"],
];

/** The cautions of a recipe in somebody's words. */
export function cautionsIn(made: MadeRecipe, voice: Voice): string {
  if (!made.flagged) return "";
  const said = labelWords(made, "caution").map((caution) => {
    const kind = KINDS.find(([of]) => of.test(caution))?.[1];
    return kind === undefined ? caution : voice[kind];
  });
  return said.join(" ");
}

/** The allergens of a recipe; empty where it tells none. */
export const allergensOf = (made: MadeRecipe): string =>
  made.flagged ? labelWords(made, "allergen").join(", ") : "";

/** Tells both in one cell; gives the next free row. */
export function tellIn(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  voice: Voice,
): number {
  const allergens = allergensOf(made);
  const lead = allergens === "" ? "" : `${voice.lead} ${allergens}.`;
  const words = [lead, cautionsIn(made, voice)].filter((each) => each !== "").join(" ");
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

export type Fact = readonly [label: string, plan: ResultPlan];

interface Columns {
  readonly items: readonly Spot[];
  /** Where the first recipe stands, and how far the next is from it. */
  readonly left: number;
  readonly step?: number;
  /** How far right of it the same lines stand again, worked out. */
  readonly again?: number;
  readonly unit: SheetUnit;
  readonly format: string;
  readonly amountLabel: Spot;
}

/** A recipe down its column, the names shared by all at the left. */
export function downColumn(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  at: number,
  plan: Columns,
): MarkedRecipe {
  const { items, left, step = 1, again, unit, format, amountLabel } = plan;
  const column = left + step * at;
  const listed = items.map((spot) => sheet.cells[spot.row]![spot.column]!.content);
  const names = made.names.map((name) => items[listed.indexOf(name)]!);
  const amounts = names.map(({ row }, index) =>
    put(sheet, row, column, shown(inUnit(made.grams[index]!, unit), format)),
  );
  const all = items.map((spot) => ({ ...spot, column }));
  const total = sumOf(kit, sheet, { row: items.at(-1)!.row + 1, column }, all, format);
  const alsoAmounts =
    again === undefined ? [] : amounts.map((spot) => ({ ...spot, column: column + again }));
  const cells = { names, amounts, alsoAmounts, unit, total, amountLabel, shared: true } as const;
  return markRecipe(kit, made, cells);
}

/** What is said of such a recipe, down its column, the labels in another. */
export function factsDown(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  facts: readonly Fact[],
  place: Place & { readonly labels: number; readonly items: readonly Spot[] },
): void {
  const { row, column, labels, items } = place;
  const lines = `${absolute(span(items))},${span(items.map((spot) => ({ ...spot, column })))}`;
  facts.forEach(([words, plan], index) => {
    const label = put(sheet, row + index, labels, words);
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
}

interface Rows {
  /** Headings of the ingredients, beside each other. */
  readonly items: readonly Spot[];
  readonly unit: SheetUnit;
  readonly format: string;
  readonly amountLabel: Spot;
}

/** A recipe along its row, the names over all of them; the total follows the last. */
export function alongRow(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  plan: Rows,
): MarkedRecipe & { readonly all: readonly Spot[]; readonly lines: string } {
  const { items, unit, format, amountLabel } = plan;
  const listed = items.map((spot) => sheet.cells[spot.row]![spot.column]!.content);
  const names = made.names.map((name) => items[listed.indexOf(name)]!);
  const amounts = names.map(({ column }, index) =>
    put(sheet, row, column, shown(inUnit(made.grams[index]!, unit), format)),
  );
  const all = items.map((spot) => ({ ...spot, row }));
  const total = sumOf(kit, sheet, { row, column: items.at(-1)!.column + 1 }, all, format);
  const cells = { names, amounts, unit, total, amountLabel, shared: true } as const;
  const lines = `${absolute(span(items))},${span(all)}`;
  return Object.assign(markRecipe(kit, made, cells), { all, lines });
}
