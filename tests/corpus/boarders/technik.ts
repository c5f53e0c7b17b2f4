import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { hasSpirit, oneOf } from "../guests/words";
import { stillMet } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { columnsOf, tabulate, type Fact } from "./worte";

const HEADS = [
  ...["Pos.", "Komponente", "Massenanteil (%)", "Einwaage (g)"],
  ...["Wassergehalt (%)", "Trockenmasse (%)", "Wasser (g)", "Trockenmasse (g)"],
];

/** What nuts and biscuits hold, though none of it is there to freeze. */
const DRY: readonly (readonly [RegExp, number])[] = [
  [/nuts|pistachios|pecans/, 4],
  [/coconut$|biscuits/, 3],
];

/** A mix without spirit and without pieces in it. */
const isPlain = (made: MadeRecipe): boolean =>
  !hasSpirit(made) && made.lines.every(({ en }) => !DRY.some(([name]) => name.test(en)));

/** Water and dry mass in 100 g of a line. */
function contents({ lines, names }: MadeRecipe, index: number): readonly [number, number] {
  const part = (name: string): number => {
    const answer = callFunction("COMPONENT", [[names[index]!]], [[100]], name)[0]![0];
    return typeof answer === "number" ? answer : 0;
  };
  const bound = DRY.find(([name]) => name.test(lines[index]!.en))?.[1];
  const wet = Number((bound ?? part("water")).toFixed(1));
  return [wet, Number((100 - wet - Number(part("ethanol").toFixed(1))).toFixed(1))];
}

interface Balance {
  readonly rows: readonly (readonly Spot[])[];
  readonly heads: readonly Spot[];
  readonly end: number;
}

/** A row for each component: what is typed, then three formulas. */
function balance(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batch: Spot): Balance {
  const top = 4;
  const heads = putRow(sheet, top, 0, HEADS);
  const rows = made.names.map((name, index) => {
    const row = top + 1 + index;
    const [wet, dry] = contents(made, index);
    const share = shown(made.grams[index]!, "0.0");
    const cells = putRow(sheet, row, 0, [index + 1, name, share]);
    const weighed = shown(`=${a1(cells[2]!)}/100*${fixed(batch)}`, "0.0");
    const [amount, ofWater, ofDry] = putRow(sheet, row, 3, [
      ...[weighed, shown(wet, "0.0"), shown(dry, "0.0")],
    ]) as [Spot, Spot, Spot];
    const parts = [ofWater, ofDry].map((each) => shown(`=${a1(amount)}*${a1(each)}/100`, "0.0"));
    return [...cells, amount, ofWater, ofDry, ...putRow(sheet, row, 6, parts)];
  });
  for (const column of [3, 6, 7]) {
    const [spots] = columnsOf(rows, column) as [Spot[]];
    const reads = column === 3 ? [batch] : [];
    kit.marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: reads });
  }
  for (const column of [4, 5]) {
    const [spots] = columnsOf(rows, column) as [Spot[]];
    kit.marked.numberColumns.push({
      spots,
      heading: heads[column]!,
      total: null,
      kind: "per cent",
    });
  }
  return { rows, heads, end: top + 1 + rows.length };
}

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt", "°C", { states: "freezing point", as: "formula" }],
  ["Gefrierpunktserniedrigung", "K", { states: "depression", as: "typed" }],
  ["Wasser in 100 g Mix", "g", { states: "water", as: "typed", decimals: 1 }],
  ["gelöste Stoffe in 100 g Mix", "g", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Zucker je 100 g Wasser", "g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Zucker im Mix", "%", { states: "sugar share", as: "typed" }],
  [
    "ausgefrorener Wasseranteil bei −18 °C",
    "%",
    { states: "ice of water", as: "typed", temperatureC: -18 },
  ],
  ["Eisanteil am Mix bei −18 °C", "%", { states: "ice of mix", as: "typed", temperatureC: -18 }],
];

/** A recipe in per cent, weighed for a kilogram, with its balance of water and dry mass. */
function sheetOf(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bilanz");
  const made = stillMet(perHundred(oneOf(kit, isPlain)));
  putRow(sheet, 0, 0, ["Rezeptur", made.title, `Stand ${kit.random.whole(2, 9)}`]);
  const words = { label: "Ansatz (g)", bare: "Ansatz", value: 1000 };
  const batch = input(kit, sheet, { row: 1, column: 0 }, words);
  const { rows, heads, end } = balance(kit, sheet, made, batch);
  const [names, amounts, alsoAmounts] = columnsOf(rows, 1, 2, 3) as [Spot[], Spot[], Spot[]];
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  put(sheet, end, 1, "Summe");
  for (const column of [3, 6, 7]) {
    sumOf(kit, sheet, { row: end, column }, columnsOf(rows, column)[0]!, "0.0");
  }
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "%", amountLabel: heads[2]! },
  });
  const block = { row: end + 3, column: 1, facts: FACTS, unit: 1, value: 2 };
  put(sheet, end + 2, 1, "Kennzahlen");
  const next = tabulate(sheet, recipe, block);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Anforderung" });
  const free = tell(kit, sheet, recipe, { row: next + 2, column: 1, as: "pair" });
  note(kit, sheet, free + 1, 1, "Wassergehalte aus Spezifikation und Nährwerttabelle.");
}

/** A food technologist's balance. */
export const bilanzen: readonly Layout[] = [
  { name: "Lebensmitteltechnikerin, Wasser und Trockenmasse", language: "de", build: sheetOf },
];
