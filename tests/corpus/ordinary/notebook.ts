import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { ofAlcohol } from "../strollers/words";
import { HOME } from "./voices";
import { day, readings, shares } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the bowl (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Ice at −18 °C, part of the whole mix (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** What the thermometer between the peas said. */
function drawer(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 2, 5, "Bottom drawer");
  readings(
    kit,
    sheet,
    { row: 3, column: 5 },
    {
      heads: ["Looked on", "°C"],
      labels: [45448, 45455, 45462, 45476, 45490].map((serial) => day(serial)),
      ranges: [[-21, -16]],
    },
  );
}

/** One ice on a page: grams, shares, what came of it. */
function notebook(kit: Kit): void {
  const words = { sugar: "caster sugar", "whole milk": "full-fat milk", honey: "runny honey" };
  const made = called(kit.make(1)[0]!, words);
  const sheet = addSheet(kit.marked.book, "Sheet1");
  put(sheet, 0, 0, `${made.title}, the way the children like it`);
  note(kit, sheet, 1, 0, "Makes enough for us and next door");
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["What goes in", "g", "%"],
      cells: (item, grams) => [item, grams],
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 0, "All together");
  const alsoAmounts = shares(kit, sheet, heads[2]!, amounts, { total, percent: "number" });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const alcohol = ofAlcohol(made, "Pure alcohol in it (g)");
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [...ANSWERS, ...alcohol]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Should come out" });
  const last = tellIn(sheet, recipe, { row: next + 2, column: 0 }, HOME);
  putRow(sheet, last + 1, 0, ["Time in the machine", "35 min"]);
  note(kit, sheet, last + 2, 0, "Take the bowl out of the freezer only when the mix is cold.");
  drawer(kit, sheet);
}

/** A page at home. */
export const notebooks: readonly Layout[] = [
  { name: "home page, one ice and the bottom drawer", language: "en", build: notebook },
];
