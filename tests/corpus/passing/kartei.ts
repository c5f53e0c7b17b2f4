import { addSheet, put, putRow, span } from "../book";
import { hasSpirit } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { declare } from "./words";

const ANSWERS: readonly (readonly [string, ResultPlan, string])[] = [
  ["Gefrierpunkt", { states: "freezing point", as: "typed", decimals: 1 }, "°C"],
  ["Wasser insgesamt", { states: "water", as: "typed", decimals: 1 }, "g"],
  ["Gelöste Stoffe", { states: "dissolved", as: "typed", decimals: 1 }, "g"],
  ["Zuckeranteil der Masse", { states: "sugar share", as: "typed" }, "%"],
  [
    "Gefrorener Anteil des Wassers bei −18 °C",
    { states: "ice of water", as: "typed", temperatureC: -18 },
    "%",
  ],
  ["Alkohol", { states: "alcohol", as: "typed", decimals: 1 }, "g"],
];

const TYPES = ["Waffel", "Becher", "Waffel und Becher"];

/** One card: what goes in, then what is known of it; gives the row for the next. */
function card(kit: Kit, made: MadeRecipe, top: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, top, 0, ["Sorte", made.title]);
  putRow(sheet, top + 1, 0, ["Verkauf", kit.random.pick(TYPES)]);
  const heads = putRow(sheet, top + 2, 0, ["Rohstoff", "Gramm auf 100 g Mix", "Lager"]);
  const rows = made.names.map((name, index) => {
    const shelf = `Regal ${kit.random.whole(1, 6)}`;
    return putRow(sheet, top + 3 + index, 0, [name, made.grams[index], shelf]);
  });
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  let row = top + 3 + rows.length;
  put(sheet, row, 0, "gesamt");
  const total = put(sheet, row, 1, `=ROUND(SUM(${span(amounts)}),1)`);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[1]!, total },
  });
  row += 1;
  for (const [label, plan, unit] of ANSWERS) {
    if (plan.states === "alcohol" && !hasSpirit(made)) continue;
    const at = { sheet: sheet.name, row, column: 0 };
    if (!resultAt(sheet, recipe, at, { row, column: 1 }, plan)) continue;
    putRow(sheet, row, 0, [label]);
    put(sheet, row++, 2, unit);
  }
  nameTarget(sheet, recipe, { row: row++, column: 0, label: "Soll sein" });
  return declare(sheet, recipe, { row, column: 0 }, "Enthält:") + 1;
}

/** Cards one below the other, as a file of values. */
function kartei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kartei");
  note(kit, sheet, 0, 0, "Stand vom Samstag nach Ladenschluss");
  let top = 2;
  for (const made of kit.make(3)) {
    top = card(kit, stillMet(called(perHundred(made), { Wasser: "Leitungswasser" })), top);
  }
}

/** Files with decimal commas. */
export const karteien: readonly Layout[] = [
  { name: "Kartei der Eisdiele als Datei, auf 100 g", language: "de", isCsv: true, build: kartei },
];
