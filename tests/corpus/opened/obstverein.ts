import { a1, addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { about, declare, readings } from "./own";
import { OBST } from "./stimmen";

const HEADS = ["Name", "Wasser", "Zucker", "Säure", "inert", "Allergene", "Jahrgang"];

/** In 100 g: sugars from and to, acid, what does not dissolve. */
const JARS = [
  ["Quittenmus vom Verein", 14, 20, 1, 4],
  ["Apfeldicksaft vom Verein", 56, 62, 2, 1],
  ["Zwetschgenmus vom Verein", 30, 38, 1, 5],
] as const;

/** What the association has put up; gives the block with its headings. */
function jars({ random, marked }: Kit, sheet: CorpusSheet): string {
  put(sheet, 0, 0, "Unsere Gläser, g je 100 g");
  const heads = putRow(sheet, 1, 0, HEADS);
  const rows = JARS.map(([name, from, to, acid, inert], index) => {
    const sugars = random.whole(from, to);
    const line = [name, 100 - sugars - acid - inert, sugars, acid, inert, "keine"];
    const cells = putRow(sheet, 2 + index, 0, [...line, 2023 + (index % 2)]);
    const [named, water, sugar] = cells;
    marked.ownLines.push({ name: named!, water: water!, sugars: sugar!, allergens: cells[5]! });
    return cells.slice(0, 6);
  });
  return `Gläser!${absolute(span([...heads.slice(0, 6), ...rows.flat()]))}`;
}

/** An ice of the jars. */
function musEis(kit: Kit, own: string): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Quitteneis");
  put(sheet, 0, 0, "Quitteneis aus dem Glas");
  putRow(sheet, 1, 0, ["Was", "Menge (g)"]);
  const lines = [
    ...[[JARS[0][0], 10 * random.whole(50, 70)] as const, ["Wasser", 200] as const],
    ...[[JARS[1][0], 10 * random.whole(8, 14)] as const, ["Zucker", 100] as const],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 2 + index, 0, each));
  put(sheet, 6, 0, "Summe");
  sumOf(kit, sheet, { row: 6, column: 1 }, columnOf(rows, 1));
  const both = `${span(columnOf(rows, 0))},${span(columnOf(rows, 1))}`;
  putRow(sheet, 8, 0, ["Gefrierpunkt (°C)", shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0")]);
  const water = shown(`=RIME.COMPONENT(${both},"water",${own})`, "0");
  putRow(sheet, 9, 0, ["Wasser (g)", water]);
}

/** What is in the cellar and what is to be bought. */
function bestand(kit: Kit, made: MadeRecipe): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Bestand");
  put(sheet, 0, 0, "Vorratskeller, gezählt am Monatsende");
  const heads = putRow(sheet, 1, 0, ["Artikel", "da (kg)", "soll (kg)", "fehlt (kg)", "Regal"]);
  const items = made.names.filter((name) => name !== "Wasser");
  const rows = items.map((name, index) =>
    putRow(sheet, 2 + index, 0, [
      ...[name, shown(random.whole(2, 16) / 4, "0.00"), shown(random.whole(8, 24) / 4, "0.00")],
      ...[undefined, random.pick(["links", "rechts", "Kühlraum"])],
    ]),
  );
  beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=MAX(0,${a1({ ...spot, column: 2 })}-${a1(spot)})`,
  });
  const days = putRow(sheet, 1, 6, ["Woche", "Kühlraum (°C)", "Tiefkühlraum (°C)"]);
  [31, 32, 33, 34, 35].forEach((week, index) => put(sheet, 2 + index, 6, `KW ${week}`));
  readings(kit, sheet, days[1]!, [5, 3, 6]);
  readings(kit, sheet, days[2]!, [5, -21, -18]);
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "typed" },
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Gelöstes im Ansatz (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Vom Wasser gefroren bei −18 °C (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18 },
  },
  ...ofAlcohol(made, "Alkohol im Ansatz (g)"),
];

/** Fruit growers who sell ice at the harvest feast. */
function obstverein(kit: Kit): void {
  const made = about(kit.make(1)[0]!, 6000);
  const sheet = addSheet(kit.marked.book, "Festeis");
  put(sheet, 0, 0, `${made.title} fürs Erntefest`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Menge (kg)", "wer bringt es"],
      cells: (name, grams) => [
        ...[
          name,
          shown(inUnit(grams, "kg"), "0.000"),
          name === "Wasser" ? "Hof" : kit.random.pick(["Hof", "Keller", "Laden"]),
        ],
      ],
    },
  );
  put(sheet, end, 0, "ein Kübel");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const lines = { names, amounts, total, amountLabel: heads[1]!, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 2, column: 4 }, answers(made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Gewünscht" });
  const row = Math.max(end, next) + 2;
  const last = declare(sheet, recipe, { row, column: 0 }, OBST);
  note(kit, sheet, last + 1, 0, "Kübel am Vorabend in den Tiefkühlraum.");
  musEis(kit, jars(kit, addSheet(kit.marked.book, "Gläser")));
  bestand(kit, made);
}

export const obstvereine: readonly Layout[] = [
  { name: "Obstverein, Festeis, eigene Gläser und Bestand", language: "de", build: obstverein },
];
