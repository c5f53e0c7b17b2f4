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
import type { MarkedRecipe, States } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { beside, listed } from "../newcomers/words";
import { probeCheck } from "./probeCheck";
import { given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Honey: keep from infants under 12 months.",
  alcohol: "Alcohol: not for the grandchildren, in pregnancy or before driving.",
  nuts: "Whole nuts: choking hazard, not for the under-fives.",
  egg: "Raw egg yolk: mix to reach 71 °C, or pasteurised yolk.",
};

const STEPS = [-6, -8, -10, -12, -14, -16, -18, -20, -22];
const CURVES: readonly (readonly [heading: string, states: States, basis: string])[] = [
  ["Ice, % of the water", "ice of water", "water"],
  ["Ice, % of the mix", "ice of mix", "mix"],
];

/** Ice against temperature, a row each step. */
function curve(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, left: number): void {
  const { names, amounts, results } = recipe;
  const lines = `${absolute(span(names))},${absolute(span(amounts))}`;
  const heads = putRow(sheet, 4, left, ["T (°C)", ...CURVES.map(([heading]) => heading)]);
  const steps = STEPS.map((step, index) => put(sheet, 5 + index, left, step));
  const { numberColumns, formulaColumns } = kit.marked;
  numberColumns.push({ spots: steps, heading: heads[0]!, total: null, kind: "temperature" });
  CURVES.forEach(([, states, basis], at) => {
    const spots = steps.map((step, index) => {
      const call = `=100*RIME.ICEFRACTION(${lines},${a1(step)},"${basis}")`;
      const spot = put(sheet, step.row, left + 1 + at, shown(call, "0.0"));
      const said = { scale: 100, decimals: 1, typed: false, temperatureC: STEPS[index]! };
      results.push({ states, spot, label: heads[1 + at]!, ...said });
      return spot;
    });
    formulaColumns.push({ spots, heading: heads[1 + at]!, fixed: [] });
  });
}

const DATA: readonly (readonly [string, States, "typed" | "formula", string])[] = [
  ["Freezing pt (°C)", "freezing point", "formula", "0.00"],
  ["Water (g)", "water", "formula", "0"],
  ["Sugars per 100 g water (g)", "sugar per 100 g water", "typed", "0.0"],
  ["Sugars in mix (%)", "sugar share", "typed", "0.0"],
  ["Dissolved (g)", "dissolved", "typed", "0"],
];

/** Characteristic data along a row, each figure under its heading. */
function data(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): void {
  DATA.forEach(([heading, states, as, format], column) => {
    const label = put(sheet, row, column, heading);
    const decimals = format === "0" ? 0 : 1;
    resultAt(sheet, recipe, label, { row: row + 1, column }, { states, as, format, decimals });
  });
}

/** Freezer probe, logged against the clock. */
function probe({ random, marked }: Kit, sheet: CorpusSheet, left: number): void {
  const heads = putRow(sheet, 4, left, ["t (h)", "Probe in mix (°C)"]);
  const spots = [3, 5, 8, 12, 16].map((hours, index) => {
    const read = -([42, 75, 118, 150, 168][index]! + random.whole(-9, 9)) / 10;
    return putRow(sheet, 5 + index, left, [hours, shown(read, "0.0")])[1]!;
  });
  marked.numberColumns.push({ spots, heading: heads[1]!, total: null, kind: "temperature" });
}

/** The masses, and what a full bowl takes. */
function bowlful(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, size: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      ...{ heads: ["No.", "Constituent", "Mass (g)", "Full bowl (g)"], name: 1, amount: 2 },
      cells: (name, grams, index) => [index + 1, name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const bowl = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [size, total] },
    content: (spot) => `=${a1(spot)}*${fixed(size)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, bowl, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: bowl, unit: "g", amountLabel: heads[2]!, total },
  });
}

/** One mix, its curve of ice, and the probe that went with it. */
function run(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Run 23");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Run 23: ${made.title}`);
  const size = given(kit, sheet, [1, 0], ["Bowl capacity", "g", random.pick([1100, 1400, 1600])]);
  const recipe = bowlful(kit, sheet, made, size);
  curve(kit, sheet, recipe, 5);
  probe(kit, sheet, 9);
  data(sheet, recipe, 16);
  nameTarget(sheet, recipe, { row: 19, column: 0, label: "Spec." });
  const free = warnIn(sheet, recipe, { row: 20, column: 0 }, ["Allergens:", OWN]);
  probeCheck(kit);
  note(kit, sheet, free + 1, 0, "Dasher squeaked from 20 min on. Grease before run 24.");
}

/** The engineer's runs. */
export const sweeps: readonly Layout[] = [
  { name: "engineer's ices, run with its curve of ice", language: "en", build: run },
];
