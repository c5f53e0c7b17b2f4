import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { asFormulas, asTemperatures, rowsAt, tellAt, told } from "./words";

/** One trial's list with its answers to the right. */
function versuch(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, index: number) {
  put(sheet, top, 0, `V${index + 1}`);
  put(sheet, top, 1, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 1 },
    {
      heads: ["Komponente", "w in %", "Charge"],
      cells: (name, grams) => [name, shown(grams, "0.0"), charge(kit, name)],
    },
  );
  put(sheet, end, 1, "Σ");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "%",
    amountLabel: heads[1]!,
    total,
  });
  const column = { heading: heads[1]!, spots: amounts, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(column);
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, [
    { label: "Wasser (g/100 g)", states: "water", as: "formula", format: "0.0" },
    { label: "Gelöstes (g/100 g)", states: "dissolved", as: "formula", format: "0.0" },
    { label: "ΔT (K)", states: "depression", as: "typed", decimals: 2 },
    {
      ...{ label: "Eisanteil der Masse bei −16 °C (%)", states: "ice of mix" },
      ...{ as: "typed", temperatureC: -16, decimals: 1 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Auslegung" });
  return { recipe, next: tellAt(sheet, recipe, { row: end + 1, column: 1 }, told(made, "LMIV:")) };
}

const charge = ({ random }: Kit, name: string): string | undefined =>
  /wasser/i.test(name) ? undefined : `L${random.whole(201, 289)}`;

const KOPF = ["Versuch", "berechnet (°C)", "gemessen (°C)", "gemessen − berechnet (K)", "Fühler"];

/** A trial's line on the second sheet: what was calculated, what was read. */
function zeile(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, heads: readonly Spot[]) {
  put(sheet, row, 0, recipe.made.title);
  const [first] = recipe.names;
  const home = `${first!.sheet}!`;
  const calls = (): string => `${home}${span(recipe.names)},${home}${span(recipe.amounts)}`;
  const plan = { states: "freezing point", as: "formula", format: "0.00" } as const;
  resultAt(sheet, recipe, heads[1]!, { row, column: 1 }, plan, calls);
  const real = trueValue(recipe.made, "freezing point", null) ?? -2.5;
  const read = put(sheet, row, 2, shown(Number(real.toFixed(1)), "0.0"));
  const off = put(sheet, row, 3, shown(`=${a1(read)}-${a1({ ...read, column: 1 })}`, "0.00"));
  put(sheet, row, 4, ["Pt100 rot", "Pt100 blau", "Pt100 rot"][row - 3]);
  return [read, off];
}

/** Calculated against measured, and the cold room's readings below. */
function vergleich(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Gefrierpunkte: Rechnung gegen Messung im Technikum");
  const heads = putRow(sheet, 2, 0, KOPF);
  const rows = recipes.map((recipe, index) => zeile(sheet, recipe, 3 + index, heads));
  asTemperatures(kit, heads[2]!, columnOf(rows, 0));
  asFormulas(kit, heads[3]!, columnOf(rows, 1));
  const cold = putRow(sheet, 9, 0, ["Tiefkühlzelle", "8 Uhr (°C)", "12 Uhr (°C)", "16 Uhr (°C)"]);
  const read = rowsAt(
    sheet,
    { row: 10, column: 0 },
    ["Montag", "Dienstag", "Mittwoch"].map((day) => [
      day,
      ...[1, 2, 3].map(() => -kit.random.whole(24, 29)),
    ]),
  );
  [1, 2, 3].forEach((column) => {
    asTemperatures(kit, cold[column]!, columnOf(read, column));
  });
  note(kit, sheet, 7, 0, "Fühler blau wurde am Dienstag getauscht.");
}

/** Three trials one below the other, then the comparison. */
function technikum(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepturen");
  put(sheet, 0, 0, "Praktikum Lebensmitteltechnologie II, Gruppe Do-3, Speiseeis");
  const eigene = { Zucker: "Saccharose", Wasser: "Leitungswasser" };
  const mades = kit.make(3).map((made) => stillMet(called(hundred(made), eigene)));
  const recipes: MarkedRecipe[] = [];
  mades.reduce((top, made, index) => {
    const { recipe, next } = versuch(kit, sheet, made, top, index);
    recipes.push(recipe);
    return next + 2;
  }, 2);
  vergleich(kit, addSheet(kit.marked.book, "Messung"), recipes);
}

/** A practical in food technology. */
export const technika: readonly Layout[] = [
  { name: "Technikum, Rezepturen und gemessene Gefrierpunkte", language: "de", build: technikum },
];
