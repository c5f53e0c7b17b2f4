import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { aside, readings } from "./words";

const VOICE: Voice = {
  lead: "Declare:",
  honey: "Honey present, unsuitable below 12 months of age.",
  alcohol: "Alcohol present: adults only; not in pregnancy; not before driving.",
  nuts: "Whole nuts present: choking hazard below 5 years.",
  egg: "Raw egg yolk: hold at 71 °C or source pasteurised.",
};

const OWN = {
  sugar: "sucrose",
  "skim milk powder": "SMP",
  "whole milk": "whole milk 3.5 %",
};

const said = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "T_f", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "ΔT_f", inCell: "K", states: "depression", as: "typed" },
  {
    label: "Water frozen at draw, share of the water",
    ...{ states: "ice of water", as: "formula", percent: "format", temperature, temperatureC },
  },
  {
    label: "Sugars in the mix, mass %",
    ...{ states: "sugar share", as: "typed", decimals: 1 },
  },
];

/** Mass fractions and what the plant has to weigh. */
function formulation(
  kit: Kit,
  sheet: CorpusSheet,
  batch: Spot,
  temperature: Spot,
  degrees: number,
) {
  const made = called(largestFirst(kit.make(1)[0]!), OWN);
  putRow(sheet, 0, 0, ["Pilot plant run sheet", undefined, "Product", made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 6, column: 1 },
    {
      heads: ["Component", "w (mass fraction)", "Weigh (kg)", "Scale", "Added at (°C)"],
      cells: (item, grams, index) => [
        ...[item, shown(inUnit(grams, "fraction"), "0.000"), undefined],
        ...[kit.random.pick(["bench", "floor"]), index === 0 ? 20 : 5 * kit.random.whole(4, 9)],
      ],
    },
  );
  names.forEach(({ row }, index) => put(sheet, row, 0, `C${index + 1}`));
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, weighed, "0.000");
  put(sheet, end, 1, "Σ");
  const heading = heads[1]!;
  kit.marked.numberColumns.push({ spots: amounts, heading, total, kind: "fraction" });
  const added = names.map(({ row }) => ({ ...heading, row, column: 5 }));
  kit.marked.numberColumns.push({
    ...{ spots: added, heading: heads[4]!, total: null, kind: "temperature" },
  });
  const cells = { names, amounts, total, alsoAmounts: weighed, amountLabel: heading };
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, said(temperature, degrees));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Specification" });
  return tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
}

/** A run on the pilot plant with its readings. */
function run(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Run");
  const at = (row: number) => ({ row, column: 2 });
  const batch = input(kit, sheet, at(2), {
    ...{ label: "Batch (kg)", bare: "Batch", value: kit.random.pick([12, 25, 40]) },
  });
  const degrees = kit.random.pick([-5, -5.5, -6]);
  const draw = { label: "Draw temperature (°C)", bare: "Draw temperature", value: degrees };
  const temperature = input(kit, sheet, at(3), draw);
  putRow(sheet, 4, 2, ["Overrun wanted (%)", kit.random.pick([0, 20, 35])]);
  formulation(kit, sheet, batch, temperature, degrees);
  const minutes = [0, 3, 6, 9, 12, 15].map((minute) => [minute]);
  const heads = aside(
    sheet,
    { row: 6, column: 7 },
    ["t (min)", "Barrel wall (°C)", "Glycol in (°C)", "Dasher (A)"],
    minutes.map(([minute]) => [
      ...[minute, undefined, undefined, shown(kit.random.whole(31, 58) / 10, "0.0")],
    ]),
  );
  readings(kit, sheet, heads[1]!, { count: 6, from: -19, to: -14 });
  readings(kit, sheet, heads[2]!, { count: 6, from: -26, to: -22, by: 2 });
  note(kit, sheet, 14, 7, "Dasher current is logged by hand; resolution 0.1 A.");
}

/** A development kitchen with a small plant. */
export const pilotPlants: readonly Layout[] = [
  { name: "pilot plant run sheet in mass fractions", language: "en", build: run },
];
