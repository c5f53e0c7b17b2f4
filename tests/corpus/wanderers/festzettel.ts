import { a1, addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { euros, heedAt, readings } from "./worte";

/** What the sheet on the wall says of a kind. */
const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "wird fest ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser in allem", inCell: "g", states: "water", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alkohol in allem", "g"),
  { label: "Zucker in der Masse", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Eis in der Masse bei −18 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
];

const FROM = ["Großmarkt", "Hofladen", "Molkerei", "haben wir noch"];

const HEADS = ["kaufen bei", "kg", "Zutat", "€ je kg", "€"];

/** One kind with what it costs; gives the row for the next. */
function slip(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  const { random } = kit;
  putRow(sheet, top, 0, [made.title, `Stand ${random.pick(["Nord", "Süd", "Schulhof"])}`]);
  const [, amountLabel] = putRow(sheet, top + 1, 0, HEADS);
  const rows = made.names.map((name, index) => {
    const from = name === "Wasser" ? "Leitung" : random.pick(FROM);
    const kilos = inUnit(made.grams[index]!, "kg");
    return putRow(sheet, top + 2 + index, 0, [from, kilos, name, euros(kit, name)]);
  });
  const [, amounts, names] = [0, 1, 2].map((at) => columnOf(rows, at)) as [Spot[], Spot[], Spot[]];
  const costs = amounts.map((spot) =>
    put(sheet, spot.row, 4, `=ROUND(${a1(spot)}*${a1({ ...spot, column: 3 })},2)`),
  );
  const row = top + 2 + rows.length;
  const total = put(sheet, row, 1, `=ROUND(SUM(${span(amounts)}),3)`);
  put(sheet, row, 2, "zusammen");
  put(sheet, row, 4, `=ROUND(SUM(${span(costs)}),2)`);
  const plan = { names, amounts, unit: "kg", amountLabel: amountLabel!, total } as const;
  const recipe = markRecipe(kit, made, plan);
  const next = say(sheet, recipe, { row: row + 1, column: 2 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 2, label: "so verkaufen wir es" });
  return heedAt(sheet, recipe, { row: next + 1, column: 2 }, "Schild: enthält") + 1;
}

const HOURS = ["11 Uhr", "13 Uhr", "15 Uhr", "17 Uhr"];

/** Slips for the stands, and what the borrowed freezer showed, as a file. */
function slips(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zettel");
  note(kit, sheet, 0, 0, "Sommerfest Feuerwehr, Zettel für die Stände");
  let top = 2;
  for (const made of kit.make(4)) {
    top = slip(kit, sheet, called(upTo(made, 7000), { Zucker: "Haushaltszucker" }), top);
  }
  const heads = putRow(sheet, top, 0, ["geliehene Truhe", "Temperatur (°C)"]);
  HOURS.forEach((when, index) => put(sheet, top + 1 + index, 0, when));
  readings(kit, sheet, heads[1]!, { count: HOURS.length, tenths: [-192, -148] });
}

/** Slips of a fair as a file. */
export const fairSlips: readonly Layout[] = [
  {
    ...{ name: "Vereinsfest, Zettel der Stände als Datei", language: "de" },
    ...{ isCsv: true, build: slips },
  },
];
