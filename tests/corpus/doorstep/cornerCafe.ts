import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { List } from "../list";
import type { MadeRecipe } from "../recipes";
import { FRIENDLY, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "Freezes below °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Sugars as % of everything", states: "sugar share", as: "formula", format: "0.0" },
  {
    ...{ label: "Frozen part of the water, % at −16 °C", states: "ice of water", as: "typed" },
    ...{ temperatureC: -16, decimals: 0 },
  },
];

/** One flavour with its facts at the right; gives the next free row. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: top + 1, left: 0, columns: ["name", "share", "amount"], unit: "g" },
    headings: { name: "Put in", share: "Part", amount: "Weight" },
    unitRow: { amount: "g" },
    ...{ total: "Jug", gap: 1 },
  });
  const next = say(sheet, recipe, { row: top + 2, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "For" });
  tellIn(sheet, recipe, { row: totalRow + 1, column: 0 }, FRIENDLY);
  return totalRow + 4;
}

const ROTA = ["Wed", "Thu", "Fri", "Sat", "Sun"];

/** Who works how many hours, and when the door is open. */
function rota(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 8, ["Rota", "Front (h)", "Kitchen (h)", "Open", "Shut"]);
  const rows = ROTA.map((day, index) =>
    putRow(sheet, 1 + index, 8, [
      ...[
        day,
        shown(kit.random.whole(8, 14) / 2, "0.0"),
        shown(kit.random.whole(10, 16) / 2, "0.0"),
      ],
      ...["9:30", index > 2 ? "18:00" : "17:00"],
    ]),
  );
  put(sheet, 6, 8, "Hours");
  [1, 2].forEach((at) => {
    const parts: Spot[] = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: 6, column: 8 + at }, parts, "0.0");
  });
}

/** Three flavours down the page, the rota and the counter's readings beside them. */
function cornerCafe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ice counter");
  const own = { sugar: "granulated sugar", "whole milk": "full-fat milk", honey: "runny honey" };
  const mades = kit.make(3).map((made) => called(made, own));
  mades.reduce((row, made) => flavour(kit, sheet, made, row), 0);
  rota(kit, sheet);
  const at = { row: 9, column: 9 };
  put(sheet, 9, 8, "Counter");
  ["Wed", "Fri", "Sun"].forEach((day, index) => put(sheet, 10 + index, 8, day));
  thermometer(kit, sheet, at, { heading: "left tray, °C", count: 3, range: [-17, -14] });
  const right = { heading: "right tray, °C", count: 3, range: [-16, -13] } as const;
  thermometer(kit, sheet, { ...at, column: 10 }, right);
  note(kit, sheet, 15, 8, "Ring the engineer about the left tray");
}

/** A café at a corner. */
export const cornerCafes: readonly Layout[] = [
  { name: "corner café, three flavours beside the rota", language: "en", build: cornerCafe },
];
