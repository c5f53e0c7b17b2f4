import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { labelAt } from "./words";

const HEADS = [
  ...["Name", "Wasser (g)", "Zucker (g)", "inert (g)", "Eiweiß (g)", "Fett (g)"],
  ...["Allergene", "gemessen von"],
];
const OURS = [
  ["Quittensaft eigene Presse", 11, 14],
  ["Birnenmus eigene Presse", 13, 19],
  ["Apfeldicksaft eigene Presse", 62, 70],
  ["Holundersaft eigene Presse", 8, 12],
] as const;

/** The press house's own juices, in 100 g; gives the table with its headings. */
function juices(kit: Kit, sheet: CorpusSheet): string {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Unsere Säfte und unser Mus, Gehalt in 100 g");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = OURS.map(([name, from, to], index) => {
    const [sugars, inert] = [random.whole(from, to), random.whole(1, 3)];
    return putRow(sheet, 3 + index, 0, [
      ...[name, 100 - sugars - inert, sugars, inert, 0, 0, "keine", "Labor"],
    ]);
  });
  for (const [name, water, sugars, , , , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  note(kit, sheet, 8, 0, "Werte vom letzten Herbst, nach der neuen Ernte neu messen.");
  return `'${sheet.name}'!${absolute(span([heads[0]!, ...rows.flat()]))}`;
}

/** A sorbet of the own juices; what it is like is worked out with the table. */
function ownSorbet(kit: Kit, sheet: CorpusSheet, own: string): void {
  const { random } = kit;
  put(sheet, 0, 0, "Sorbet aus eigener Presse");
  putRow(sheet, 1, 0, ["Zutat", "Einwaage (g)"]);
  const lines = [
    [OURS[0][0], 10 * random.whole(30, 50)],
    [OURS[1][0], 10 * random.whole(15, 25)],
    [OURS[2][0], 10 * random.whole(6, 10)],
    ["Zucker", 10 * random.whole(6, 9)],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 2 + index, 0, each));
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)] as [Spot[], Spot[]];
  put(sheet, 6, 0, "gesamt");
  sumOf(kit, sheet, { row: 6, column: 1 }, amounts);
  const call = `${span(names)},${span(amounts)},${own}`;
  const worked: readonly (readonly [string, string, string])[] = [
    ["Gefrierpunkt (°C)", `=RIME.FREEZINGPOINT(${call})`, "0.0"],
    ["Wasser (g)", `=RIME.COMPONENT(${call.replace(own, `"water",${own}`)})`, "0"],
  ];
  worked.forEach(([label, formula, format], index) =>
    putRow(sheet, 7 + index, 0, [label, shown(formula, format)]),
  );
}

/** What is said of the bought-in recipe. */
const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "senkt den Gefrierpunkt um (K)", states: "depression", as: "formula" },
  { label: "Gelöstes in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g (g)", states: "water", as: "formula", format: "0.0" },
  {
    label: "bei −15 °C gefroren, % vom Wasser",
    ...{ states: "ice of water", as: "typed", temperatureC: -15 },
  },
  {
    label: "bei −15 °C Eis, % der Mischung",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15 },
  },
];

/** A bought-in recipe in per cent beside it. */
function bought(kit: Kit, sheet: CorpusSheet): void {
  const made = called(largestFirst(kit.make(1)[0]!), { Wasser: "Leitungswasser" });
  put(sheet, 0, 4, `Zum Vergleich: ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: 1, column: 4 },
    {
      heads: ["Anteil in %", "Zutat"],
      cells: (name, grams) => [shown(grams, "0.0"), name],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts, "0.0");
  put(sheet, end, 5, "gesamt");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", amountLabel: heads[0]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 5 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "serviert als" });
  labelAt(sheet, recipe, { row: next + 1, column: 5 }, "Enthält:");
}

/** The juices on one sheet, what is made with them on the other. */
function mosterei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorbet");
  const own = juices(kit, addSheet(kit.marked.book, "Säfte"));
  ownSorbet(kit, sheet, own);
  bought(kit, sheet);
  const first: Spot = { sheet: sheet.name, row: 2, column: 1 };
  putRow(sheet, 9, 0, ["davon Quitte (%)", shown(`=100*${a1(first)}/B7`, "0.0")]);
}

/** A press house for fruit. */
export const mostereien: readonly Layout[] = [
  { name: "Mosterei, eigene Säfte neben gekauftem Rezept", language: "de", build: mosterei },
];
