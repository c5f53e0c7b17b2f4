import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { DAHEIM } from "./voices";
import { table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "wird fest ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser drin (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "in der Truhe bei −18 °C gefroren, % vom Wasser",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** A recipe without a total, what is known of it right below; gives the next free row. */
function one(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number, top: number): number {
  putRow(sheet, top, 0, [`${index + 1}.`, made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Gramm", "Zutaten"],
      cells: (item, grams) => [grams, item],
      ...{ name: 1, amount: 0 },
    },
  );
  const recipe = markRecipe(kit, made, { names, amounts, amountLabel: heads[0]!, unit: "g" });
  const next = say(sheet, recipe, { row: end, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "passt für" });
  return tellIn(sheet, recipe, { row: next + 1, column: 1 }, DAHEIM) + 1;
}

const MINUTES = [
  ["Eismaschine", "Minuten"],
  ["vorkühlen", 15],
  ["rühren", 40],
  ["nachfrieren", 90],
];

const BIRTHDAYS = [
  ["wer", "wünscht sich"],
  ["Oma", "was mit Obst"],
  ["Jule", "Eis am Stiel"],
  ["Papa", "egal, viel"],
];

/** The family's favourites, one under the other. */
function familie(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  put(sheet, 0, 0, "Unser Lieblingseis");
  note(kit, sheet, 1, 0, "alles auf der Küchenwaage wiegen, auch Milch und Saft");
  const words = {
    Zucker: "Haushaltszucker",
    Vollmilch: "Milch 3,5 %",
    "Sahne 35 %": "Schlagsahne 35 %",
  };
  let row = 3;
  kit.make(3).forEach((made, index) => {
    row = one(kit, sheet, called(made, words), index, row);
  });
  table(sheet, { row: 3, column: 5 }, MINUTES);
  table(sheet, { row: 9, column: 5 }, BIRTHDAYS);
}

/** A family. */
export const familien: readonly Layout[] = [
  { name: "Familie, drei Lieblingseise untereinander", language: "de", build: familie },
];
