import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { beyond, UNSERE } from "./words";

const KILO_FACTS: readonly Fact[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "typed", decimals: 2 }],
  ["Zuckeranteil [%]", { states: "sugar share", as: "typed", decimals: 1 }],
  [
    "Eisanteil Masse bei −18 °C [%]",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 1 },
  ],
];

/** One item's lines, its number before each; gives the recipe and the row for the next. */
function posted(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, heading: Spot) {
  const number = `A${4100 + 7 * top}`;
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + index, 0, [
      ...[number, 10 * (index + 1), name, inUnit(made.grams[index]!, "kg"), "kg"],
    ]),
  );
  const [names, amounts, unitCells] = [2, 3, 4].map((at) => columnOf(rows, at));
  const row = top + rows.length;
  putRow(sheet, row, 0, [number, undefined, "Ansatzmenge"]);
  const total = put(sheet, row, 3, `=ROUND(SUM(${span(amounts!)}),3)`);
  put(sheet, row, 4, "kg");
  const cells = { names: names!, amounts: amounts!, unitCells: unitCells!, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heading, total });
  return { recipe, number, next: row + 2 };
}

/** What is known of each item, a line each below the lists. */
function known(sheet: CorpusSheet, list: readonly [string, MarkedRecipe][], top: number): void {
  const words = KILO_FACTS.map(([label]) => label);
  const heads = putRow(sheet, top, 0, ["Artikel", "Bezeichnung", ...words, "Textur", "Hinweis"]);
  list.forEach(([number, recipe], index) => {
    const row = top + 1 + index;
    putRow(sheet, row, 0, [number, recipe.made.title]);
    KILO_FACTS.forEach(([, plan], at) => {
      const heading = heads[2 + at]!;
      resultAt(sheet, recipe, heading, beyond(heading, 1 + index, 0), plan);
    });
    nameTarget(sheet, recipe, { row, column: heads.at(-2)!.column });
    tellIn(sheet, recipe, { row, column: heads.at(-1)!.column }, UNSERE);
  });
}

/** Lists one below the other, as the stock program of the house gives them out. */
function stueckliste(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Stueckliste");
  const heads = putRow(sheet, 0, 0, ["Artikel", "Pos", "Komponente", "Menge", "ME"]);
  const list: [string, MarkedRecipe][] = [];
  let top = 1;
  for (const given of kit.make(4)) {
    const made = called(upTo(given, 20000), { Zucker: "Rübenzucker", Salz: "Kochsalz" });
    const { recipe, number, next } = posted(kit, sheet, made, top, heads[3]!);
    list.push([number, recipe]);
    top = next;
  }
  known(sheet, list, top);
  note(kit, sheet, top + 6, 0, "Ende der Liste");
}

const SHARE_FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Erniedrigung in K", { states: "depression", as: "typed", decimals: 1 }],
  ["Wasser in %", { states: "water", as: "typed", decimals: 1 }],
  [
    "davon gefroren bei −13 °C in %",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
];

/** Sorts in rows, shares under the names of what is in them. */
function anteile(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Anteile");
  const own = { Zucker: "Feinkristallzucker", "Glukosesirup DE 42": "Glucosesirup DE 42" };
  const mades = kit.make(5).map((made) => called(hundred(largestFirst(made)), own));
  const amountLabel = put(sheet, 0, 0, "Alle Mengen in % der Mischung");
  const names = itemsOf(mades);
  const left = 2;
  put(sheet, 2, 0, "Sorte");
  put(sheet, 2, 1, "Probe am");
  const items = putRow(sheet, 2, left, names);
  const words = ["Summe", ...SHARE_FACTS.map(([label]) => label), "Kerntemperatur in °C"];
  const heads = putRow(sheet, 2, left + names.length, [...words, "Gedacht als", "Zu beachten"]);
  const read = mades.map((made, index) => {
    const row = 3 + index;
    putRow(sheet, row, 0, [made.title, `${String(3 + 2 * index)}. Juni`]);
    const recipe = alongRow(kit, sheet, made, row, {
      ...{ items, unit: "%", format: "0.0", amountLabel },
    });
    put(sheet, row, recipe.total!.column, `=ROUND(SUM(${span(recipe.all)}),1)`);
    SHARE_FACTS.forEach(([, plan], at) => {
      const heading = heads[1 + at]!;
      resultAt(sheet, recipe, heading, beyond(heading, 1 + index, 0), plan, () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: heads.at(-2)!.column });
    tellIn(sheet, recipe, { row, column: heads.at(-1)!.column }, UNSERE);
    const core = shown(-kit.random.whole(125, 185) / 10, "0.0");
    return put(sheet, row, heads.at(-3)!.column, core);
  });
  temperatures(kit, heads.at(-3)!, read);
  note(kit, sheet, 9, 0, "Proben liegen in der Truhe hinten links");
}

/** Files with semicolons. */
export const dateien: readonly Layout[] = [
  {
    name: "Stückliste mit Artikelnummern als Datei",
    language: "de",
    isCsv: true,
    build: stueckliste,
  },
  { name: "Anteile der Sorten quer als Datei", language: "de", isCsv: true, build: anteile },
];
