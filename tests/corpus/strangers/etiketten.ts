import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { hasAlcohol } from "./etikett";
import { lines, under } from "./zeilen";

const ALCOHOL_IN_IT: Said = { label: "Alkohol (g)", states: "alcohol", as: "typed", decimals: 1 };

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser insgesamt (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöste Trockenmasse (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...(hasAlcohol(made) ? [ALCOHOL_IN_IT] : []),
  {
    label: "Wasser gefroren bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
];

/** The lines of one kind, each with its allergen. */
function listed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, head: Spot, row: number) {
  const cells = lines(sheet, { row, column: 1 }, made, (name, grams, index) => [
    ...[name, grams, made.flagged ? made.lines[index]!.allergen?.de : undefined],
  ]);
  const [names, amounts, flags] = cells as [Spot[], Spot[], Spot[]];
  const total = under(kit, amounts);
  put(sheet, total.row, 1, "Summe");
  const amountLabel = head;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  if (made.flagged) recipe.flags.push(...flags);
  return recipe;
}

/** One kind as lines of a list, its name on every line; gives the next free row. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, head: Spot, top: number): number {
  const recipe: MarkedRecipe = listed(kit, sheet, made, head, top);
  const next = say(sheet, recipe, { row: recipe.total!.row + 1, column: 1 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Sorte für" });
  const place = { row: sheet.cells.length, column: 1, as: "sentence" } as const;
  const end = tell(kit, sheet, recipe, place);
  for (let row = top; row < end; row += 1) put(sheet, row, 0, made.title);
  return end + 1;
}

/** The list that goes to the printer of labels. */
function labelList(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Etiketten");
  const [, , head] = putRow(sheet, 0, 0, ["Sorte", "Zutat", "Menge in g", "Allergene"]);
  let top = 1;
  for (const made of kit.make(3)) top = kind(kit, sheet, made, head!, top);
}

/** What a farm shop sends away. */
export const etiketten: readonly Layout[] = [
  { name: "Hofladen, Etikettenliste als Datei", language: "de", isCsv: true, build: labelList },
];
