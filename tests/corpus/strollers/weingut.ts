import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { isAlcoholic, labelAt, madeOf } from "./words";

const isSorbet = ({ lines }: MadeRecipe): boolean =>
  lines.every(({ allergen }) => allergen?.en !== "milk");

/** A sorbet with a spirit of the house in it; one with a mistake stays as it is. */
function withSpirit(kit: Kit): MadeRecipe {
  const [made] = madeOf(kit, 1, isSorbet) as [MadeRecipe];
  if (made.seeded !== undefined || isAlcoholic(made)) return made;
  const grams = Math.round(massOf(made) * kit.random.between(0.02, 0.04));
  const spirit = line("brandy 40 %", "Obstbrand 40 %", grams, ALCOHOL);
  return stillMet(withLines(made, [...made.lines, spirit]));
}

const GLASSES = [
  ["Obstbrand 40 %", 40],
  ["Rum 40 %", 40],
  ["Wodka 37,5 %", 37.5],
  ["Gin 40 %", 40],
] as const;

/** What is poured at the table, from millilitres to pure alcohol. */
function poured(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 2, 6, "Dazu am Tisch");
  const heads = putRow(sheet, 3, 6, [
    ...["Brand", "Schuss (ml)", "wiegt (g)", "Alkohol (% vol)", "reiner Alkohol (g)"],
  ]);
  const rows = GLASSES.map(([name, abv], index) =>
    putRow(sheet, 4 + index, 6, [name, random.pick([10, 15, 20]), undefined, abv]),
  );
  const weights = beside(kit, heads[2]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=RIME.GRAMS(${a1({ ...spot, column: 6 })},${a1(spot)},"mL")`,
  });
  const pure = beside(kit, heads[4]!, weights, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 9 })})`,
  });
  weights.forEach((grams, index) =>
    marked.alcohols.push({ grams, abv: rows[index]![3]!, alcohol: pure[index]! }),
  );
}

function answers(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  return say(sheet, recipe, { row, column: 0 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "reiner Alkohol im Sorbet", inCell: "g", states: "alcohol", as: "formula" },
    { label: "Zucker auf 100 g Wasser", inCell: "g", states: "sugar per 100 g water", as: "typed" },
    { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
    {
      ...{ label: "Eisanteil der Masse bei −16 °C", inCell: "%" },
      ...{ states: "ice of mix", as: "typed", temperatureC: -16 },
    },
    {
      ...{ label: "gefrorenes Wasser bei −16 °C, vom Wasser", inCell: "%" },
      ...{ states: "ice of water", as: "typed", temperatureC: -16 },
    },
  ]);
}

const priceOf = ({ random }: Kit, name: string): number =>
  name === "Wasser" ? 0 : random.whole(90, 2200) / 100;

/** The recipe with what its ingredients cost. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Menge", "Einheit", "Zutat", "Preis je kg (€)", "Wareneinsatz (€)"],
      cells: (name, grams) => [grams, "g", name, shown(priceOf(kit, name), "0.00")],
      ...{ name: 2, amount: 0 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/1000`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "alles"]);
  sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const unitCells = columnOf(rows, 1);
  return markRecipe(kit, made, {
    ...{ names, amounts, unitCells, unit: "g", amountLabel: heads[0]!, total },
  });
}

/** A sorbet between the courses of a winery. */
function weingut(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zwischengang");
  const made = called(withSpirit(kit), { Zucker: "Rübenzucker" });
  put(sheet, 0, 0, "Gutsschänke, Sorbet zum Zwischengang");
  put(sheet, 1, 0, made.title);
  const recipe = costed(kit, sheet, made);
  poured(kit, sheet);
  recipe.flags.push(
    put(sheet, 9, 6, "Alle Gläser mit Alkohol: nicht für Kinder, Schwangere und Autofahrer."),
  );
  let next = answers(sheet, recipe, recipe.total!.row + 2);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Konsistenz" });
  next = labelAt(sheet, recipe, { row: next, column: 0 }, "In der Karte angeben:");
  note(kit, sheet, next + 1, 0, "Gläser vorkühlen, Löffel dazulegen.");
}

/** A winery with a tavern. */
export const weingueter: readonly Layout[] = [
  { name: "Gutsschänke, Sorbet mit Brand und Wareneinsatz", language: "de", build: weingut },
];
