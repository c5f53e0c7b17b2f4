import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, largestFirst } from "../kitchens/hand";
import { absolute, freezesAt, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { formulaColumn, readings, warnAt } from "./words";

const AFTER = [
  ...[
    "Σ w",
    "Gefrierpunkt in °C",
    "ΔT in K",
    "Eis bei T(Lager), % des Wassers",
    "Eis bei T(Lager), % der Masse",
  ],
  ...["g Zucker/100 g Wasser", "Gefrierpunkt gemessen in °C", "Soll", "Kennzeichnung"],
];

interface Plan {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly store: Spot;
  readonly storeC: number;
}

const plansFor = ({ store, storeC }: Plan): readonly ResultPlan[] => {
  const cold = { as: "formula", temperature: store, temperatureC: storeC, format: "0" } as const;
  return [
    { states: "freezing point", as: "formula" },
    { states: "depression", as: "formula" },
    { states: "ice of water", ...cold },
    { states: "ice of mix", ...cold },
    { states: "sugar per 100 g water", as: "formula", format: "0.0" },
  ];
};

interface Trial {
  readonly all: readonly Spot[];
  readonly alsoAmounts: readonly Spot[];
  readonly read: Spot;
}

/** The grams of a trial, on the other sheet in the same row. */
function gramsRow(sheet: CorpusSheet, all: readonly Spot[], batch: Spot): Spot[] {
  return all.map((spot) => {
    const at = { ...spot, sheet: sheet.name };
    const formula = `=${calledFrom(at, spot)}*${fixed(batch)}`;
    return put(sheet, spot.row, spot.column, shown(formula, "0.0"));
  });
}

/** A trial along its row: mass fractions, what comes out, what was measured. */
function trial(kit: Kit, made: MadeRecipe, row: number, plan: Plan, batch: Spot): Trial {
  const { items, heads } = plan;
  const [sheet, grams] = kit.marked.book.sheets as [CorpusSheet, CorpusSheet];
  put(sheet, row, 0, `V${row - 3} ${made.title}`);
  put(grams, row, 0, `V${row - 3} ${made.title}`);
  const at = made.names.map((name) => 1 + items.indexOf(name));
  const amounts = at.map((column, index) =>
    put(sheet, row, column, shown(inUnit(made.grams[index]!, "fraction"), "0.000")),
  );
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: 1 + item }));
  const end = 1 + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all, "0.000");
  const weighed = gramsRow(grams, all, batch);
  sumOf(kit, grams, { row, column: end }, weighed, "0");
  const alsoAmounts = weighed.filter(({ column }) => at.includes(column));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((column) => heads[column]!), amounts, alsoAmounts, unit: "fraction", total },
    ...{ shared: true, amountLabel: heads[0]! },
  });
  const lines = `${absolute(span(heads.slice(1, end)))},${span(all)}`;
  plansFor(plan).forEach((each, index) => {
    const column = end + 1 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, each, () => lines);
  });
  const read = put(sheet, row, end + 6, shown(freezesAt(made.names, made.grams), "0.0"));
  nameTarget(sheet, recipe, { row, column: end + 7 });
  warnAt(sheet, recipe, { row, column: end + 8 }, "Enthält:");
  return { all, alsoAmounts: weighed, read };
}

/** Mass fractions on one sheet, grams for the laboratory on the next. */
function design(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Plan");
  const grams = addSheet(marked.book, "Einwaagen");
  put(sheet, 0, 0, "Versuchsplan Speiseeis, Massenanteile w");
  const storeC = random.pick([-16, -18, -20]);
  const place = { row: 1, column: 0 };
  const words = { label: "T(Lager) in °C", bare: "T(Lager)", value: storeC };
  const store = input(kit, sheet, place, words);
  const size = { label: "Ein Versuch in g", bare: "Ein Versuch", value: random.pick([400, 750]) };
  const batch = input(kit, grams, place, size);
  const mades = kit.make(4).map(largestFirst);
  const items = itemsOf(mades);
  const heads = putRow(sheet, 3, 0, ["Versuch, w", ...items, ...AFTER]);
  const labels = putRow(grams, 3, 0, ["Versuch, g", ...items, "Summe"]);
  const plan = { items, heads, store, storeC };
  const rows = mades.map((made, index) => trial(kit, made, 4 + index, plan, batch));
  items.forEach((_, at) => {
    const weighed = rows.map(({ alsoAmounts }) => alsoAmounts);
    formulaColumn(kit, labels[1 + at]!, weighed, at, [batch]);
  });
  readings(
    kit,
    heads[items.length + 7]!,
    rows.map(({ read }) => [read]),
    0,
  );
  const means = columnOf(
    rows.map(({ read }) => [read]),
    0,
  );
  const column = items.length + 7;
  put(sheet, 8, column - 1, "Mittel");
  put(sheet, 8, column, shown(`=AVERAGE(${a1(means[0]!)}:${a1(means.at(-1)!)})`, "0.0"));
  note(kit, sheet, 9, 0, "Leeres Feld: Rohstoff in diesem Versuch nicht verwendet.");
}

/** A food technologist's trials. */
export const versuchsplaene: readonly Layout[] = [
  { name: "Versuchsplan, Massenanteile und Einwaagen", language: "de", build: design },
];
