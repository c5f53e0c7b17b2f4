import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { absolute, markRecipe, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { alcoholIn, asked, counted, warnAt } from "./words";

const OWN = [
  ["Rhabarbersirup vom Beet", 48, 56],
  ["Minzsirup vom Beet", 52, 60],
  ["Erdbeermark passiert", 6, 9],
  ["Johannisbeermark passiert", 7, 10],
] as const;

/** What the nursery cooks itself; gives the block for the formulas. */
function jars(kit: Kit, sheet: CorpusSheet): string {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Eingekochtes, Gramm in 100 Gramm");
  const heads = putRow(sheet, 1, 0, ["Name", "Wasser", "Zucker", "inert", "Allergene"]);
  const rows = OWN.map(([name, from, to], index) => {
    const sugar = random.whole(from * 10, to * 10) / 10;
    const rest = /mark/.test(name) ? random.whole(2, 4) : 0;
    const water = Math.round(10 * (100 - sugar - rest)) / 10;
    return putRow(sheet, 2 + index, 0, [name, water, sugar, rest, "keine"]);
  });
  for (const [name, water, sugars, , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  note(kit, sheet, 7, 0, "Zucker mit dem Handrefraktometer vom Imkerverein gemessen.");
  return `Eingekochtes!${absolute(span([heads[0]!, ...rows.flat()]))}`;
}

/** A sorbet of the own jars, worked out with them. */
function ownSorbet(kit: Kit, sheet: CorpusSheet, own: string): void {
  const { random } = kit;
  put(sheet, 0, 0, "Sorbet vom Beet");
  putRow(sheet, 1, 0, ["Zutat", "Menge in g"]);
  const lines = [
    [OWN[2][0], 10 * random.whole(40, 50)],
    [OWN[0][0], 10 * random.whole(18, 24)],
    ["Wasser", 10 * random.whole(8, 14)],
    ["Zucker", 10 * random.whole(5, 8)],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 2 + index, 0, each));
  put(sheet, 6, 0, "Schüssel");
  sumOf(kit, sheet, { row: 6, column: 1 }, columnOf(rows, 1));
  const call = `${span(columnOf(rows, 0))},${span(columnOf(rows, 1))}`;
  const point = shown(`=RIME.FREEZINGPOINT(${call},${own})`, "0.0");
  putRow(sheet, 7, 0, ["Gefrierpunkt (°C)", point]);
  const water = shown(`=RIME.COMPONENT(${call},"water",${own})`, "0");
  putRow(sheet, 8, 0, ["Wasser darin (g)", water]);
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser (g)", states: "water", as: "formula", format: "0" },
  { label: "Gelöstes (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker (g je 100 g Wasser)", states: "sugar per 100 g water", as: "typed" },
  {
    ...{ label: "vom Wasser gefroren bei −15 °C (%)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
  ...alcoholIn(made, "Alkohol (g)"),
];

/** The lines as in the book and for the tins. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const { random } = kit;
  const at = (row: number) => [row, 0] as const;
  const tin = asked(kit, sheet, at(1), ["In eine Dose passen", "g", random.pick([420, 480, 850])]);
  const count = counted(sheet, at(2), ["Dosen fürs Hofcafé (Stück)", random.whole(3, 7)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    { heads: ["Zutat", "im Buch (g)", "für uns (g)"], cells: (item, grams) => [item, grams] },
  );
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const factor = putRow(sheet, 3, 0, [
    ...["mal", shown(`=${a1(tin)}*${a1(count)}/${a1(total)}`, "0.00")],
  ])[1]!;
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${fixed(factor)}*${a1(spot)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const list = { names, amounts, unit: "g", amountLabel: heads[1]!, total, alsoAmounts } as const;
  return { recipe: markRecipe(kit, made, list), end };
}

/** A recipe out of a book, brought to the size of the nursery's tins. */
function forTins(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): void {
  put(sheet, 0, 0, `Aus dem Buch: ${made.title}, auf unsere Dosen gebracht`);
  const { recipe, end } = lines(kit, sheet, made);
  put(sheet, end + 2, 0, "Buchmenge:");
  strip(sheet, recipe, { row: end + 3, column: 0 }, answers(made));
  nameTarget(sheet, recipe, { row: end + 6, column: 0, label: "auf der Karte als" });
  const last = warnAt(sheet, recipe, { row: end + 7, column: 0 }, "Auf die Tafel: mit");
  note(kit, sheet, last + 1, 0, "Dosen vorher eine Stunde in die Truhe stellen.");
}

/** A nursery with a café: own jars, own sorbet, a recipe brought to size. */
function gaertnerei(kit: Kit): void {
  const { book } = kit.marked;
  const made = called(kit.make(1)[0]!, { Zucker: "Rübenzucker", Wasser: "Leitungswasser" });
  forTins(kit, addSheet(book, "Dosen"), made);
  const sorbet = addSheet(book, "Beet");
  ownSorbet(kit, sorbet, jars(kit, addSheet(book, "Eingekochtes")));
}

/** A nursery with a café. */
export const gaertnereien: readonly Layout[] = [
  { name: "Gärtnerei, Eingekochtes und Dosen", language: "de", build: gaertnerei },
];
