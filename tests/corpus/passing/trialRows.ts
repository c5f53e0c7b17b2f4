import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { declare } from "./words";

const FIRST = 4;
const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing onset (°C)", { states: "freezing point", as: "formula" }],
  ["Depression ΔT (K)", { states: "depression", as: "typed" }],
  ["Sugars (% m/m)", { states: "sugar share", as: "typed" }],
  ["Sugars (g per 100 g water)", { states: "sugar per 100 g water", as: "formula", format: "0.0" }],
  ["Dissolved solids (g per 100 g)", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Ice at −18 °C (% of formula)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
  [
    "Frozen water at −18 °C (% of water)",
    { states: "ice of water", as: "typed", temperatureC: -18 },
  ],
];

interface Across {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly title: Spot;
}

/** One trial along its row; gives the cell with its core temperature. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, across: Across): Spot {
  const { items, heads, title } = across;
  putRow(sheet, row, 0, [`T${row - FIRST + 31}`, made.title]);
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((item, index) =>
    put(sheet, row, 2 + item, shown(made.grams[index]!, "0.0")),
  );
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: 2 + item }));
  const end = 2 + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => heads[2 + item]!), amounts, unit: "%", amountLabel: title },
    ...{ total, shared: true },
  });
  const lines = `${absolute(span(heads.slice(2, end)))},${span(all)}`;
  ANSWERS.forEach(([, plan], index) => {
    const column = end + 1 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => lines);
  });
  const next = end + 1 + ANSWERS.length;
  nameTarget(sheet, recipe, { row, column: next + 1 });
  declare(sheet, recipe, { row, column: next + 2 }, "contains");
  return put(sheet, row, next, shown(-kit.random.whole(165, 215) / 10, "0.0"));
}

/** Marks the sums and the answers that are formulas, a column each. */
function markColumns({ marked }: Kit, heads: readonly Spot[]): void {
  for (const heading of heads) {
    const spots = marked.recipes.flatMap(({ total, results }) => [
      ...(total?.column === heading.column ? [total] : []),
      ...results.filter((each) => !each.typed && each.label === heading).map(({ spot }) => spot),
    ]);
    if (spots.length > 0) marked.formulaColumns.push({ spots, heading, fixed: [] });
  }
}

/** A technologist's trials, a row each, in per cent by mass. */
function trials(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Trials");
  const title = put(sheet, 0, 0, "Frozen dessert trials, spring: all shares in % m/m");
  const mades = kit.make(5).map((made) => stillMet(perHundred(made)));
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const heads = putRow(sheet, FIRST - 1, 0, [
    ...["Trial", "Working title", ...items, "Sum"],
    ...ANSWERS.map(([label]) => label),
    ...["Core after 24 h (°C)", "Brief", "Label"],
  ]);
  const cores = mades.map((made, index) =>
    trial(kit, sheet, made, FIRST + index, { items, heads, title }),
  );
  const heading = heads[cores[0]!.column]!;
  marked.numberColumns.push({ spots: cores, heading, total: null, kind: "temperature" });
  markColumns(kit, heads);
  note(kit, sheet, 1, 0, "Pilot freezer booked for Tuesdays; keep two cups of every trial.");
}

/** A food technologist. */
export const trialRows: readonly Layout[] = [
  { name: "food technologist, a row a trial in % m/m", language: "en", build: trials },
];
