import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures, upTo } from "../strollers/words";
import { sideTable, under } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Wegen des Honigs nicht für Babys unter 12 Monaten",
  alcohol: "Wegen des Alkohols nicht für Kinder, Schwangere und Autofahrer",
  nuts: "Wegen der ganzen Nüsse Erstickungsgefahr bei Kindern unter 5 Jahren",
  egg: "Wegen des rohen Eigelbs auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen",
};

const SHEET = "Rezepte";

/** A recipe with its units between amounts and names. */
function rezept(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number): MarkedRecipe {
  const column = 4 * index;
  put(sheet, 2, column, `${"ABC"[index]}) ${made.title}`);
  const { heads, rows, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column },
    { heads: ["man nehme"], cells: (item, grams) => [grams, "g", item], name: 2, amount: 0 },
  );
  const total = sumOf(kit, sheet, { row: 3, column }, amounts);
  putRow(sheet, 3, column + 1, ["g", "in der Schüssel"]);
  const cells = { names, amounts, amountLabel: heads[0]!, total, unit: "g" } as const;
  return markRecipe(kit, made, { ...cells, unitCells: columnOf(rows, 1) });
}

const LABELS: readonly (readonly [string, ResultPlan])[] = [
  ["Erste Eiskristalle bei (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Tiefer als Wasser um (K)", { states: "depression", as: "formula", format: "0.0" }],
  ["Zucker, Massenanteil der Mischung (%)", { states: "sugar share", as: "typed", decimals: 0 }],
  [
    "Eisanteil der Mischung bei −10 °C (%)",
    { states: "ice of mix", as: "typed", temperatureC: -10, decimals: 0 },
  ],
  [
    "Eisanteil der Mischung bei −18 °C (%)",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  ["Reiner Alkohol in der Schüssel (g)", { states: "alcohol", as: "typed", decimals: 0 }],
  ["Wasser, alles mitgezählt (g)", { states: "water", as: "typed", decimals: 0 }],
];

/** The handout: a line for each thing to know, a column for each recipe. */
function handzettel(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Handzettel");
  put(sheet, 0, 0, "Zum Mitnehmen: was unsere drei Sorten im Eisfach tun");
  LABELS.forEach(([words], index) => put(sheet, 3 + index, 0, words));
  const low = 3 + LABELS.length;
  ["So soll es sein", "Allergene", "Hinweis"].forEach((words, at) =>
    put(sheet, low + at, 0, words),
  );
  recipes.forEach((recipe, index) => {
    const { made, names, amounts, flags } = recipe;
    const column = 1 + index;
    put(sheet, 2, column, made.title);
    const lines = `${SHEET}!${span(names)},${SHEET}!${span(amounts)}`;
    LABELS.forEach(([, plan], at) => {
      const label = { sheet: sheet.name, row: 3 + at, column: 0 };
      resultAt(sheet, recipe, label, { row: 3 + at, column }, plan, () => lines);
    });
    nameTarget(sheet, recipe, { row: low, column });
    [allergensOf(made), cautionsIn(made, VOICE)].forEach((words, at) => {
      if (words !== "") flags.push(put(sheet, low + 1 + at, column, words));
    });
  });
  note(kit, sheet, low + 4, 0, "Fragen? Nach dem Kurs bin ich noch eine halbe Stunde da.");
}

/** When the course meets, and how cold the freezer was. */
function termine(kit: Kit, sheet: CorpusSheet): void {
  const lines = ["12.5.", "19.5.", "26.5.", "2.6."].map((day) => [
    ...[day, "18:30–21:00", "Lehrküche 2", shown(-kit.random.whole(34, 40) / 2, "0.0")],
  ]);
  const words = ["Termin", "Uhrzeit", "Ort", "Gefrierschrank (°C)"];
  const heads = sideTable(sheet, [18, 0], words, lines);
  temperatures(kit, heads[3]!, under(heads[3]!, lines.length));
}

/** Three recipes beside each other and a handout with what they do. */
function abendkurs(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, SHEET);
  put(sheet, 0, 0, "Abendkurs Eis ohne Maschine");
  const words = { Zucker: "Haushaltszucker", Zitronensaft: "frischer Zitronensaft" };
  const recipes = kit.make(3).map((made, index) => {
    return rezept(kit, sheet, called(upTo(made, 1000), words), index);
  });
  termine(kit, sheet);
  handzettel(kit, recipes);
}

/** An evening class. */
export const abendkurse: readonly Layout[] = [
  { name: "Abendkurs, Rezepte nebeneinander und Handzettel", language: "de", build: abendkurs },
];
