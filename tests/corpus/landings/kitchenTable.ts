import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import type { MadeRecipe } from "../recipes";

const VOICE: Voice = {
  lead: "Has in it:",
  honey: "Honey, so none for baby cousins under 12 months.",
  alcohol: "Boozy! Not for the kids, not if you're pregnant, not if you're driving home.",
  nuts: "Whole nuts, little ones under 5 could choke.",
  egg: "Raw yolk, so heat to 71 °C or get the pasteurised carton.",
};

const FACTS: readonly Said[] = [
  { label: "freezes from", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "water all told", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "water that is frozen in our freezer, −18 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    ...{ label: "sugars to 100 g water", inCell: "g", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 0 },
  },
];

const STARS = ["everyone had seconds", "bit icy on day 3", "keep as is", "for birthdays only"];

/** One ice, amounts before the names as in a cookery book; gives the next free row. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, tins: Spot): number {
  put(sheet, row, 2, made.title);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 1 + index, 0, [made.grams[index]!, "g", name]),
  );
  const [amounts, unitCells] = [columnOf(rows, 0), columnOf(rows, 1)];
  const names = columnOf(rows, 2);
  const end = row + 1 + rows.length;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "in the tin"]);
  const today = beside(kit, put(sheet, row, 3, "today (g)"), amounts, {
    ...{ sheet, format: "0", fixed: [tins] },
    content: (spot) => `=${a1(spot)}*${fixed(tins)}`,
  });
  const cells = { names, amounts, alsoAmounts: today, unitCells, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const said = say(sheet, recipe, { row: row + 1, column: 5 }, FACTS);
  nameTarget(sheet, recipe, { row: said, column: 5, label: "came out as" });
  note(kit, sheet, row, 5, kit.random.pick(STARS));
  return Math.max(tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE), said + 1) + 1;
}

/** The thermometer left in the chest freezer over some days. */
function freezer(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 0, 9, ["chest freezer", "top (°C)", "bottom (°C)"]);
  const rows = ["Fri", "Sat", "Sun", "Mon", "Tue"].map((day, index) =>
    putRow(sheet, 1 + index, 9, [
      ...[day, shown(-random.whole(33, 37) / 2, "0.0"), shown(-random.whole(38, 44) / 2, "0.0")],
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** Four ices down one sheet. */
function kitchenTable(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "ices");
  put(sheet, 0, 0, "Ices we make, newest at the bottom");
  const tins = putRow(sheet, 1, 0, [kit.random.pick([2, 3]), undefined, "tins we make today"])[0]!;
  const words = { water: "cold water", sugar: "white sugar", "whole milk": "full fat milk" };
  const mades = kit.make(4).map((made) => called(made, words));
  const end = mades.reduce((row, made) => ice(kit, sheet, made, row, tins), 3);
  freezer(kit, sheet);
  note(kit, sheet, end, 0, "Write the date on the lid, nobody ever remembers.");
}

/** A family that makes ices at home. */
export const kitchenTables: readonly Layout[] = [
  { name: "kitchen table, four ices down the sheet", language: "en", build: kitchenTable },
];
