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
import { called, columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { rowsAt, tellAt, told } from "./words";

/** A recipe's own sheet: shares of one, and grams for the batch that is wanted. */
function blatt(kit: Kit, made: MadeRecipe, index: number): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, `Gruppe ${"ABC"[index]}`);
  put(sheet, 0, 0, made.title);
  const batch = input(
    kit,
    sheet,
    { row: 1, column: 3 },
    {
      ...{ label: "Ansatz (g)", bare: "Ansatz", value: kit.random.pick([800, 1200, 1500]) },
    },
  );
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Lfd.", "Lebensmittel", "Anteil (von 1)", "abwiegen (g)", "abgehakt"],
      cells: (name, grams, at) => [at + 1, name, shown(inUnit(grams, "fraction"), "0.000")],
      ...{ name: 1, amount: 2 },
    },
  );
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  put(sheet, end + 1, 1, "Probe");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end + 1, column: 3 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, amountLabel: heads[2]!, total };
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  const column = { heading: heads[2]!, spots: amounts, total, kind: "fraction" } as const;
  kit.marked.numberColumns.push(column);
  nameTarget(sheet, recipe, { row: end + 3, column: 1, label: "Soll:" });
  tellAt(sheet, recipe, { row: end + 4, column: 1 }, told(made, "Kennzeichnung:"));
  return recipe;
}

const KOPF = [
  ...["Gruppe", "Eis", "Gefrierpunkt (°C)", "Erniedrigung (K)"],
  ...["Wasser im Truhenfach gefroren (%)", "Zucker im Gemisch (%)"],
];

/** The answers of all groups on the first sheet. */
function auswertung(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Fachschule Hauswirtschaft, Lernsituation Eis: Auswertung");
  const temperatureC = kit.random.pick([-12, -15, -18]);
  const temperature = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "Truhenfach (°C)", bare: "Truhenfach", value: temperatureC },
    },
  );
  const heads = putRow(sheet, 4, 0, KOPF);
  const plans: readonly ResultPlan[] = [
    { states: "freezing point", as: "formula", format: "0.0" },
    { states: "depression", as: "typed", decimals: 1 },
    { states: "ice of water", as: "formula", format: "0", temperature, temperatureC },
    { states: "sugar share", as: "typed", decimals: 1 },
  ];
  recipes.forEach((recipe, index) => {
    const row = 5 + index;
    const { names, amounts } = recipe;
    const home = `'${names[0]!.sheet}'!`;
    putRow(sheet, row, 0, ["ABC"[index], `=${home}A1`]);
    const calls = (): string => `${home}${span(names)},${home}${span(amounts)}`;
    plans.forEach((plan, at) => {
      resultAt(sheet, recipe, heads[2 + at]!, { row, column: 2 + at }, plan, calls);
    });
  });
  putzplan(kit, sheet);
}

/** Who cleans what, and how many minutes it took. */
function putzplan(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 10, 0, "Nacharbeit");
  putRow(sheet, 11, 0, ["Gruppe", "räumt auf", "Minuten"]);
  const rows: Spot[][] = rowsAt(sheet, { row: 12, column: 0 }, [
    ["A", "Eismaschine zerlegen", kit.random.whole(10, 25)],
    ["B", "Arbeitsflächen", kit.random.whole(8, 15)],
    ["C", "Wäsche und Boden", kit.random.whole(10, 20)],
  ]);
  put(sheet, 15, 1, "gesamt");
  sumOf(kit, sheet, { row: 15, column: 2 }, columnOf(rows, 2));
  note(kit, sheet, 17, 0, "Bewertet wird auch, ob der Arbeitsplatz trocken übergeben wird.");
}

/** Three groups, a sheet each, and the answers in front. */
function schule(kit: Kit): void {
  const front = addSheet(kit.marked.book, "Auswertung");
  const eigene = { Zucker: "Haushaltszucker", Magermilchpulver: "Milchpulver, mager" };
  const mades = kit.make(3).map((made) => called(hundred(made), eigene));
  auswertung(
    kit,
    front,
    mades.map((made, index) => blatt(kit, made, index)),
  );
}

/** A school of home economics. */
export const hauswirtschaft: readonly Layout[] = [
  {
    name: "Hauswirtschaftsschule, Anteile je Gruppe und Auswertung",
    language: "de",
    build: schule,
  },
];
