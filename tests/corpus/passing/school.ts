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
import { called } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { answersDown, placesOf, type Answer } from "../regulars/columns";
import type { MadeRecipe } from "../recipes";
import { about, declare, forChildren } from "./words";

const FIRST = 6;

const answersAt = (freezer: Spot, temperatureC: number): readonly Answer[] => [
  ["freezes from (°C)", { states: "freezing point", as: "formula" }],
  ["water in it (g)", { states: "water", as: "typed", decimals: 0 }],
  ["sugars to 100 g of water (g)", { states: "sugar per 100 g water", as: "formula" }],
  [
    "of the water, ice in our freezer (%)",
    { states: "ice of water", as: "formula", temperatureC, temperature: freezer },
  ],
  ["ice, of the whole, at −10 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -10 }],
];

interface Plan {
  readonly column: number;
  readonly names: readonly Spot[];
  readonly serving: Spot;
  readonly answers: readonly Answer[];
}

/** One flavour down its column; gives the cell with the children it serves. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: Plan): Spot {
  const { column, names, serving, answers } = plan;
  put(sheet, FIRST - 2, column, made.title);
  const label = put(sheet, FIRST - 1, column, "kg");
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) =>
    put(sheet, FIRST + item, column, shown(inUnit(made.grams[index]!, "kg"), "0.000")),
  );
  const all = names.map((spot) => ({ ...spot, column }));
  const end = FIRST + names.length;
  const total = sumOf(kit, sheet, { row: end, column }, all, "0.000");
  const children = shown(`=${a1(total)}*1000/${fixed(serving)}`, "0");
  const served = put(sheet, end + 1, column, children);
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "kg", amountLabel: label, total },
    shared: true,
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  answersDown(sheet, recipe, answers, { row: end + 3, column, labels: 0 }, lines);
  const next = end + 3 + answers.length;
  nameTarget(sheet, recipe, { row: next, column });
  declare(sheet, recipe, { row: next + 1, column }, "Contains");
  return served;
}

/** Four flavours beside each other, in kilograms. */
function kilos(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Frozen puddings");
  put(sheet, 0, 0, "School kitchen, frozen puddings for the summer term");
  const serving = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "a child gets (g)", bare: "a child gets", value: random.pick([50, 60, 70]) },
    },
  );
  const temperatureC = -random.whole(16, 20);
  const freezer = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "walk-in freezer (°C)", bare: "walk-in freezer", value: temperatureC },
    },
  );
  const answers = answersAt(freezer, temperatureC);
  const mades = forChildren(kit, 4).map((made) =>
    called(about(made, 6000), { sugar: "caster sugar" }),
  );
  const items = [...new Set(mades.flatMap((made) => made.names))];
  put(sheet, FIRST - 1, 0, "what goes in");
  const names = items.map((item, index) => put(sheet, FIRST + index, 0, item));
  const end = FIRST + names.length;
  put(sheet, end, 0, "altogether");
  const heading = put(sheet, end + 1, 0, "children served");
  answers.forEach(([label], index) => put(sheet, end + 3 + index, 0, label));
  putRow(sheet, end + 3 + answers.length, 0, ["should be"]);
  put(sheet, end + 4 + answers.length, 0, "tell the class teacher");
  const served = mades.map((made, index) =>
    flavour(kit, sheet, made, { column: 1 + index, names, serving, answers }),
  );
  marked.formulaColumns.push({ spots: served, heading, fixed: [serving] });
  note(
    kit,
    sheet,
    end + 6 + answers.length,
    0,
    "Big scales read to 5 g; use the small ones below 100 g.",
  );
}

/** A kitchen that feeds many. */
export const school: readonly Layout[] = [
  { name: "school kitchen, flavours across in kilos", language: "en", build: kilos },
];
