import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { resultAt, type ResultPlan } from "../results";
import type { MadeRecipe } from "../recipes";
import { namesOf, perKilo, readings, tellOnce, timesTo } from "./words";

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "formula" }],
  ["Wasser (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Zucker auf 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed" }],
  ["Eis bei −18 °C (% der Masse)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
  [
    "gefrorenes Wasser bei −12 °C (% des Wassers)",
    { states: "ice of water", as: "typed", temperatureC: -12 },
  ],
];

interface Table {
  readonly sheet: CorpusSheet;
  readonly heads: readonly Spot[];
  readonly items: readonly string[];
  readonly prices: string;
  readonly title: Spot;
}

/** One kind along its row; gives the temperature on arrival. */
function kind(kit: Kit, made: MadeRecipe, row: number, table: Table): Spot {
  const { sheet, heads, items, prices, title } = table;
  put(sheet, row, 0, made.title);
  const at = made.names.map((name) => items.indexOf(name));
  const weigh = (grams: number) => shown(inUnit(grams, "kg"), "0.000");
  const amounts = at.map((item, index) => put(sheet, row, 1 + item, weigh(made.grams[index]!)));
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: 1 + item }));
  const end = 1 + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all, "0.000");
  put(sheet, row, end + 1, shown(`=SUMPRODUCT(${prices},${span(all)})`, "0.00"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => heads[1 + item]!), amounts, unit: "kg", amountLabel: title },
    ...{ total, shared: true },
  });
  const lines = `${absolute(span(heads.slice(1, end)))},${span(all)}`;
  ANSWERS.forEach(([, plan], index) => {
    const column = end + 2 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => lines);
  });
  const next = end + 2 + ANSWERS.length;
  nameTarget(sheet, recipe, { row, column: next + 1 });
  tellOnce(sheet, recipe, { row, column: next + 2 }, "Enthält");
  return put(sheet, row, next, shown(-kit.random.whole(140, 190) / 10, "0.0"));
}

/** Marks what stands as a formula in each row, a column each. */
function markColumns({ marked }: Kit, first: number, last: number, table: Table): void {
  const { sheet, heads, items } = table;
  const sum = 1 + items.length;
  for (const column of [sum, sum + 1]) {
    const spots = Array.from({ length: last - first }, (_, at) => ({
      ...{ sheet: sheet.name, row: first + at, column },
    }));
    marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: [] });
  }
  const heading = heads[sum + 2]!;
  const spots = marked.recipes.flatMap(({ results }) =>
    results.filter(({ label }) => label === heading).map(({ spot }) => spot),
  );
  marked.formulaColumns.push({ spots, heading, fixed: [] });
}

/** All kinds that are delivered, a row each, with what they cost. */
function lieferdienst(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Sorten");
  const title = put(sheet, 0, 0, "Eis auf Rädern, Rezepte in kg je Ansatz");
  const mades = kit.make(5).map((made) => called(timesTo(made, 3000), { Zucker: "Raffinade" }));
  const items = namesOf(mades);
  const english = new Map(
    mades.flatMap(({ names, lines }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  const heads = putRow(sheet, 2, 0, [
    ...["Sorte", ...items, "Ansatz (kg)", "Ware (€)", ...ANSWERS.map(([label]) => label)],
    ...["Box bei Ankunft (°C)", "Gewünscht", "Hinweis auf dem Deckel"],
  ]);
  const money = items.map((item) => shown(perKilo(random, english.get(item)!), "0.00"));
  const [, ...prices] = putRow(sheet, 3, 0, ["Preis (€/kg)", ...money]);
  const table = { sheet, heads, items, prices: absolute(span(prices)), title };
  const boxes = mades.map((made, index) => kind(kit, made, 4 + index, table));
  readings(kit, heads[boxes[0]!.column]!, boxes);
  markColumns(kit, 4, 4 + mades.length, table);
  note(kit, sheet, 5 + mades.length, 0, "Boxen am Vorabend ins Kühlhaus stellen.");
}

/** Somebody who delivers ice. */
export const lieferdienste: readonly Layout[] = [
  { name: "Eis auf Rädern, eine Sorte je Zeile", language: "de", build: lieferdienst },
];
