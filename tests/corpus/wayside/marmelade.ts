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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { little, SCHLICHT } from "./words";

const GLASSES = ["Quittenmus von Oma", "Ribiselgelee", "Hollersirup eingekocht"];

/** Our own glasses per 100 g, and a mix of all of them. */
function glasses(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 1, "Gläser im Keller (alles auf 100 g)");
  const cells = GLASSES.map((glass) => {
    const [sugars, inert] = [random.whole(28, 52), random.whole(1, 4)];
    return [glass, 100 - sugars - inert, sugars, inert, "keine"];
  });
  const heads = ["Name", "Wasser", "Zucker", "inert", "Allergene"];
  const table = little(sheet, { row: 1, column: 0 }, heads, cells);
  for (const [name, water, sugars, , allergens] of table.rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  const lines = [...GLASSES.map((glass) => [random.whole(8, 20) * 10, glass]), [220, "Wasser"]];
  const mix = little(sheet, { row: 1, column: 7 }, ["g", "Kellereis: da rein"], lines);
  const [amounts, names] = [columnOf(mix.rows, 0), columnOf(mix.rows, 1)];
  put(sheet, 6, 8, "zusammengerührt");
  sumOf(kit, sheet, { row: 6, column: 7 }, amounts);
  const own = absolute(span([...table.heads, ...table.rows.flat()]));
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(amounts)},${own})`;
  putRow(sheet, 8, 7, [shown(call, "0.0"), "°C: da wird es fest"]);
  note(kit, sheet, 7, 0, "vom Ribisel nur noch 4 Gläser!");
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "das ist weniger als Wasser, um", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser in allem", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "löst sich auf", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "v. d. Masse Eis bei −14 °C", inCell: "%", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -14, decimals: 0 },
  },
];

/** A list that runs across: names over grams, grams over what is needed for the stall. */
function across(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, factor: Spot): number {
  put(sheet, row, 0, made.title);
  const names = putRow(sheet, row, 1, made.names);
  const label = put(sheet, row + 1, 0, "1x, Gramm");
  const amounts = putRow(sheet, row + 1, 1, made.grams);
  const heading = put(sheet, row + 2, 0, "für den Stand, Gramm");
  const more = amounts.map((spot) =>
    put(sheet, row + 2, spot.column, `=${a1(spot)}*${fixed(factor)}`),
  );
  kit.marked.formulaColumns.push({ spots: more, heading, fixed: [factor] });
  const right = 1 + names.length;
  put(sheet, row, right, "Σ");
  const total = sumOf(kit, sheet, { row: row + 1, column: right }, amounts);
  sumOf(kit, sheet, { row: row + 2, column: right }, more);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: more, amountLabel: label, total, unit: "g" },
  });
  const next = say(sheet, recipe, { row: row + 4, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "gedacht als" });
  return tellIn(sheet, recipe, { row: next + 1, column: 2 }, SCHLICHT) + 2;
}

/** What the stall sold, the newest first. */
function stall(kit: Kit, sheet: CorpusSheet, row: number): void {
  const price = putRow(sheet, row, 0, ["1 Kugel kostet (€)", shown(1.5, "0.00")])[1]!;
  const days = ["14.7.", "7.7.", "30.6."].map((day) => [day, kit.random.whole(30, 120)]);
  const sold = little(sheet, { row: row + 1, column: 0 }, ["Markttag", "Kugeln", "€"], days);
  const counts = columnOf(sold.rows, 1);
  const money = beside(kit, sold.heads[2]!, counts, {
    ...{ sheet, format: "0.00", fixed: [price] },
    content: (spot) => `=${fixed(price)}*${a1(spot)}`,
  });
  put(sheet, row + 5, 0, "in der Kassa");
  sumOf(kit, sheet, { row: row + 5, column: 2 }, money, "0.00");
}

/** Somebody with a market stall and a cellar full of glasses. */
function marmelade(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis Markt");
  const factor = putRow(sheet, 0, 3, ["mal wieviel?", kit.random.pick([3, 4, 6])])[1]!;
  let row = 2;
  for (const made of kit.make(2)) {
    row = across(kit, sheet, called(made, { Zucker: "Rübenzucker" }), row, factor);
  }
  stall(kit, sheet, row);
  glasses(kit, addSheet(kit.marked.book, "Keller"));
}

/** Sheets of a market stall. */
export const marmeladen: readonly Layout[] = [
  { name: "Marktstand, Listen quer und Gläser im Keller", language: "de", build: marmelade },
];
