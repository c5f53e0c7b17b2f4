import { calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit } from "../kit";
import { asAnswerOnly } from "../layouts/marking";
import type { MarkedRecipe } from "../marks";
import { byHand, readings } from "../pilgrims/words";

/** A trial, and where its freezing point stands. */
export interface Run {
  readonly recipe: MarkedRecipe;
  readonly point: Spot;
}

/** What they came to, and what the probe in the machine said. */
export function comparison(kit: Kit, sheet: CorpusSheet, runs: readonly Run[]): void {
  put(sheet, 0, 0, "Trials of this month side by side");
  const heads = putRow(sheet, 2, 0, [
    ...[
      "Trial",
      "Product",
      "Batch (g)",
      "Initial freezing point (°C)",
      "Drawn from machine at (°C)",
    ],
    ...["Core after 24 h (°C)", "Panel, 1 to 9"],
  ]);
  const rows = runs.map(({ recipe, point }, index) => {
    const home = { sheet: sheet.name, row: 3 + index, column: 0 };
    const read = (spot: Spot, format: string) => shown(`=${calledFrom(home, spot)}`, format);
    const { random } = kit;
    const cells = putRow(sheet, 3 + index, 0, [
      ...[`Trial ${index + 1}`, recipe.made.title, read(recipe.total!, "0"), read(point, "0.00")],
      ...[shown(-random.whole(50, 68) / 10, "0.0"), shown(-random.whole(160, 190) / 10, "0.0")],
      random.whole(4, 9),
    ]);
    byHand(recipe, "freezing point", heads[3]!, cells[3]!);
    asAnswerOnly(recipe);
    return cells;
  });
  readings(kit, heads[4]!, rows, 4);
  readings(kit, heads[5]!, rows, 5);
  note(kit, sheet, 4 + rows.length, 0, "Panel of six, samples coded, water in between.");
}
