import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import type { Kit, Layout } from "../kit";
import type { MarkedRecipe } from "../marks";
import { answer, formulas, markRecipe, namesOf, sumAt, tellAll, type Place } from "./marking";

/** What a variety comes to, under its sum. */
function varietyAnswers(sheet: CorpusSheet, recipe: MarkedRecipe, at: Place, lines: string): void {
  const [end, column] = at;
  const words = ["Gefrierpunkt (°C)", end + 1, 0] as const;
  const calculated = { states: "freezing point", as: "formula" } as const;
  answer(sheet, recipe, words, [end + 1, column], calculated, lines);
  const water = { states: "water", as: "typed", decimals: 0 } as const;
  answer(sheet, recipe, ["Wasser (g)", end + 2, 0], [end + 2, column], water);
  const dissolved = { states: "dissolved", as: "typed", decimals: 0 } as const;
  answer(sheet, recipe, ["Gelöste Stoffe (g)", end + 3, 0], [end + 3, column], dissolved);
}

/** Grams and per cent of each variety in turn. */
function inTurn(kit: Kit): void {
  const mades = kit.make(3);
  const sheet = addSheet(kit.marked.book, "Sortenvergleich");
  const heads = namesOf(mades).map((name, index) => put(sheet, 2 + index, 0, name));
  const end = 2 + heads.length;
  putRow(sheet, 0, 0, ["Sorte"]);
  putRow(sheet, 1, 0, ["Zutat"]);
  put(sheet, end, 0, "Summe");
  const recipes = mades.map((made, index) => {
    const column = 1 + index * 2;
    put(sheet, 0, column, made.title);
    sheet.merged.push({ top: 0, left: column, bottom: 0, right: column + 1 });
    const all = heads.map(({ row }) => ({ sheet: sheet.name, row, column }));
    const at = made.names.map((name) => namesOf(mades).indexOf(name));
    const amountLabel = put(sheet, 1, column, "g");
    const amounts = at.map((step, line) => put(sheet, 2 + step, column, made.grams[line]));
    const total = sumAt(kit, sheet, [end, column], all);
    const heading = put(sheet, 1, column + 1, "%");
    const shares = all.map((spot) => shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0"));
    const place = { sheet, at: [2, column + 1], fixed: [total] } as const;
    const perCent = formulas(kit, heading, shares, place);
    sumAt(kit, sheet, [end, column + 1], perCent, "0.0");
    const cells = { names: at.map((step) => heads[step]!), amounts, amountLabel, total };
    const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: perCent, shared: true });
    varietyAnswers(sheet, recipe, [end, column], `$A$3:$A$${end},${span(all)}`);
    tellAll(sheet, [recipe], [end + 5, column]);
    return recipe;
  });
  if (recipes.some(({ flags }) => flags.length > 0)) {
    put(sheet, end + 5, 0, "Allergene, Hinweise");
  }
}

/** Varieties that share their names. */
export const varieties: readonly Layout[] = [
  { name: "Gramm und Prozent im Wechsel", language: "de", build: inTurn },
];
