import { addSheet, put, putRow, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { inUnit } from "../list";
import { markRecipe } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, upTo } from "../strollers/words";
import { warnAt } from "./words";

const SAID: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt der Masse (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser im Ansatz (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöstes im Ansatz (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zucker, Massenanteil (%)", { states: "sugar share", as: "typed" }],
  [
    "Eis bei −12 °C, bezogen auf die Masse (%)",
    { states: "ice of mix", as: "typed", temperatureC: -12 },
  ],
  ["Reiner Alkohol im Ansatz (g)", { states: "alcohol", as: "typed", decimals: 1 }],
];

const TEAMS = ["Team Rot", "Team Blau", "Team Grün"];

/** The weighing list of one team; gives the row for the next. */
function weighing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, team: string) {
  putRow(sheet, top, 0, [team, undefined, made.title]);
  const heads = putRow(sheet, top + 1, 0, ["Pos.", "Einwaage (kg)", "Rohstoff", "gewogen"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [
      ...[index + 1, inUnit(made.grams[index]!, "kg"), name],
      kit.random.pick(["ja", "ja", "offen"]),
    ]),
  );
  const [amounts, names] = [columnOf(rows, 1), columnOf(rows, 2)];
  let row = top + 2 + rows.length;
  const total = put(sheet, row, 1, `=ROUND(SUM(${span(amounts)}),3)`);
  put(sheet, row++, 2, "Gesamteinwaage");
  const lines = { names, amounts, unit: "kg", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  for (const [label, plan] of SAID) {
    if (plan.states === "alcohol" && !isAlcoholic(made)) continue;
    const at = { sheet: sheet.name, row, column: 2 };
    if (!resultAt(sheet, recipe, at, { row, column: 1 }, plan)) continue;
    put(sheet, row++, 2, label);
  }
  const { target } = made;
  if (target !== null) put(sheet, row, 2, "Prüfung verlangt");
  nameTarget(sheet, recipe, { row, column: 1 });
  return warnAt(sheet, recipe, { row: row + 1, column: 2 }, "Enthält:") + 1;
}

/** Weighing lists of three teams in one file, the number before its word. */
function school(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wiegeliste");
  note(kit, sheet, 0, 0, "Fachschule, Prüfungswoche, Waage 3");
  let top = 2;
  kit.make(3).forEach((given, index) => {
    const made = called(upTo(given, 2500), { Zucker: "Kristallzucker" });
    top = weighing(kit, sheet, made, top, TEAMS[index]!);
  });
}

/** A file with decimal commas. */
export const fachschulen: readonly Layout[] = [
  { name: "Fachschule, Wiegelisten als Datei", language: "de", isCsv: true, build: school },
];
