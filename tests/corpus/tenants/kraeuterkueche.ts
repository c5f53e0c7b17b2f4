import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { ofSpirit, tellOnce } from "./words";
import type { MadeRecipe } from "../recipes";

const HEADS = ["Name", "Zucker", "Wasser", "Eiweiß", "Fett", "inert", "Allergene", "Quelle"];

/** In 100 g: sugars from and to, protein, fat, what does not dissolve. */
const OURS = [
  { name: "Holundersirup vom Hof", sweet: [58, 64], rest: [0, 0, 1], source: "Refraktometer" },
  { name: "Rhabarbermus, gekocht", sweet: [18, 26], rest: [1, 0, 3], source: "Rezept vom Mai" },
  { name: "Minzsirup", sweet: [55, 61], rest: [0, 0, 0], source: "Refraktometer" },
  { name: "Fichtenspitzengelee", sweet: [44, 52], rest: [0, 0, 1], source: "Etikett" },
] as const;

/** What the kitchen has cooked down itself; gives the block with its headings. */
function ours({ random, marked }: Kit, sheet: CorpusSheet): string {
  put(sheet, 0, 0, "Selbst Eingekochtes, Gramm in 100 g");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = OURS.map(({ name, sweet, rest, source }, index) => {
    const sugars = random.whole(sweet[0], sweet[1]);
    const water = rest.reduce((left, each) => left - each, 100 - sugars);
    const line = [name, sugars, water, ...rest, "keine", source];
    const cells = putRow(sheet, 3 + index, 0, line);
    const [named, sugar, wet] = cells;
    marked.ownLines.push({ name: named!, sugars: sugar!, water: wet!, allergens: cells[6]! });
    return cells;
  });
  return `Eingekochtes!${absolute(span([...heads, ...rows.flat()]))}`;
}

/** An ice of our own jars alone, under the other. */
function ownIce(kit: Kit, own: string): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Probe Holunder");
  put(sheet, 0, 0, "Probe mit Holunder und Rhabarber");
  putRow(sheet, 2, 0, ["Zutat", "g"]);
  const lines = [
    ...[[OURS[1].name, 10 * random.whole(25, 40)] as const, ["Wasser", 150] as const],
    ...[[OURS[0].name, 10 * random.whole(10, 16)] as const, [OURS[2].name, 30] as const],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 3 + index, 0, each));
  const row = 3 + rows.length;
  put(sheet, row, 0, "Summe");
  sumOf(kit, sheet, { row, column: 1 }, columnOf(rows, 1));
  const both = `${span(columnOf(rows, 0))},${span(columnOf(rows, 1))}`;
  const point = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, row + 2, 0, ["Gefrierpunkt (°C)", point]);
  note(kit, sheet, row + 4, 0, "Beim nächsten Mal weniger Minze.");
}

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
  { label: "Gefrierpunkt sinkt um (K)", states: "depression", as: "typed" },
  { label: "davon gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Wasser aus allen Zutaten (g)", states: "water", as: "typed", decimals: 0 },
  ...ofSpirit(made, { label: "reiner Alkohol (g)" }),
  {
    ...{ label: "bei −18 °C gefroren (% vom Wasser)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

/** A recipe of the house, then what is cooked in the kitchen itself. */
function kraeuterkueche(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Hausrezept");
  const made = called(kit.make(1)[0]!, { Honig: "Blütenhonig", Zucker: "Rübenzucker" });
  put(sheet, 0, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    { heads: ["Menge in g", "Zutat"], cells: (name, grams) => [grams, name], name: 1, amount: 0 },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "ganze Masse");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, amountLabel: heads[0]!, unit: "g" },
  });
  let next = say(sheet, recipe, { row: 2, column: 3 }, said(made));
  nameTarget(sheet, recipe, { row: next++, column: 3, label: "Ziel" });
  next = Math.max(end + 2, next + 1);
  next = tellOnce(sheet, recipe, { row: next, column: 0 }, "Enthält");
  note(kit, sheet, next + 1, 0, "Kräuter erst kalt zugeben.");
  ownIce(kit, ours(kit, addSheet(marked.book, "Eingekochtes")));
}

/** Somebody who gives courses on herbs. */
export const kraeuterkuechen: readonly Layout[] = [
  { name: "Kräuterküche, Hausrezept und Eingekochtes", language: "de", build: kraeuterkueche },
];
