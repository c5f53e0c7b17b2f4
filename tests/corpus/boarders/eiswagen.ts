import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { down } from "../callers/desk";
import { euros } from "../callers/prices";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { about } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { BATCHES, board, kind, KINDS, type Board } from "./sorten";
import { goods } from "./worte";

/** What the week takes of each thing, and what that costs. */
function week(kit: Kit, on: Board, mades: readonly MadeRecipe[], batches: readonly Spot[]): void {
  const { sheet, names, labels } = on;
  const column = 1 + mades.length;
  const heads = putRow(sheet, KINDS, column, ["ganze Woche (g)", "€ je kg", "Einkauf (€)"]);
  const end = labels[0]!.row;
  const across = (row: number) => span(batches.map((spot) => ({ ...spot, row })));
  const times = absolute(across(BATCHES));
  const needs = down(kit, sheet, names, {
    ...{ heading: heads[0]!, format: "0", end },
    formula: (_, index) => `=SUMPRODUCT(${across(names[index]!.row)},${times})`,
  });
  const price = euros(kit.random);
  const prices = goods(mades).map(({ made, index }, at) =>
    put(sheet, names[at]!.row, column + 1, shown(price(made, index), "0.00")),
  );
  down(kit, sheet, needs, {
    ...{ heading: heads[2]!, format: "0.00", end },
    formula: (cell, index) => `=${cell}*${a1(prices[index]!)}/1000`,
  });
}

/** How cold the freezer in the van was each day. */
function temperatures({ random, marked }: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, ["Tag", "Truhe morgens (°C)", "Truhe abends (°C)"]);
  const rows = ["Di", "Mi", "Do", "Fr", "Sa", "So"].map((day, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[day, shown(-random.whole(34, 42) / 2, "0.0"), shown(-random.whole(27, 35) / 2, "0.0")],
    ]),
  );
  for (const column of [1, 2]) {
    const heading = { sheet: sheet.name, row, column };
    const spots = columnOf(rows, column);
    marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  }
}

/** The van's week: kinds beside each other, batches above, what to buy at the right. */
function van(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Woche");
  const mades = kit.make(4).map((made) => called(about(made, 3000), { Salz: "Speisesalz" }));
  const on = board(kit, sheet, mades);
  const batches = mades.map((made, index) => kind(kit, made, 1 + index, on));
  week(kit, on, mades, batches);
  temperatures(kit, sheet, on.labels.at(-1)!.row + 2);
  note(kit, sheet, 1, 3, "Montag steht der Wagen, dann wird vorgemacht.");
}

/** A van that sells ice. */
export const eiswagen: readonly Layout[] = [
  { name: "Eiswagen, Sorten in Spalten und Einkauf der Woche", language: "de", build: van },
];
