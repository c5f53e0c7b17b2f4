import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { log, OURS } from "./words";

/** Columns from one card to the next. */
const STEP = 5;

const SAID: readonly Said[] = [
  { label: "first ice at", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "below water by", inCell: "K", states: "depression", as: "typed", decimals: 2 },
  { label: "sugars of all kinds", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "water frozen, drawer at −16 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** A card: what the pan holds on top, the lines with a unit each, what is known below; gives its last row. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number): number {
  const left = STEP * index;
  const unit = index === 1 ? "kg" : "g";
  const format = unit === "kg" ? "0.000" : "0";
  putRow(sheet, 2, left, [`No. ${index + 1}`, made.title]);
  putRow(sheet, 3, left, ["tried", ["in May", "in June", "last summer", "twice"][index]]);
  const rows = made.names.map((name, at) =>
    putRow(sheet, 6 + at, left, [...[name, shown(inUnit(made.grams[at]!, unit), format), unit]]),
  );
  const [names, amounts, unitCells] = [0, 1, 2].map((at) => columnOf(rows, at));
  put(sheet, 4, left, "whole pan");
  const total = sumOf(kit, sheet, { row: 4, column: left + 1 }, amounts!, format);
  put(sheet, 4, left + 2, unit);
  const lines = { names: names!, amounts: amounts!, unitCells: unitCells!, unit, total } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 13, column: left }, [
    ...SAID,
    ...(unit === "g" ? ofAlcohol(made, "alcohol, pure", "g") : []),
  ]);
  nameTarget(sheet, recipe, { row: next, column: left, label: "meant for" });
  return tellIn(sheet, recipe, { row: next + 1, column: left }, OURS);
}

/** Four cards beside each other, the drawer's log below the first. */
function panCards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "cards");
  put(sheet, 0, 0, "pans we make again");
  const own = { sugar: "castor sugar", water: "cold water", "skim milk powder": "nonfat dry milk" };
  const mades = kit.make(4).map((made) => called(upTo(made, 1500), own));
  const ends = mades.map((made, index) => card(kit, sheet, made, index));
  const row = Math.max(...ends) + 2;
  log(
    kit,
    sheet,
    { row, column: 0 },
    {
      ...{ heads: ["drawer", "morning °C", "evening °C"], when: ["top", "middle", "bottom"] },
      ranges: [
        [-18, -15],
        [-17, -14],
      ],
    },
  );
  putRow(sheet, row, STEP, ["defrosted by", "week"]);
  ["me", "Toni", "me", "nobody yet"].forEach((who, at) =>
    putRow(sheet, row + 1 + at, STEP, [who, 14 + 9 * at]),
  );
  note(kit, sheet, row + 6, 0, "card 3 takes the deep pan");
}

/** Somebody who keeps cards, as in a box, on one sheet. */
export const panCardSheets: readonly Layout[] = [
  {
    name: "pan cards beside each other, a unit behind every number",
    language: "en",
    build: panCards,
  },
];
