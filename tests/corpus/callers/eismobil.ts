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
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { columnOf } from "../kitchens/hand";
import { tellBehind } from "./desk";

const TOP = 4;
const LEFT = [
  "Sorte",
  "gefriert ab (°C)",
  "Zucker (% der Masse)",
  "vom Wasser gefroren bei −14 °C (%)",
];
const RIGHT = ["Ansatz (kg)", "Kugeln", "Fach im Wagen (°C)", "Auf die Tafel", "gedacht als"];

const FACTS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula" },
  { states: "sugar share", as: "typed" },
  { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
];

/** As much as the van takes along. */
const sixfold = (made: MadeRecipe): MadeRecipe =>
  withLines(
    made,
    made.lines.map((each) => ({ ...each, grams: 6 * each.grams })),
  );

const SCOOP = { label: "Gewicht einer Kugel (g)", bare: "Gewicht einer Kugel" };

interface Van {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly title: Spot;
  readonly scoop: Spot;
}

/** One kind in its row; gives the cells with its scoops and its place in the van. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, van: Van): Spot[] {
  const { items, heads, title, scoop } = van;
  const first = LEFT.length;
  put(sheet, row, 0, made.title);
  const at = made.names.map((name) => first + items.indexOf(name));
  const kilograms = made.grams.map((each) => shown(inUnit(each, "kg"), "0.000"));
  const amounts = at.map((column, index) => put(sheet, row, column, kilograms[index]));
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: first + item }));
  const end = first + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all, "0.000");
  const scoops = put(sheet, row, end + 1, shown(`=${a1(total)}*1000/${fixed(scoop)}`, "0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((column) => heads[column]!), amounts, total, amountLabel: title },
    ...{ unit: "kg", shared: true },
  });
  const lines = `${absolute(span(heads.slice(first, end)))},${span(all)}`;
  FACTS.forEach((plan, index) => {
    const label = heads[1 + index]!;
    resultAt(sheet, recipe, label, { row, column: 1 + index }, plan, () => lines);
  });
  tellBehind(sheet, recipe, { row, column: end + 3 }, "mit");
  nameTarget(sheet, recipe, { row, column: end + 4 });
  return [total, scoops, put(sheet, row, end + 2, shown(-kit.random.whole(26, 33) / 2, "0.0"))];
}

/** A row for each kind on the van. */
function van(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Tour");
  put(sheet, 0, 0, "Eismobil, Sorten für die Wochenendtour");
  const title = put(sheet, 1, 0, "Zutaten in kg je Ansatz");
  const value = random.pick([55, 60, 65]);
  const scoop = input(kit, sheet, { row: 2, column: 0 }, { ...SCOOP, value });
  const mades = kit.make(5).map(sixfold);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const heads = putRow(sheet, TOP, 0, [...LEFT, ...items, ...RIGHT]);
  const shelf = { items, heads, title, scoop };
  const rows = mades.map((made, index) => kind(kit, sheet, made, TOP + 1 + index, shelf));
  const end = LEFT.length + items.length;
  const [totals, scoops, cold] = [0, 1, 2].map((at) => columnOf(rows, at)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  marked.formulaColumns.push({ spots: scoops, heading: heads[end + 1]!, fixed: [scoop] });
  const column = { spots: cold, heading: heads[end + 2]!, total: null } as const;
  marked.numberColumns.push({ ...column, kind: "temperature" });
  const { row } = put(sheet, TOP + 1 + rows.length, 0, "auf dem Wagen");
  sumOf(kit, sheet, { row, column: end }, totals, "0.000");
  sumOf(kit, sheet, { row, column: end + 1 }, scoops, "0");
  note(kit, sheet, row + 2, 0, "Sonntag am See das Doppelte einpacken.");
}

/** Sheets of somebody with an ice-cream van. */
export const eismobile: readonly Layout[] = [
  { name: "Eismobil, eine Zeile je Sorte in Kilogramm", language: "de", build: van },
];
