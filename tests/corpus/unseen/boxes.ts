import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { lineRows, summed } from "./shared";

/** What a millilitre of the mix weighs, to two decimals; as a cook guesses where we cannot say. */
function perMillilitre({ names, grams }: MadeRecipe): number {
  const columns = [names, grams].map((list) => list.map((each) => [each]));
  const density = callFunction("DENSITY", ...columns)[0]?.[0];
  return typeof density === "number" ? Number(density.toFixed(2)) : 1.1;
}

/** The box, how full it gets, and how much mix that takes. */
function box(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot {
  const at = (row: number, label: string, bare: string, value: number): Spot =>
    input(kit, sheet, { row, column: 0 }, { label, bare, value });
  const volume = at(2, "Meine Dose (ml)", "Meine Dose", kit.random.pick([750, 1000, 1500]));
  const filled = at(3, "gefüllt zu (%)", "gefüllt zu", kit.random.pick([85, 90]));
  const weight = putRow(sheet, 4, 0, ["1 ml Eismasse wiegt (g)", perMillilitre(made)])[1]!;
  const formula = `=${a1(volume)}*${a1(filled)}/100*${a1(weight)}`;
  return putRow(sheet, 5, 0, ["Eismasse für die Dose (g)", shown(formula, "0")])[1]!;
}

/** A recipe from a magazine, worked out for one's own box. */
function ownBox(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Umrechnen");
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker", Salz: "Speisesalz" });
  put(sheet, 0, 0, `${made.title} in meiner Dose`);
  const wanted = box(kit, sheet, made);
  const heads = putRow(sheet, 8, 0, ["Zutaten", "laut Heft (g)", "für die Dose (g)"]);
  const rows = lineRows(sheet, { row: 9, column: 0 }, made, (index) => [
    ...[made.names[index], made.grams[index]],
  ]);
  const list = summed(kit, sheet, rows, { name: 0, amount: 1, heads, word: "Summe" });
  const { amounts, total } = list;
  const ratio = shown(`=${a1(wanted)}/${a1(total)}`, "0.000");
  const factor = putRow(sheet, 6, 0, ["Faktor", ratio])[1]!;
  const scaled = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=${a1(spot)}*${fixed(factor)}`, "0")),
  );
  sumOf(kit, sheet, { row: total.row, column: 2 }, scaled, "0");
  marked.formulaColumns.push({ spots: scaled, heading: heads[2]!, fixed: [factor] });
  answers(kit, markRecipe(kit, made, { ...list, alsoAmounts: scaled, unit: "g" }));
}

/** What comes of it, right of the lines. */
function answers(kit: Kit, recipe: MarkedRecipe): void {
  const { marked, random } = kit;
  const sheet = marked.book.sheets[0]!;
  const temperatureC = random.pick([-16, -18]);
  const words = { label: "Gefrierfach (°C)", bare: "Gefrierfach", value: temperatureC };
  const temperature = input(kit, sheet, { row: 8, column: 4 }, words);
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: 9, column: 4 }, [
    { label: "fängt an zu gefrieren (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "Zucker auf 100 g Wasser (g)",
      states: "sugar per 100 g water",
      as: "typed",
      decimals: 1,
    },
    { label: "vom Wasser gefroren im Gefrierfach", states: "ice of water", ...ice },
    { label: "Eis in der ganzen Masse im Gefrierfach", states: "ice of mix", ...ice },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "soll werden" });
  const below = recipe.total!.row + 2;
  const last = tell(kit, sheet, recipe, { row: below, column: 0, as: "sentence" });
  note(kit, sheet, last + 1, 0, "Dose eine Stunde vorher kalt stellen.");
}

/** One recipe for one's own box. */
export const boxes: readonly Layout[] = [
  { name: "aus dem Heft in meine Dose", language: "de", build: ownBox },
];
