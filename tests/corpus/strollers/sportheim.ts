import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, labelAt, madeOf, temperatures } from "./words";

interface Bucket {
  readonly litres: Spot;
  readonly perLitre: Spot;
  readonly freezer: Spot;
}

/** What the bucket holds, above the recipe. */
function bucket(kit: Kit, sheet: CorpusSheet): Bucket {
  const { random } = kit;
  const at = (row: number) => ({ row, column: 0 });
  const litres = input(kit, sheet, at(2), {
    ...{ label: "Eimer fasst (l)", bare: "Eimer fasst", value: random.pick([3, 5, 10]) },
  });
  const perLitre = input(kit, sheet, at(3), {
    ...{ label: "Ein Liter Masse wiegt (g)", bare: "Ein Liter Masse wiegt" },
    value: 10 * random.whole(106, 112),
  });
  const freezer = input(kit, sheet, at(4), {
    ...{ label: "Gefriertruhe im Keller (°C)", bare: "Gefriertruhe im Keller" },
    value: -random.whole(17, 21),
  });
  return { litres, perLitre, freezer };
}

const WHEN = ["Heimspiel", "Training", "Sommerfest", "Sitzung", "Jugendturnier"];
const HOW = ["gut", "etwas hart", "gleich weg", "zu weich am Rand"];

/** The buckets made so far, beside the recipe. */
function journal(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 6, 5, ["Anlass", "Truhe abgelesen (°C)", "Stunden", "Urteil"]);
  const rows = WHEN.map((when, index) =>
    putRow(sheet, 7 + index, 5, [
      ...[when, shown(-random.whole(32, 42) / 2, "0.0"), random.whole(9, 30), random.pick(HOW)],
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows, 1));
}

/** What is said under the recipe. */
const answersFor = (freezer: Spot, temperatureC: number): readonly Said[] => [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "formula", format: "0.0" },
  {
    label: "Vom Wasser in der Truhe gefroren (%)",
    ...{ states: "ice of water", as: "formula", temperature: freezer, temperatureC },
    format: "0",
  },
  {
    label: "Eis im Eimer bei −14 °C, von der ganzen Masse (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "Wasser im Grundrezept (g)", states: "water", as: "formula", format: "0" },
  { label: "Zucker, Anteil am Gewicht (%)", states: "sugar share", as: "typed" },
];

/** The recipe, and as much of it as fills the bucket. */
function scaled(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, size: readonly Spot[]) {
  const list = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Was hineinkommt", "Grundrezept in g", "Eimer in g"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 0, "ergibt");
  const full = `${size.map(fixed).join("*")}/${fixed(total)}`;
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [...size, total] },
    content: (spot) => `=${a1(spot)}*${full}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total },
  });
}

/** A recipe scaled to the bucket of a sports club. */
function sportheim(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eimer");
  const [first] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(first!, { Wasser: "Leitungswasser" });
  put(sheet, 0, 0, `Sportheim, ${made.title} für den Eimer`);
  const { litres, perLitre, freezer } = bucket(kit, sheet);
  const recipe = scaled(kit, sheet, made, [litres, perLitre]);
  journal(kit, sheet);
  const temperatureC = sheet.cells[freezer.row]![freezer.column]!.content as number;
  let next = say(
    sheet,
    recipe,
    { row: Math.max(recipe.total!.row, 12) + 2, column: 0 },
    answersFor(freezer, temperatureC),
  );
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "So soll es sein" });
  next = labelAt(sheet, recipe, { row: next, column: 0 }, "Aushang: enthält");
  note(kit, sheet, next + 1, 0, "Eimer nur bis zwei Finger unter den Rand füllen.");
}

/** A sports club. */
export const sportheime: readonly Layout[] = [
  { name: "Sportheim, Grundrezept auf den Eimer", language: "de", build: sportheim },
];
