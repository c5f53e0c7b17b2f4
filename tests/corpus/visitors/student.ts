import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, sumOf } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { columnOf, stillMet } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { block, labelText } from "./lines";
import { rezeptur } from "./rezeptur";

const SUMMARY: readonly (readonly [heading: string, plan: ResultPlan])[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "formula" }],
  ["Water (% w/w)", { states: "water", as: "formula" }],
  ["Sugars (% w/w)", { states: "sugar share", as: "typed" }],
  ["Sugars per 100 g water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Soluble solids (% w/w)", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Ice at −18 °C (% of the mix)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
];

const LEFT = 5;

/** One sample: its lines in the long list, its answers in a row of the summary. */
function sample(kit: Kit, made: MadeRecipe, at: number, rows: readonly Spot[][]): void {
  const sheet = kit.marked.book.sheets[0]!;
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)];
  const row = 3 + at;
  putRow(sheet, row, LEFT, ["ABC"[at], made.title]);
  const total = sumOf(kit, sheet, { row, column: LEFT + 2 }, amounts, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", total },
    amountLabel: { sheet: sheet.name, row: 2, column: 2 },
  });
  SUMMARY.forEach(([, plan], index) => {
    const column = LEFT + 3 + index;
    const label = { sheet: sheet.name, row: 2, column };
    resultAt(sheet, recipe, label, { row, column }, plan);
  });
  const lines = `${span(names)},${span(amounts)}`;
  const solids = `=RIME.COMPONENT(${lines},"solids")`;
  put(sheet, row, LEFT + 9, shown(solids, "0.0"));
  nameTarget(sheet, recipe, { row, column: LEFT + 10 });
  const told = labelText(made, "Contains");
  if (made.flagged && told !== "") recipe.flags.push(put(sheet, row, LEFT + 11, told));
}

/** Every line of every sample in one long list, the samples compared beside it. */
function longList(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Formulations");
  put(sheet, 0, 0, "Project work: three formulations compared");
  putRow(sheet, 2, 0, ["Sample", "Ingredient", "% w/w"]);
  putRow(sheet, 2, LEFT, [
    ...["Sample", "Product", "Sum (%)", ...SUMMARY.map(([heading]) => heading)],
    ...["Total solids (% w/w)", "Intended serving", "To declare"],
  ]);
  let row = 3;
  kit.make(3).forEach((given, at) => {
    const made = stillMet(perHundred(given));
    const contents = made.names.map((name, index) => ["ABC"[at], name, made.grams[index]]);
    const rows = block(sheet, { row, column: 0 }, contents);
    row += rows.length + 1;
    sample(kit, made, at, rows);
  });
  note(kit, sheet, 8, LEFT, "Percentages by weight of the finished mix, before freezing.");
  solutions(kit, addSheet(kit.marked.book, "Refractometer"));
}

/** Sugar solutions made up for the refractometer. */
function solutions({ marked, random }: Kit, sheet: CorpusSheet): void {
  const headings = ["Solution", "Sucrose, % of the solution", "Sucrose, g per 100 g of water"];
  const heads = putRow(sheet, 0, 0, [...headings, "Sucrose weighed (g)", "Water weighed (g)"]);
  const rows = [1, 2, 3, 4, 5].map((each) => {
    const weighed = [each, undefined, undefined, 15 * each + random.whole(0, 9), 150];
    const cells = putRow(sheet, each, 0, weighed);
    const [sugar, water] = [cells[3]!, cells[4]!];
    const mass = `=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`;
    const share = put(sheet, each, 1, shown(mass, "0.0"));
    const perWater = put(sheet, each, 2, shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[1 + at]!, fixed: [] }),
  );
}

/** Sheets of a student of food technology. */
export const student: readonly Layout[] = [
  { name: "student, samples in one long list", language: "en", build: longList },
  { name: "Studienarbeit, Anteile und Ansatz", language: "de", build: rezeptur },
];
