import { a1, addSheet, over, put, putRow, shown, span } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "./hand";

const METHOD = ["start with this", "rain in", "warm, then cool", undefined, "at the very end"];

/** One dessert on a sheet of its own: what is wanted at the top, what it gives at the right. */
function dessert(kit: Kit, given: MadeRecipe): void {
  const { marked, random } = kit;
  const made = called(given, { sugar: "caster sugar", salt: "table salt" });
  const sheet = addSheet(marked.book, made.title);
  putRow(sheet, 0, 0, ["Dessert", made.title]);
  const temperatureC = random.pick([-11, -12, -13]);
  const temperature = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    { label: "Plated at (°C)", bare: "Plated at", value: temperatureC },
  );
  const heads = putRow(sheet, 4, 0, ["Mise en place", "Weight (g)", "Method"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 0, [name, made.grams[index], METHOD[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 6 + rows.length;
  put(sheet, row, 0, "Raw yield");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[1]!, total },
  });
  nameTarget(sheet, recipe, { row: 2, column: 0, label: "Texture wanted" });
  const ice = { temperature, temperatureC, as: "formula", format: "0.0" } as const;
  say(sheet, recipe, { row: 4, column: 4 }, [
    { label: "Starts to freeze", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Water in the mix", inCell: "g", states: "water", as: "typed", decimals: 0 },
    { label: "Share of the water frozen when plated", inCell: "%", states: "ice of water", ...ice },
    { label: "Ice as a share of the mix when plated", inCell: "%", states: "ice of mix", ...ice },
  ]);
  const next = tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "pair" });
  note(kit, sheet, next + 1, 0, "Temper the plates before service.");
}

/** A recipe under a block of facts, the mass of the whole among them. */
function underFacts(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Karte Juli");
  const made = called(kit.make(1)[0]!, { Zucker: "Feinzucker", Wasser: "Leitungswasser" });
  const title = put(sheet, 0, 0, `Dessert: ${made.title}`);
  sheet.merged.push(over([title, { ...title, column: 4 }]));
  putRow(sheet, 1, 0, ["Stand", "Juli", undefined, "Station", "Patisserie"]);
  const top = 11;
  const heads = putRow(sheet, top - 1, 0, ["Pos.", "Einwaage", "ME", "Zutat", "Arbeitsschritt"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + index, 0, [
      ...[index + 1, made.grams[index], "g", name],
      index === 0 ? "vorlegen" : index === 1 ? "einrieseln lassen" : undefined,
    ]),
  );
  const [amounts, unitCells, names] = [columnOf(rows, 1), columnOf(rows, 2), columnOf(rows, 3)];
  const amountLabel = heads[1]!;
  putRow(sheet, 3, 0, ["Rohmasse", undefined, "g"]);
  const total = sumOf(kit, sheet, { row: 3, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unitCells,
    amountLabel,
    unit: "g",
    total,
  });
  const next = say(sheet, recipe, { row: 4, column: 0 }, [
    { label: "Gefrierbeginn", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Gelöstes", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
    {
      ...{ label: "Eis in der Masse bei −14 °C", inCell: "%" },
      ...{ states: "ice of mix", as: "typed", temperatureC: -14 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Konsistenz" });
  const portion = input(
    kit,
    sheet,
    { row: 3, column: 3 },
    { label: "Portion (g)", bare: "Portion", value: kit.random.pick([45, 60, 70]) },
  );
  putRow(sheet, 4, 3, ["Portionen", shown(`=${a1(total)}/${a1(portion)}`, "0")]);
  const last = tell(kit, sheet, recipe, { row: top + rows.length + 1, column: 0, as: "sentence" });
  note(kit, sheet, last + 1, 0, "Vor dem Service 10 Minuten antauen lassen.");
  marked.book.names.push({
    ...{ name: "Rohmassen", refersTo: `'Karte Juli'!${span(amounts)}`, sheet: null },
  });
}

/** Sheets of a restaurant's pastry section. */
export const pastry: readonly Layout[] = [
  {
    ...{ name: "desserts of the evening, a sheet each", language: "en" },
    build: (kit) => {
      for (const made of kit.make(2)) dessert(kit, made);
    },
  },
  { name: "Dessertkarte mit Kopfblock", language: "de", build: underFacts },
];
