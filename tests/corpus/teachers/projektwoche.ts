import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { isAlcoholic, madeOf, temperatures } from "../strollers/words";
import { inColumn, under, worked } from "./words";

const VOICE: Voice = {
  lead: "Auf den Becher kleben: enthält",
  honey: "Honig: erst ab 12 Monaten.",
  alcohol: "Alkohol: nur für Erwachsene, nicht für Schwangere, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse: unter 5 Jahren Erstickungsgefahr.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiert kaufen.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt, berechnet (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser je 100 g (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst je 100 g (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Anteil des Wassers, der bei −18 °C Eis ist (%)", temperatureC: -18 },
    ...{ states: "ice of water", as: "typed", decimals: 0 },
  },
];

/** A sort in parts of one; gives the next free row. */
function sorte(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  batch: Spot,
): readonly [MarkedRecipe, number] {
  put(sheet, row, 1, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 1 },
    {
      heads: ["Bestandteil", "Anteil (von 1)", "abzuwiegen/g"],
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.000")],
    },
  );
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  put(sheet, end, 1, "muss 1 ergeben");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, weighed, "0");
  const cells = { names, amounts, alsoAmounts: weighed, total, unit: "fraction" } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
  strip(sheet, recipe, { row: row + 1, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: row + 4, column: 5, label: "gedacht als" });
  tellIn(sheet, recipe, { row: row + 5, column: 5 }, VOICE);
  return [recipe, Math.max(end, row + 5) + 3];
}

const HEADS = [
  ...["Sorte", "Erniedrigung (K)", "Probe nach 2 h (°C)", "Stimmen 9a", "Stimmen 9b"],
  "Stimmen zusammen",
];

/** The vote, with the depression and what the probe said of each. */
function abstimmung(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Abstimmung");
  put(sheet, 0, 0, "Welche Sorte gewinnt?");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = recipes.map((recipe, index) => {
    const row = 3 + index;
    put(sheet, row, 0, recipe.made.title);
    const plan = { states: "depression", as: "typed", decimals: 1 } as const;
    resultAt(sheet, recipe, heads[1]!, { row, column: 1 }, plan);
    const votes = [kit.random.whole(2, 9), kit.random.whole(2, 9)];
    putRow(sheet, row, 2, [shown(-kit.random.whole(18, 26) / 2, "0.0"), ...votes]);
    return row;
  });
  temperatures(kit, heads[2]!, under(heads[2]!, rows.length));
  const [first, second] = [3, 4].map(inColumn);
  worked(kit, sheet, heads[5]!, rows, {
    ...{ formula: (row) => `${first!(row)}+${second!(row)}`, format: "0" },
  });
  put(sheet, 3 + rows.length, 0, "abgegeben");
  heads.slice(3).forEach((heading) => {
    const place = { row: 3 + rows.length, column: heading.column };
    sumOf(kit, sheet, place, under(heading, rows.length));
  });
}

/** Four sorts below each other in parts of one, and the vote of the classes. */
function projektwoche(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorten");
  put(sheet, 0, 1, "Projektwoche Physik trifft Küche");
  const batch = given(
    kit,
    sheet,
    [2, 1],
    ["Masse je Sorte", "g", kit.random.pick([600, 800, 1200])],
  );
  const words = { Zucker: "Haushaltszucker", Wasser: "kaltes Wasser" };
  const mades = madeOf(kit, 4, (made) => !isAlcoholic(made));
  let row = 4;
  const recipes = mades.map((each) => {
    const [recipe, next] = sorte(kit, sheet, called(largestFirst(each), words), row, batch);
    row = next;
    return recipe;
  });
  note(kit, sheet, 2, 5, "Waage vor jeder Zutat auf null stellen.");
  abstimmung(kit, recipes);
}

/** A week of projects at school. */
export const projektwochen: readonly Layout[] = [
  { name: "Projektwoche, Sorten in Anteilen und Abstimmung", language: "de", build: projektwoche },
];
