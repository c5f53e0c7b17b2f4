import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { columnOf, stillMet } from "../kitchens/hand";
import { hasSpirit, lineRows, summed } from "./shared";

const PRESERVES = ["Holunderkompott vom Hof", "Quittengelee von Oma", "Kürbismus vom Hof"];

/** What the farm puts up itself, per 100 g; gives the block with its headings. */
function preserves(kit: Kit): string {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Eingemachtes");
  put(sheet, 0, 0, "Unser Eingemachtes, g je 100 g");
  const heads = putRow(sheet, 2, 0, [
    ...["Name", "Quelle", "Wasser", "Zucker", "Eiweiß", "Fett", "inert", "Allergene"],
  ]);
  const rows = PRESERVES.map((each, index) => {
    const [sugars, inert] = [random.whole(18, 52), random.whole(1, 3)];
    const [protein, fat] = [random.whole(0, 1), 0];
    const numbers = [100 - sugars - inert - protein - fat, sugars, protein, fat, inert];
    const cells = putRow(sheet, 3 + index, 0, [each, "eigene Analyse", ...numbers, "keine"]);
    const [name, , water, sugar] = cells as [Spot, Spot, Spot, Spot];
    marked.ownLines.push({ name, water, sugars: sugar, allergens: cells[7]! });
    return cells;
  });
  return `Eingemachtes!${absolute(span([heads[0]!, ...rows.flat()]))}`;
}

/** A sorbet of what was put up. */
function farmSorbet(kit: Kit, own: string): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Hofsorbet");
  put(sheet, 0, 0, "Sorbet aus dem Keller");
  putRow(sheet, 2, 0, ["Menge (g)", "Zutat"]);
  const lines = [
    [10 * random.whole(25, 40), PRESERVES[random.whole(0, 1)]],
    [10 * random.whole(10, 20), PRESERVES[2]],
    [10 * random.whole(15, 25), "Wasser"],
    [10 * random.whole(4, 8), "Zucker"],
  ] as const;
  const rows = lines.map((each, index) => putRow(sheet, 3 + index, 0, each));
  const [grams, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, 7, 1, "Summe");
  sumOf(kit, sheet, { row: 7, column: 0 }, grams);
  const both = `${span(names)},${span(grams)}`;
  const call = (name: string): string => `=RIME.${name}(${both},${own})`;
  putRow(sheet, 9, 0, [shown(call("FREEZINGPOINT"), "0.0"), "°C", "Gefrierpunkt"]);
  note(kit, sheet, 11, 0, "Kompott vorher passieren.");
}

/** Shares as fractions, kilograms for the churn. */
function shareLines(kit: Kit, made: MadeRecipe) {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Hofeis");
  putRow(sheet, 0, 0, ["Hofeis der Woche", made.title]);
  const words = { label: "Kessel (kg)", bare: "Kessel", value: random.pick([6, 9, 14]) };
  const kettle = input(kit, sheet, { row: 1, column: 0 }, words);
  const heads = putRow(sheet, 3, 0, ["Was", "Anteil", "in den Kessel (kg)"]);
  const rows = lineRows(sheet, { row: 4, column: 0 }, made, (index) => [
    ...[made.names[index], shown(inUnit(made.grams[index]!, "fraction"), "0.0%")],
  ]);
  const plan = { name: 0, amount: 1, heads, word: "alles zusammen", format: "0.0%" };
  const list = summed(kit, sheet, rows, plan);
  const { amounts, total } = list;
  const weighed = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=${fixed(kettle)}*${a1(spot)}`, "0.000")),
  );
  sumOf(kit, sheet, { row: total.row, column: 2 }, weighed, "0.000");
  marked.formulaColumns.push({ spots: weighed, heading: heads[2]!, fixed: [kettle] });
  const column = { spots: amounts, heading: heads[1]!, total } as const;
  marked.numberColumns.push({ ...column, kind: "fraction" });
  return markRecipe(kit, made, { ...list, alsoAmounts: weighed, unit: "fraction" });
}

const ALKOHOL: Said = {
  ...{ label: "Alkohol in g je 100 g", states: "alcohol", as: "typed", decimals: 1 },
};

/** The ice of the week of a farm, its own preserves on sheets before it. */
function farm(kit: Kit): void {
  const made = stillMet(perHundred(kit.make(1)[0]!));
  farmSorbet(kit, preserves(kit));
  const recipe = shareLines(kit, made);
  const sheet = kit.marked.book.sheets.at(-1)!;
  const next = say(sheet, recipe, { row: 3, column: 4 }, [
    { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Zucker in der Masse", states: "sugar share", as: "typed", percent: "format" },
    {
      label: "Eis in der Masse bei −15 °C",
      ...{ states: "ice of mix", as: "typed", temperatureC: -15, percent: "format" },
    },
    { label: "Wasser in g je 100 g", states: "water", as: "typed", decimals: 1 },
    { label: "Gelöstes in g je 100 g", states: "dissolved", as: "typed", decimals: 1 },
    ...(hasSpirit(made) ? [ALKOHOL] : []),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "im Hofladen als" });
  tell(kit, sheet, recipe, { row: recipe.total!.row + 2, column: 0, as: "sentence" });
}

/** Farms that freeze what they grow. */
export const farms: readonly Layout[] = [
  { name: "Hofeis mit Eingemachtem", language: "de", build: farm },
];
