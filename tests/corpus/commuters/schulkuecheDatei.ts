import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import type { Answer } from "../regulars/columns";
import { chosen, hasAlcohol, readings, warnAt } from "./words";

const HEADS = ["Eissorte", "Zutat", "Anteil (%)", "geprüft"];

const ANSWERS: readonly Answer[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed" }],
  ["Wasser (g in 100 g)", { states: "water", as: "typed", decimals: 1 }],
  ["Zucker (g auf 100 g Wasser)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["gefrorenes Wasser bei −18 °C (%)", { states: "ice of water", as: "typed", temperatureC: -18 }],
  ["Eis in der Masse bei −18 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
];

/** The lines of one kind of ice in the long list; gives the recipe and the next free row. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, share: Spot) {
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + index, 0, [
      ...[made.title, name, made.grams[index], kit.random.pick(["ja", "ja", "offen"])],
    ]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)] as [Spot[], Spot[]];
  const row = top + rows.length;
  putRow(sheet, row, 0, [made.title, "zusammen"]);
  const total = put(sheet, row, 2, `=ROUND(SUM(${span(amounts)}),1)`);
  const list = { names, amounts, unit: "%", amountLabel: share, total } as const;
  return { recipe: markRecipe(kit, made, list), next: row + 1 };
}

/** What each kind is like, a line each under the list. */
function table(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[], top: number): void {
  const last = ["Zielvorgabe", "Hinweise für die Ausgabe", "Tiefkühllager früh (°C)"];
  const labels = ANSWERS.map(([label]) => label);
  const heads = putRow(sheet, top, 0, ["Eissorte", ...labels, ...last]);
  const cores = recipes.map((recipe, index) => {
    const row = top + 1 + index;
    put(sheet, row, 0, recipe.made.title);
    ANSWERS.forEach(([, plan], at) => {
      resultAt(sheet, recipe, heads[1 + at]!, { row, column: 1 + at }, plan);
    });
    const { target } = recipe.made;
    if (target !== null) recipe.targets.push(put(sheet, row, 6, target));
    warnAt(sheet, recipe, { row, column: 7 }, "enthält");
    return put(sheet, row, 8, -kit.random.whole(176, 214) / 10);
  });
  readings(kit, heads[8]!, cores);
}

/** All kinds of a school kitchen in one list, then what they are like, as a file. */
function datei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  putRow(sheet, 0, 0, ["Zentralküche der Schulen", "Eisrezepte in Massenprozent"]);
  const heads = putRow(sheet, 2, 0, HEADS);
  let row = 3;
  const recipes = chosen(kit, 4, (made) => !hasAlcohol(made)).map((made) => {
    const { recipe, next } = lines(kit, sheet, stillMet(perHundred(made)), row, heads[2]!);
    row = next;
    return recipe;
  });
  table(kit, sheet, recipes, row + 1);
  note(kit, sheet, row + 7, 0, "Stand nach der letzten Verkostung");
}

/** A kitchen that cooks for schools. */
export const schulkuechen: readonly Layout[] = [
  {
    ...{ name: "Zentralküche, lange Liste in Prozent als Datei", language: "de" },
    ...{ isCsv: true, build: datei },
  },
];
