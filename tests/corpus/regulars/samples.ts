import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { asAnswerOnly } from "../layouts/marking";
import { trueValue, type MarkedRecipe } from "../marks";
import { resultAt } from "../results";
import type { MadeRecipe } from "../recipes";
import { beside } from "../visitors/lines";
import type { Answer } from "./columns";

const CALLED = { Zucker: "Kristallzucker", Salz: "Natriumchlorid" };

/** What was weighed in for a sample, on a sheet of its own. */
function weighedIn(kit: Kit, made: MadeRecipe, letter: string): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, `Probe ${letter}`);
  putRow(sheet, 0, 0, [`Probe ${letter}`, made.title]);
  putRow(sheet, 1, 0, ["Waage", "Laborwaage 2"]);
  const heads = putRow(sheet, 3, 0, ["Pos.", "Komponente", "Masse in g", "Anteil in %"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 0, [index + 1, name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)];
  const row = 4 + rows.length;
  put(sheet, row, 1, "Summe");
  const total = sumOf(kit, sheet, { row, column: 2 }, amounts);
  const share = { column: 3, heading: heads[3]!, fixed: [total], format: "0.0" };
  const alsoAmounts = beside(kit, amounts, share, (amount) => `=${amount}/${fixed(total)}*100`);
  sumOf(kit, sheet, { row, column: 3 }, alsoAmounts, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[2]!, total },
  });
  nameTarget(sheet, recipe, { row: row + 2, column: 1, label: "Anforderung" });
  tell(kit, sheet, recipe, { row: row + 4, column: 1, as: "sentence" });
  return recipe;
}

const QUANTITIES: readonly Answer[] = [
  ["Gefrierpunkt berechnet (°C)", { states: "freezing point", as: "formula" }],
  ["Eis bei −18 °C, % der Probe", { states: "ice of mix", as: "typed", temperatureC: -18 }],
  ["Gesamtwasser (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöste Feststoffe (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zucker, Massen-% der Probe", { states: "sugar share", as: "typed" }],
  ["Zucker in g auf 100 g Wasser", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

/** What was calculated of a sample and what was measured, in its column of the results. */
function compared(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, column: number): Spot[] {
  const { names, amounts, made } = recipe;
  const own = `'${names[0]!.sheet}'!`;
  const lines = `${own}${span(names)},${own}${span(amounts)}`;
  putRow(sheet, 2, column, [names[0]!.sheet]);
  put(sheet, 3, column, made.title);
  QUANTITIES.forEach(([, plan], index) => {
    const row = index === 0 ? 4 : 6 + index;
    const label = { sheet: sheet.name, row, column: 0 };
    const isThere = resultAt(sheet, recipe, label, { row, column }, plan, () => lines);
    if (isThere && plan.as === "formula") asAnswerOnly(recipe);
  });
  const point = trueValue(made, "freezing point", null);
  if (point === null) return [];
  const read = point + kit.random.between(-0.1, 0.1);
  const measured = put(sheet, 5, column, shown(Number(read.toFixed(1)), "0.0"));
  const calculated = { ...measured, row: 4 };
  put(sheet, 6, column, shown(`=${a1(measured)}-${a1(calculated)}`, "0.00"));
  return [measured];
}

/** Mixes of customers: calculated and measured on one sheet, the weighings on others. */
export function samples(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Ergebnisse");
  put(sheet, 0, 0, "Eismixproben der Woche, berechnet und gemessen");
  const mades = kit.make(3).map((made) => called(made, CALLED));
  const recipes = mades.map((made, index) => weighedIn(kit, made, "ABC"[index]!));
  ["Prüfling", "Bezeichnung"].forEach((label, index) => put(sheet, 2 + index, 0, label));
  QUANTITIES.forEach(([label], index) => put(sheet, index === 0 ? 4 : 6 + index, 0, label));
  const heading = put(sheet, 5, 0, "Gefrierpunkt gemessen (°C)");
  put(sheet, 6, 0, "Differenz gemessen − berechnet (K)");
  const spots = recipes.flatMap((recipe, index) => compared(kit, sheet, recipe, 1 + index));
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  note(kit, sheet, 13, 0, "Proben über Nacht bei 4 °C gelagert, vor der Messung gerührt.");
}
