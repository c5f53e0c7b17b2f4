import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { page } from "../page";

const POUR: readonly (readonly [name: string, unit: string, from: number, to: number])[] = [
  ["water", "cup", 2, 4],
  ["sugar", "cup", 1, 2],
  ["lemon juice", "tbsp", 3, 8],
  ["fine salt", "tsp", 1, 2],
];

/** A recipe in cups and spoons, its grams worked out beside. */
function cups(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "From the book");
  put(sheet, 0, 0, "Grandmother's lemon ice");
  const heads = putRow(sheet, 2, 0, ["Ingredient", "Measure", "Unit", "Grams"]);
  const lines = POUR.map(([name, unit, from, to], index) => {
    const quantity = random.whole(from * 2, to * 2) / (unit === "tsp" ? 4 : 2);
    const cells = putRow(sheet, 3 + index, 0, [name, quantity, unit]) as [Spot, Spot, Spot];
    const grams = `=RIME.GRAMS(${cells.map(a1).join(",")})`;
    return { name: cells[0], grams: put(sheet, 3 + index, 3, shown(grams, "0.0")) };
  });
  const [names, spots] = [lines.map(({ name }) => name), lines.map(({ grams }) => grams)];
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  const sum = put(sheet, 3 + lines.length, 3, shown(`=SUM(${span(spots)})`, "0.0"));
  put(sheet, 3 + lines.length, 0, "Total");
  marked.sums.push({ spot: sum, parts: spots });
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(spots)})`;
  putRow(sheet, 5 + lines.length, 0, ["Freezing point (°C)", shown(call, "0.00")]);
  note(kit, sheet, 7 + lines.length, 0, "Level cups, sugar not packed.");
}

/** A table whose columns formulas call by name. */
function structured(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Batch");
  page(kit, sheet, kit.make(1)[0]!, {
    list: {
      columns: ["name", "amount", "remark"],
      headings: { name: "Ingredient", amount: "Grams", remark: "Notes" },
      ...{ unit: "g", table: "Mix" },
    },
    tell: "sentence",
  });
  const { made } = kit.marked.recipes[0]!;
  putRow(sheet, 0, 5, ["Batch mass (g)", "=SUM(Mix[Grams])"]);
  const known = callFunction(
    "FREEZINGPOINT",
    made.names.map((name) => [name]),
    made.grams.map((grams) => [grams]),
  )[0]![0];
  if (typeof known !== "number") return;
  const call = "=RIME.FREEZINGPOINT(Mix[Ingredient],Mix[Grams])";
  putRow(sheet, 1, 5, ["Freezing point (°C)", shown(call, "0.00")]);
}

/** Household measures, and a table's columns by name. */
export const measures: readonly Layout[] = [
  { name: "cups and spoons", language: "en", build: cups },
  { name: "structured references", language: "en", build: structured },
];
