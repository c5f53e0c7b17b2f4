import { addSheet, put, putRow, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import { law } from "./gemisch";
import { heedAt } from "./worte";

const PLAN = {
  heads: ["Menge", "Einheit", "Rohstoff"],
  cells: (name: string, grams: number) => [grams, "g", name],
  ...{ name: 2, amount: 0 },
};

/** The exercise as the class has it; gives the recipe. */
function exercise(kit: Kit): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, "Aufgabe");
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, `Klassenarbeit 2, Gruppe A: ${made.title}`);
  const list = listed(sheet, made, { row: 2, column: 0 }, PLAN);
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "Ansatz"]);
  const unitCells = columnOf(list.rows, 1);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells, unit: "g", amountLabel: heads[0]!, total },
  });
  nameTarget(sheet, recipe, { row: end + 2, column: 1, label: "Ziel" });
  const next = heedAt(sheet, recipe, { row: end + 3, column: 0 }, "Allergene im Ansatz:");
  note(kit, sheet, next + 1, 0, "Hilfsmittel: Taschenrechner, Formelsammlung. Zeit 45 Minuten.");
  return recipe;
}

/** What is asked, how it is got, its unit and its points. */
const ASKED: readonly (readonly [string, string, string, number, ResultPlan])[] = [
  [
    "Wassermenge des Ansatzes",
    "Wasseranteil jedes Rohstoffs mal Menge, dann addieren",
    "g",
    4,
    { states: "water", as: "formula", format: "0" },
  ],
  [
    "gelöste Stoffe",
    "Zucker, Salze, Säuren; ohne Fett und Stücke",
    "g",
    3,
    { states: "dissolved", as: "formula", format: "0" },
  ],
  [
    "Zucker, bezogen auf 100 g Wasser",
    "Zucker : Wasser mal 100",
    "g",
    2,
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  [
    "Erniedrigung des Gefrierpunkts",
    "aus dem Diagramm im Buch abgelesen",
    "K",
    3,
    { states: "depression", as: "typed", decimals: 1 },
  ],
  [
    "Gefrierpunkt",
    "0 °C minus Erniedrigung",
    "°C",
    1,
    { states: "freezing point", as: "formula", format: "0.0" },
  ],
  [
    "Eisanteil der ganzen Masse bei −18 °C",
    "gefrorenes Wasser : Masse",
    "%",
    4,
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** The answers with their points; gives the next free row. */
function answers(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): number {
  putRow(sheet, 2, 0, ["Nr.", "gesucht", "so geht es", "Ergebnis", "Einheit", "Punkte"]);
  const lines = `Aufgabe!${span(recipe.names)},Aufgabe!${span(recipe.amounts)}`;
  const points = ASKED.map(([asked, way, unit, most, plan], index) => {
    const row = 3 + index;
    const label = putRow(sheet, row, 0, [`1${"abcdef"[index]}`, asked, way])[1]!;
    resultAt(sheet, recipe, label, { row, column: 3 }, plan, () => lines);
    return putRow(sheet, row, 4, [unit, most])[1]!;
  });
  const row = 3 + ASKED.length;
  put(sheet, row, 4, "von");
  sumOf(kit, sheet, { row, column: 5 }, points);
  return row + 2;
}

/** A test and the sheet by which it is marked. */
function marking(kit: Kit): void {
  const recipe = exercise(kit);
  const sheet = addSheet(kit.marked.book, "Lösungsblatt");
  put(sheet, 0, 0, "Nur für die Lehrkraft");
  law(kit, sheet, answers(kit, sheet, recipe));
}

/** What a teacher of confectioners marks by. */
export const markings: readonly Layout[] = [
  { name: "Konditorenklasse, Lösungsblatt mit Punkten", language: "de", build: marking },
];
