import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { cautionsIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst, strip } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { readings, rowsOf, WARNS } from "./words";

const known = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "T(freeze), °C", states: "freezing point", as: "formula", format: "0.00" },
  { label: "ΔT(freeze), K", states: "depression", as: "typed", decimals: 2 },
  { label: "w(sugars), %", states: "sugar share", as: "typed", decimals: 1 },
  {
    ...{ label: "Frozen part of the water in the cold chain", percent: "format" },
    ...{ states: "ice of water", as: "formula", temperature, temperatureC },
  },
];

/** Allergens line by line, the cautions under the list. */
function declare(sheet: CorpusSheet, { made, names, flags }: MarkedRecipe, end: number): void {
  if (!made.flagged) return;
  names.forEach(({ row }, index) => {
    const allergen = made.lines[index]!.allergen?.en;
    if (allergen !== undefined) flags.push(put(sheet, row, 4, allergen));
  });
  const cautions = cautionsIn(made, WARNS);
  if (cautions !== "") flags.push(put(sheet, end + 5, 1, cautions));
}

/** One product in mass fractions, the run in kilograms beside them. */
function spec(kit: Kit, made: MadeRecipe, at: number): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, `PS-${40 + at}`);
  putRow(sheet, 0, 0, [`PS-${40 + at}`, made.title, undefined, `issue ${random.whole(2, 7)}`]);
  const run = given(kit, sheet, [1, 1], ["Run", "kg", random.pick([150, 300, 450, 600])]);
  const chain = given(kit, sheet, [2, 1], ["Cold chain", "°C", -18]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Code", "Component", "Mass fraction", "In the run (kg)", "Allergen"],
      cells: (name, grams, index) => [
        `R${at + 1}${String(index + 1).padStart(2, "0")}`,
        ...[name, shown(inUnit(grams, "fraction"), "0.000")],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const scaled = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [run] },
    content: (spot) => `=${a1(spot)}*${fixed(run)}`,
  });
  put(sheet, end, 1, "Total");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, scaled, "0.00");
  const share = { spots: amounts, heading: heads[2]!, total, kind: "fraction" } as const;
  marked.numberColumns.push(share);
  const cells = { names, amounts, alsoAmounts: scaled, unit: "fraction", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
  strip(sheet, recipe, { row: end + 2, column: 1 }, known(chain, -18));
  nameTarget(sheet, recipe, { row: end + 4, column: 1, label: "Eating quality" });
  declare(sheet, recipe, end);
  rowsOf(sheet, { row: 5, column: 7 }, [
    ["Pack", "Count"],
    ["Sleeve", random.pick([4, 6])],
    ["Case", random.pick([12, 16])],
    ["Pallet", random.pick([72, 96])],
  ]);
}

/** Loads that left, and what the logger in the lorry showed. */
function loads(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Loads");
  readings(
    kit,
    sheet,
    { row: 0, column: 0 },
    {
      heads: ["Lorry", "Logger at loading (°C)"],
      when: ["Mon, north", "Tue, south", "Wed, ferry", "Thu, north", "Fri, south"],
      tenths: [-239, -201],
    },
  );
  note(kit, sheet, 8, 0, "No load leaves with a warm logger; call the cold store first.");
}

/** Specifications that go to the buyer. */
function specs(kit: Kit): void {
  const own = { sugar: "white sugar", water: "drinking water", "skim milk powder": "SMP" };
  kit.make(3).forEach((made, at) => spec(kit, called(hundred(largestFirst(made)), own), at));
  loads(kit);
}

/** A maker's specifications in mass fractions. */
export const exportSpecs: readonly Layout[] = [
  { name: "frozen dessert maker, specifications in mass fractions", language: "en", build: specs },
];
