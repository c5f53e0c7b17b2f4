import { a1, addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { AUSTRIAN, VOICE_OF_A_TEACHER, pricePerKg, readings, table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "gefriert ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "formula" },
  { label: "Gesamtwasser", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Wasser als Eis bei −20 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -20 },
  },
];

/** A recipe whose grams show their unit themselves; gives the next free row. */
function recipeAt(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 1, made.title.toUpperCase());
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 1 },
    {
      heads: ["Zutaten", "Menge", "€ je kg", "macht €"],
      cells: (name, grams) => [name, shown(grams, '0" g"'), pricePerKg(kit, name)],
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const prices = columnOf(rows, 2);
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}/1000*${a1(prices[index]!)}`,
  });
  put(sheet, end, 1, "Rührwerk gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, '0" g"');
  sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { names, amounts, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: top + 2, column: 6 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Textur" });
  const told = tellIn(sheet, recipe, { row: end + 1, column: 1 }, VOICE_OF_A_TEACHER);
  return Math.max(told, next + 1) + 1;
}

const JARS = ["Zwetschkenröster Oma", "Hollerkoch", "Quittengelee Glas 3"];

/** What stands in the larder, by the farm's own reckoning; gives the block. */
function larder(kit: Kit, sheet: CorpusSheet): string {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Eingemachtes vom Hof, g je 100 g");
  const heads = ["Name", "Zucker", "Wasser", "Eiweiß", "Fett", "inert", "Allergene"];
  const lines = JARS.map((jar) => {
    const [sugars, protein, inert] = [random.whole(22, 52), random.whole(0, 1), random.whole(1, 3)];
    return [jar, sugars, 100 - sugars - protein - inert, protein, 0, inert, "keine"];
  });
  const [titles, ...rows] = table(sheet, { row: 2, column: 0 }, heads, lines);
  for (const [name, sugars, water, , , , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  return absolute(span([titles![0]!, ...rows.flat()]));
}

/** A trial with two of the jars. */
function trial(kit: Kit, sheet: CorpusSheet, own: string): void {
  const lines: (readonly [string, number])[] = [
    [JARS[0]!, 10 * kit.random.whole(20, 35)],
    [JARS[1]!, 10 * kit.random.whole(10, 20)],
    ["Wasser", 10 * kit.random.whole(18, 26)],
  ];
  putRow(sheet, 8, 0, ["Probe im Becher", "Gramm"]);
  const rows = lines.map((cells, index) => putRow(sheet, 9 + index, 0, cells));
  const [names, grams] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, 12, 0, "Probe gesamt");
  sumOf(kit, sheet, { row: 12, column: 1 }, grams);
  const mix = `${span(names)},${span(grams)}`;
  putRow(sheet, 13, 0, ["gefriert ab (°C)", shown(`=RIME.FREEZINGPOINT(${mix},${own})`, "0.0")]);
  const water = `=RIME.COMPONENT(${mix},"water",${own})`;
  putRow(sheet, 14, 0, ["Wasser darin (g)", shown(water, "0")]);
}

/** A cheese dairy's three ices, and its larder. */
function hofkaeserei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eisrezepte");
  put(sheet, 0, 1, "Unsere Sorten, jeweils ein Rührwerk");
  const mades = kit.make(3).map((made) => called(made, AUSTRIAN));
  const end = mades.reduce((top, made) => recipeAt(kit, sheet, made, top), 2);
  note(kit, sheet, end, 1, "Preise vom Frühjahr, Obst schwankt.");
  const jars = addSheet(kit.marked.book, "Speis");
  trial(kit, jars, larder(kit, jars));
  const rows = [["Reiferaum"], ["Milchkammer"], ["Speis"]];
  const [heads] = table(jars, { row: 17, column: 0 }, ["Raum", "um 5 Uhr (°C)"], rows);
  readings(kit, jars, heads![1]!, rows.length, [3, 11]);
}

/** A dairy on a farm. */
export const hofkaesereien: readonly Layout[] = [
  { name: "Hofkäserei, Mengen mit g im Format und Speis", language: "de", build: hofkaeserei },
];
