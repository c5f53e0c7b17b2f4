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
import { tellIn, type Voice } from "../caterers/words";
import { onSheet } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Allergene sind",
  honey: "Mit Honig, also nicht unter 12 Monaten.",
  alcohol: "Mit Alkohol, also nicht für Kinder, Schwangere, Fahrer.",
  nuts: "Mit ganzen Nüssen, Erstickungsgefahr unter 5 Jahren.",
  egg: "Mit rohem Eigelb, also auf 71 °C erhitzen oder pasteurisiert.",
};

const OWN = { Vollmilch: "Milch 3,5 %", Zucker: "Haushaltszucker", Honig: "Blütenhonig" };

/** Die Zeilen eines Rezepts in der langen Liste; gibt Rezept und Anteile. */
function lines(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  heads: readonly Spot[],
) {
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + index, 0, [made.title, name, made.grams[index]!]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)];
  const total = sumOf(kit, sheet, { row: row + rows.length - 1, column: 4 }, amounts, "0");
  const shares = amounts.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}/${fixed(total)}`, "0.0%")),
  );
  kit.marked.formulaColumns.push({ spots: shares, heading: heads[3]!, fixed: [total] });
  const cells = { names, amounts, alsoAmounts: shares, unit: "g", total } as const;
  return markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
}

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser g", { states: "water", as: "formula", format: "0" }],
  ["gelöst g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Wasser gefroren bei −18 °C %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  [
    "Eis in der Masse bei −12 °C %",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

/** Ein Eis je Zeile, mit allem was man wissen will. */
function overview(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Überblick");
  put(sheet, 0, 0, "Überblick über die Sammlung");
  const heads = putRow(sheet, 2, 0, [
    ...["Eis", "Masse g", ...SAID.map(([words]) => words), "serviert", "Hinweise"],
  ]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    putRow(sheet, row, 0, [recipe.made.title, shown(`=Sammlung!${a1(recipe.total!)}`, "0")]);
    SAID.forEach(([, plan], at) => {
      const place = { row, column: 2 + at };
      resultAt(sheet, recipe, heads[2 + at]!, place, plan, onSheet("Sammlung", span));
    });
    nameTarget(sheet, recipe, { row, column: 2 + SAID.length });
    tellIn(sheet, recipe, { row, column: 3 + SAID.length }, VOICE);
  });
  const end = 3 + recipes.length;
  put(sheet, end, 0, "alles zusammen");
  const masses = recipes.map((_, index) => ({ sheet: sheet.name, row: 3 + index, column: 1 }));
  sumOf(kit, sheet, { row: end, column: 1 }, masses, "0");
  const drawers = putRow(sheet, end + 2, 0, ["Schublade", "gemessen °C"]);
  ["oben", "Mitte", "unten"].forEach((words, index) => put(sheet, end + 3 + index, 0, words));
  readings(
    kit,
    sheet,
    drawers[1]!,
    [-16, -18, -20].map((value) => value - kit.random.whole(0, 2) / 2),
  );
  note(kit, sheet, end + 7, 0, "Himbeersirup von Oma noch eintragen.");
}

/** Alle Rezepte in einer langen Liste, ausgewertet auf dem zweiten Blatt. */
function sammlung(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sammlung");
  const heads = putRow(sheet, 0, 0, [
    "Eis",
    "Zutat",
    "Gramm",
    "vom Ganzen",
    "Rezept wiegt g",
    "probiert",
  ]);
  let row = 1;
  const recipes = kit.make(5).map((made) => {
    const recipe = lines(kit, sheet, called(made, OWN), row, heads);
    put(sheet, row, 5, kit.random.pick(["ja", "ja, zweimal", "noch nicht"]));
    row += made.names.length;
    return recipe;
  });
  overview(kit, recipes);
}

/** Eine Rezeptsammlung. */
export const sammlungen: readonly Layout[] = [
  { name: "Sammlung als lange Liste mit Überblick", language: "de", build: sammlung },
];
