import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { answersDown, placesOf, tellIn, type Answer } from "./columns";
import { specs } from "./specs";

const percent = "format" as const;

const PROPERTIES: readonly Answer[] = [
  ["Freezing point, calculated (°C)", { states: "freezing point", as: "formula" }],
  ["Freezing point depression (K)", { states: "depression", as: "typed" }],
  ["Sugars, share of the mix", { states: "sugar share", as: "formula", percent }],
  [
    "Sugars on water (g per 100 g water)",
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  [
    "Water frozen at −18 °C, share of the water",
    { states: "ice of water", as: "typed", temperatureC: -18, percent },
  ],
  [
    "Ice at −12 °C, share of the mix",
    { states: "ice of mix", as: "typed", temperatureC: -12, percent },
  ],
];

const FIRST = 5;

interface Plan {
  readonly column: number;
  readonly names: readonly Spot[];
}

/** The shares of one formula, down its column. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { column, names }: Plan) {
  const heading = put(sheet, 4, column, `Formula ${"ABC"[column - 2]}, share of the mix`);
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) => {
    const share = Number((made.grams[index]! / 100).toFixed(4));
    return put(sheet, FIRST + item, column, shown(share, "0.0%"));
  });
  const all = names.map((spot) => ({ ...spot, column }));
  const total = sumOf(kit, sheet, { row: FIRST + names.length, column }, all, "0.0%");
  kit.marked.numberColumns.push({ spots: amounts, heading, total, kind: "fraction" });
  return markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "fraction", total },
    ...{ shared: true, amountLabel: heading },
  });
}

/** One formula of the matrix with its properties. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: Plan): void {
  const { column, names } = plan;
  put(sheet, 3, column, made.title);
  const recipe = shares(kit, sheet, made, plan);
  const all = names.map((spot) => ({ ...spot, column }));
  const lines = `${absolute(span(names))},${span(all)}`;
  const row = FIRST + names.length + 2;
  answersDown(sheet, recipe, PROPERTIES, { row, column, labels: 1 }, lines);
  const next = row + PROPERTIES.length;
  nameTarget(sheet, recipe, { row: next, column });
  tellIn(sheet, recipe, { row: next + 1, column }, "Contains");
}

/** Three formulas of a project beside each other, their properties below. */
export function matrix(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Matrix");
  put(sheet, 0, 0, "Project: three candidates for the spring range");
  const mades = kit.make(3).map((made) => stillMet(perHundred(made)));
  const items = [...new Set(mades.flatMap((made) => made.names))];
  putRow(sheet, 4, 0, ["Code", "Ingredient"]);
  const names = items.map((item, index) => {
    put(sheet, FIRST + index, 0, `RM${String(index + 1).padStart(3, "0")}`);
    return put(sheet, FIRST + index, 1, item);
  });
  const end = FIRST + names.length;
  put(sheet, end, 1, "Sum of shares");
  PROPERTIES.forEach(([label], index) => put(sheet, end + 2 + index, 1, label));
  put(sheet, end + 2 + PROPERTIES.length, 1, "Eaten as");
  put(sheet, end + 3 + PROPERTIES.length, 1, "To declare");
  mades.forEach((made, index) => trial(kit, sheet, made, { column: 2 + index, names }));
  note(kit, sheet, end + 5 + PROPERTIES.length, 1, "Next: taste panel on Thursday, eight people.");
  specs(kit);
}
