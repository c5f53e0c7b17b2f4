import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { putList } from "./lists";
import { readings, tableAt } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honig: Babys unter 12 Monaten bekommen Obst.",
  alcohol: "Alkohol: Kinder, Schwangere und Autofahrer bekommen etwas anderes.",
  nuts: "Ganze Nüsse: für Kinder unter 5 Jahren weglassen (Erstickungsgefahr).",
  egg: "Rohes Eigelb: auf 71 °C erhitzt oder pasteurisiert verwenden.",
};

const DAYS = ["Mo", "Di", "Mi", "Do"];

const COLUMNS: readonly (readonly [head: string, plan: ResultPlan])[] = [
  ["gefriert ab (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "Eis in der Masse bei −16 °C (%)",
    { states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  ],
  ["Gelöstes (g)", { states: "dissolved", as: "formula", format: "0" }],
];

/** A recipe under the one before it: item, blank, grams, allergens of the line. */
function recipeAt(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number) {
  put(sheet, row, 0, made.title);
  const list = putList(sheet, made, {
    ...{ row: row + 1, column: 1, name: 0, amount: 2 },
    heads: ["Ware", undefined, "Gramm", undefined, "bringt mit"],
    cells: (item, grams) => [item, undefined, grams],
  });
  const { names, amounts, heads, end } = list;
  const sum = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  put(sheet, end, 1, "ergibt");
  const cells = { names, amounts, total: sum, amountLabel: heads[2]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  if (made.flagged) {
    const spots = made.lines.flatMap((each, at) =>
      each.allergen === undefined ? [] : [put(sheet, names[at]!.row, 5, each.allergen.de)],
    );
    recipe.flags.push(...spots);
  }
  return { recipe, next: end + 2 };
}

/** A day's line of the card, its numbers taken from the recipes' page. */
function cardLine(
  kit: Kit,
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  [row, day, heads]: readonly [row: number, day: string, heads: readonly Spot[]],
): Spot {
  const { made } = recipe;
  putRow(sheet, row, 0, [day, made.title]);
  const lines = `Rezepturen!${span(recipe.names)},Rezepturen!${span(recipe.amounts)}`;
  COLUMNS.forEach(([, plan], at) => {
    resultAt(sheet, recipe, heads[2 + at]!, { row, column: 2 + at }, plan, () => lines);
  });
  if (made.target !== null) recipe.targets.push(put(sheet, row, 5, made.target));
  const told = [allergensOf(made), cautionsIn(made, VOICE)].filter((text) => text !== "");
  if (told.length > 0) recipe.flags.push(put(sheet, row, 6, told.join(". ")));
  return put(sheet, row, 7, shown(-kit.random.whole(148, 172) / 10, "0.0"));
}

/** The card in front, the recipes behind it, the guests of the week beside. */
function halbpension(kit: Kit): void {
  const card = addSheet(kit.marked.book, "Karte");
  const sheet = addSheet(kit.marked.book, "Rezepturen");
  put(card, 0, 0, "Halbpension: Eis zum Nachtisch");
  let row = 0;
  const own = { Vollmilch: "Vollmilch 3,5 %", Wasser: "Leitungswasser" };
  const recipes = kit.make(4).map((made) => {
    const { recipe, next } = recipeAt(kit, sheet, called(upTo(made, 3000), own), row);
    row = next;
    return recipe;
  });
  const heads = putRow(card, 2, 0, [
    ...["Tag", "Eis", ...COLUMNS.map(([head]) => head), "wie", "für die Tischkarte"],
    "Truhe 18 Uhr (°C)",
  ]);
  const chest = recipes.map((recipe, at) =>
    cardLine(kit, card, recipe, [3 + at, DAYS[at]!, heads]),
  );
  readings(kit, heads[7]!, chest);
  const guests = tableAt(card, { row: 10, column: 1 }, [
    ["Tag", "Erwachsene", "Kinder"],
    ...DAYS.map((day) => [day, kit.random.whole(31, 58), kit.random.whole(4, 16)]),
  ]);
  put(card, 15, 1, "Woche");
  [1, 2].forEach((at) => {
    const parts = guests.slice(1).map((cells) => cells[at]!);
    sumOf(kit, card, { row: 15, column: 1 + at }, parts);
  });
  note(kit, card, 18, 0, "Freitag ist Buffet, da gibt es kein Eis aus der Küche.");
}

/** A hotel with half board. */
export const halbpensionen: readonly Layout[] = [
  {
    name: "Hotel mit Halbpension, Karte vorn und Rezepturen hinten",
    language: "de",
    build: halbpension,
  },
];
