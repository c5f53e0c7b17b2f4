import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf, type Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { placesOf } from "../regulars/columns";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { rowsFor, type Row } from "./matrixRows";
import { sweeps } from "./sweep";
import { down, warning, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "HONEY, not under 12 months",
  alcohol: "ALCOHOL, not for children or in pregnancy, not before driving",
  nuts: "WHOLE NUTS, choking hazard, not under 5 years",
  egg: "RAW EGG YOLK, heat to 71 °C or pasteurised",
};

const FIRST = 5;

interface Frame {
  readonly items: readonly Spot[];
  readonly rows: readonly Row[];
  readonly mould: Spot;
  readonly unit: Spot;
}

/** What is said of a mark, down its column. */
function answers(sheet: CorpusSheet, recipe: MarkedRecipe, place: Place, frame: Frame): void {
  const { items, rows } = frame;
  const { row: top, column } = place;
  const all = items.map((spot) => ({ ...spot, column }));
  const lines = `${absolute(span(items))},${span(all)}`;
  rows.forEach(([, , , plan], index) => {
    const row = top + index;
    const label = { sheet: sheet.name, row, column: 1 };
    resultAt(sheet, recipe, label, { row, column }, plan, () => lines);
  });
  const next = top + rows.length;
  nameTarget(sheet, recipe, { row: next, column });
  const words = warning(recipe.made, "Contains", OWN);
  if (words !== "") recipe.flags.push(put(sheet, next + 1, column, words));
}

/** One mark of mix down its column; gives the cell with the lollies it fills. */
function markOf(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  frame: Frame,
): Spot {
  const { items, mould, unit } = frame;
  down(sheet, [FIRST - 2, column], [`Mk ${column - 2}`, made.title]);
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) => put(sheet, FIRST + item, column, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, column }));
  const end = FIRST + items.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const count = put(sheet, end + 1, column, shown(`=${a1(total)}/${fixed(mould)}`, "0.0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => items[item]!), amounts, unit: "g", amountLabel: unit, total },
    shared: true,
  });
  answers(sheet, recipe, { row: end + 2, column }, frame);
  return count;
}

/** What is known before: the mould, and the temperature it is served at. */
function knowns({ random, marked }: Kit, sheet: CorpusSheet) {
  const temperatureC = -random.whole(11, 16);
  const lines = [
    ["Mm", "Mass per mould", "g", random.pick([70, 75, 85])],
    ["Ts", "Serving temperature", "°C", temperatureC],
  ] as const;
  const [mould, temperature] = lines.map(([symbol, words, unit, value], index) => {
    const [, , , spot] = putRow(sheet, 1 + index, 0, [symbol, words, unit, value]);
    return spot!;
  }) as [Spot, Spot];
  return { mould, temperature, temperatureC, marked };
}

/** Symbols, words and units down the left. */
function leftSide(sheet: CorpusSheet, items: readonly string[], rows: readonly Row[]) {
  const row = FIRST - 1;
  putRow(sheet, row, 0, ["Sym", "Quantity", "Unit"]);
  const spots = items.map((item, index) => {
    const [, name, unit] = putRow(sheet, FIRST + index, 0, [`m${index + 1}`, item, "g"]);
    return { name: name!, unit: unit! };
  });
  const end = FIRST + items.length;
  putRow(sheet, end, 0, ["M", "Total mass", "g"]);
  const [, lollies] = putRow(sheet, end + 1, 0, ["N", "Moulds filled", "off"]);
  rows.forEach(([symbol, words, unit], index) =>
    putRow(sheet, end + 2 + index, 0, [symbol, words, unit]),
  );
  down(sheet, [end + 2 + rows.length, 1], ["Specified as", "Warnings"]);
  return { names: spots.map(({ name }) => name), unit: spots[0]!.unit, lollies: lollies! };
}

/** Marks one to four, everything tabulated with symbols and units. */
function marks(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Marks 1-4");
  put(sheet, 0, 0, "ICES: comparison of marks, rev. C");
  const { mould, temperature, temperatureC } = knowns(kit, sheet);
  const rows = rowsFor(temperature, temperatureC);
  const mades = kit.make(4);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const { names, unit, lollies } = leftSide(sheet, items, rows);
  const frame = { items: names, rows, mould, unit };
  const counts = mades.map((made, index) => markOf(kit, sheet, made, 3 + index, frame));
  marked.formulaColumns.push({ spots: counts, heading: lollies, fixed: [mould] });
  const row = FIRST + items.length + 2 + rows.length + 3;
  note(kit, sheet, row, 0, "Scale checked with the 500 g weight: reads 500.2. No correction made.");
}

/** A retired engineer who makes ices at home. */
export const engineers: readonly Layout[] = [
  { name: "engineer's ices, marks 1 to 4 tabulated", language: "en", build: marks },
  ...sweeps,
];
