import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { log, OURS } from "./words";

const SAID: readonly Said[] = [
  { label: "Initial freezing point [°C]", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Water, all sources [g/100 g]", states: "water", as: "formula", format: "0.0" },
  { label: "Dissolved matter [g/100 g]", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Sugars [g per 100 g water]", states: "sugar per 100 g water", as: "formula" },
  {
    label: "Ice, mass share of mix at −20 °C [%]",
    ...{ states: "ice of mix", as: "typed", temperatureC: -20, decimals: 1 },
  },
];

interface Spec {
  readonly made: MadeRecipe;
  readonly sheet: CorpusSheet;
  readonly run: CorpusSheet;
}

/** The run's own list, each name and amount called from the specification. */
function runLines(kit: Kit, { run, made }: Spec, names: readonly Spot[], shares: readonly Spot[]) {
  const batch = given(kit, run, [2, 0], ["Mix wanted", "kg", kit.random.pick([40, 60, 120])]);
  const [, heading] = putRow(run, 4, 0, ["Material", "Tip in [kg]", "Lot", "Initials"]);
  const spots = made.names.map((_, index) => {
    const home = { sheet: run.name, row: 5 + index, column: 0 };
    put(run, home.row, 0, `=${calledFrom(home, names[index]!)}`);
    put(run, home.row, 2, `L${kit.random.whole(2000, 9999)}`);
    const share = calledFrom(home, shares[index]!);
    return put(run, home.row, 1, shown(`=${share}/100*${absolute(a1(batch))}`, "0.000"));
  });
  kit.marked.formulaColumns.push({ spots, heading: heading!, fixed: [batch] });
  const row = 5 + spots.length;
  put(run, row, 0, "On the scale display");
  sumOf(kit, run, { row, column: 1 }, spots, "0.000");
  return spots;
}

/** The specification: position, function, material and share. */
function specified(kit: Kit, spec: Spec): MarkedRecipe {
  const { sheet, made } = spec;
  const heads = putRow(sheet, 4, 1, ["Pos.", "Material", "Share [%]", "Scale"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 1, [
      ...[10 * (index + 1), name, shown(made.grams[index]!, "0.0")],
      made.grams[index]! < 10 ? "bench" : "floor",
    ]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)];
  const row = 5 + rows.length;
  put(sheet, row, 2, "Check sum");
  const total = sumOf(kit, sheet, { row, column: 3 }, amounts, "0.0");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[2]!, total, kind: "per cent" });
  const alsoAmounts = runLines(kit, spec, names, amounts);
  const cells = { names, amounts, alsoAmounts, unit: "%", amountLabel: heads[2]!, total } as const;
  return markRecipe(kit, made, cells);
}

/** A specification in per cent and the sheet that goes to the plant. */
function specAndRun(kit: Kit): void {
  const made = called(largestFirst(kit.make(1)[0]!), {
    ...{ sugar: "white granulated sugar", "glucose syrup DE 42": "glucose syrup 42 DE" },
    ...{ "cream 35 % fat": "cream 35 %", "skim milk powder": "SMP" },
  });
  const sheet = addSheet(kit.marked.book, "Specification");
  const run = addSheet(kit.marked.book, "Run sheet");
  putRow(sheet, 0, 1, ["Product", made.title]);
  putRow(sheet, 1, 1, ["Issue", 3]);
  put(run, 0, 0, `Run sheet: ${made.title}`);
  const recipe = specified(kit, { made, sheet, run });
  put(sheet, 4, 6, "Calculated");
  const next = say(sheet, recipe, { row: 5, column: 6 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Serving style" });
  tellIn(sheet, recipe, { row: next + 2, column: 6 }, OURS);
  const end = 6 + made.names.length;
  log(
    kit,
    run,
    { row: end + 3, column: 0 },
    {
      ...{ heads: ["Barrel outlet", "Product [°C]", "Hardening tunnel [°C]"] },
      when: ["start", "after 15 min", "after 30 min", "end"],
      ranges: [
        [-7, -5],
        [-36, -31],
      ],
    },
  );
  note(kit, sheet, end + 2, 1, "Replaces issue 2; stabiliser trial was dropped.");
  note(kit, run, end + 9, 0, "File behind the week's tab.");
}

/** A technologist with a specification and a run sheet. */
export const specAndRunBooks: readonly Layout[] = [
  {
    name: "specification in per cent and run sheet in kilograms",
    language: "en",
    build: specAndRun,
  },
];
