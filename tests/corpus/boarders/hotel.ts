import {
  a1,
  addSheet,
  calledFrom,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { euros, type PriceOf } from "../callers/prices";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { onSheet } from "../guests/words";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { columnsOf, tabulate, type Fact } from "./worte";

const FACTS: readonly Fact[] = [
  ["Wasser gesamt", "g", { states: "water", as: "formula", format: "0" }],
  ["gelöste Stoffe (Zucker, Salze usw.)", "g", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zuckeranteil", "%", { states: "sugar share", as: "typed" }],
  ["Gefrierpunkt gesenkt um", "K", { states: "depression", as: "typed" }],
];

interface Filed {
  readonly recipe: MarkedRecipe;
  readonly value: Spot;
}

/** The lines of a recipe: number of the article, what it is, how much, what it costs. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, price: PriceOf): Filed {
  const heads = putRow(sheet, 4, 0, [
    ...["Art.-Nr.", "Artikel", "EK netto (€/kg)", "Menge (g)", "Wareneinsatz (€)"],
  ]);
  const rows = made.names.map((name, index) => {
    const row = 5 + index;
    const article = 4000 + kit.random.whole(101, 899);
    const cost = shown(price(made, index), "0.00");
    const cells = putRow(sheet, row, 0, [article, name, cost, made.grams[index]]);
    const formula = `=${a1(cells[3]!)}/1000*${a1(cells[2]!)}`;
    return [...cells, put(sheet, row, 4, shown(formula, "0.00"))];
  });
  const [names, amounts, costs] = columnsOf(rows, 1, 3, 4) as [Spot[], Spot[], Spot[]];
  kit.marked.formulaColumns.push({ spots: costs, heading: heads[4]!, fixed: [] });
  const row = 5 + rows.length;
  put(sheet, row, 1, "Ansatz gesamt");
  const total = sumOf(kit, sheet, { row, column: 3 }, amounts);
  const value = sumOf(kit, sheet, { row, column: 4 }, costs, "0.00");
  const marks = { names, amounts, total, amountLabel: heads[3]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, marks), value };
}

/** A recipe on a sheet of its own, named after it. */
function page(kit: Kit, made: MadeRecipe, price: PriceOf): Filed {
  const sheet = addSheet(kit.marked.book, made.title);
  putRow(sheet, 0, 0, ["Posten", "Patisserie"]);
  putRow(sheet, 1, 0, ["Gericht", made.title]);
  putRow(sheet, 2, 0, [
    "Anrichten",
    kit.random.pick(["Glasschale", "Teller kalt", "Bananenblatt"]),
  ]);
  const filed = lines(kit, sheet, made, price);
  const { recipe } = filed;
  const top = recipe.total!.row + 2;
  const next = tabulate(sheet, recipe, {
    ...{ row: top, column: 1, facts: FACTS, value: 2, unit: 3 },
  });
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Festigkeit" });
  tell(kit, sheet, recipe, { row: next + 2, column: 1, as: "pair" });
  return filed;
}

const OVER: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "formula" }],
  ["gefroren bei Ausgabe (% des Wassers)", { states: "ice of water", as: "formula" }],
  ["Eis bei Ausgabe (% der Masse)", { states: "ice of mix", as: "formula" }],
];

const HEADS = ["Eis", "Ansatz (g)", "Wareneinsatz (€)", "€ je 100 g"];

interface Served {
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** One line of the overview; gives the cells of its formulas. */
function line(
  sheet: CorpusSheet,
  row: number,
  filed: Filed,
  served: Served,
  heads: Spot[],
): Spot[] {
  const { recipe, value } = filed;
  const title = put(sheet, row, 0, recipe.made.title);
  const mass = put(sheet, row, 1, `=${calledFrom(title, recipe.total!)}`);
  const cost = put(sheet, row, 2, shown(`=${calledFrom(title, value)}`, "0.00"));
  const each = put(sheet, row, 3, shown(`=${a1(cost)}/${a1(mass)}*100`, "0.00"));
  const call = onSheet(recipe.made.title, (spots) => absolute(span(spots)));
  const said = OVER.map(([, plan], index) => {
    const at = plan.states.startsWith("ice") ? { ...plan, ...served } : plan;
    const place = { row, column: 4 + index };
    resultAt(sheet, recipe, heads[4 + index]!, place, { ...at, format: "0.0" }, call);
    return { sheet: sheet.name, ...place };
  });
  return [each, ...said];
}

/** The overview in front of the recipe sheets. */
function overview(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Übersicht");
  putRow(sheet, 0, 0, ["Eiskarte des Hauses"]);
  const temperatureC = -random.whole(11, 15);
  const [label, temperature] = putRow(sheet, 1, 0, [
    ...["Ausgabe aus der Theke bei (°C)", temperatureC],
  ]) as [Spot, Spot];
  marked.inputs.push({ label, value: temperature, bare: "Ausgabe aus der Theke bei" });
  const heads = putRow(sheet, 3, 0, [...HEADS, ...OVER.map(([words]) => words)]);
  const price = euros(random);
  const filed = kit.make(4).map((made) => page(kit, made, price));
  const rows = filed.map((each, index) =>
    line(sheet, 4 + index, each, { temperature, temperatureC }, heads),
  );
  [3, 4, 5, 6].forEach((column, at) => {
    const reads = column > 4 ? [temperature] : [];
    const spots = columnsOf(rows, at)[0]!;
    marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: reads });
  });
  note(kit, sheet, 5 + filed.length, 0, "Neue Eissorten bitte erst mit dem Küchenchef absprechen.");
}

/** A hotel's pastry kitchen. */
export const hotels: readonly Layout[] = [
  { name: "Hotel, Übersicht und ein Blatt je Eis", language: "de", build: overview },
];
