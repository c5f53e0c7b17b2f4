import { a1, addSheet, over, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { absolute, freezesAt, markRecipe, sumOf } from "../layouts/parts";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { line, water } from "../stock";

const BATHS = ["Montag", "Dienstag", "Freitag", "Samstag"];

/** The brine of some day, weighed to 100 g. */
function brineOf({ random }: Kit): MadeRecipe {
  const waterKg = random.whole(16, 30);
  const saltKg = Math.round(10 * waterKg * random.between(0.12, 0.24)) / 10;
  const bare = { title: "Sole", names: [], grams: [], lines: [], target: null, flagged: true };
  const lines = [water(1000 * waterKg), line("salt", "Salz", Math.round(1000 * saltKg))];
  return withLines({ ...bare, language: "de" }, lines);
}

interface Labels {
  readonly names: readonly [Spot, Spot];
  readonly title: Spot;
}

/** The brine of a day down its column, in kilograms; gives the cell with what was measured. */
function brine(kit: Kit, sheet: CorpusSheet, column: number, { names, title }: Labels): Spot {
  const made = brineOf(kit);
  const amounts = made.grams.map((grams, index) =>
    put(sheet, 3 + index, column, shown(grams / 1000, "0.0")),
  );
  const total = sumOf(kit, sheet, { row: 5, column }, amounts, "0.0");
  const [wet, salt] = amounts.map(a1) as [string, string];
  put(sheet, 6, column, shown(`=100*${salt}/${wet}`, "0.0"));
  put(sheet, 7, column, shown(`=100*${salt}/${a1(total)}`, "0.0"));
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: title, total, shared: true },
  });
  const lines = `${absolute(span(names))},${span(amounts)}`;
  const label = { sheet: sheet.name, row: 8, column: 0 };
  const plan = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, label, { row: 8, column }, plan, () => lines);
  const point = freezesAt(["water", "salt"], made.grams);
  return put(sheet, 9, column, Math.round(point + kit.random.whole(1, 3)));
}

const SYRUP = [
  ...["Sirup für", "Zucker (g)", "Wasser (g)", "Zucker auf 100 g Wasser (g)"],
  ...["Zuckergehalt (Massen-%)", "Gefrierpunkt (°C)"],
];
const USES = ["Sorbet", "Granita", "Früchte einlegen", "Tränke", "Glasur"];

/** One syrup in its row; gives both ways of telling its strength. */
function syrup({ random, marked }: Kit, sheet: CorpusSheet, row: number, use: string): Spot[] {
  const [sugarGrams, waterGrams] = [10 * random.whole(20, 60), 50 * random.whole(10, 16)];
  const cells = putRow(sheet, row, 0, [use, sugarGrams, waterGrams]);
  const [, sugar, wet] = cells as [Spot, Spot, Spot];
  const perWater = put(sheet, row, 3, shown(`=${a1(sugar)}/${a1(wet)}*100`, "0.0"));
  const content = `=${a1(sugar)}/(${a1(sugar)}+${a1(wet)})*100`;
  const share = put(sheet, row, 4, shown(content, "0.0"));
  put(sheet, row, 5, shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0"));
  marked.strengths.push({ sugar, water: wet, perWater, share });
  return [perWater, share];
}

/** Syrups of the same kitchen. */
function syrups(kit: Kit, sheet: CorpusSheet, top: number): void {
  const heads = putRow(sheet, top, 0, SYRUP);
  const rows = USES.map((use, index) => syrup(kit, sheet, top + 1 + index, use));
  [0, 1].forEach((at) => {
    const spots = rows.map((cells) => cells[at]!);
    kit.marked.formulaColumns.push({ spots, heading: heads[3 + at]!, fixed: [] });
  });
}

const LABELS = [
  ...["Wasser", "Salz", "Sole", "Salz auf 100 kg Wasser (kg)", "Salzgehalt (Massen-%)"],
  ...["Gefrierpunkt (°C)", "Becken gemessen (°C)"],
];

/** Brine for the moulds of ice on sticks, day by day; the syrups below. */
function baths(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Sole und Sirup");
  const title = put(sheet, 0, 0, "Solebecken für Stieleis, Ansatz in kg");
  sheet.merged.push(over([title, { ...title, column: 3 }]));
  put(sheet, 2, 0, "Tag");
  const labels = LABELS.map((label, index) => put(sheet, 3 + index, 0, label));
  const spots = BATHS.map((day, index) => {
    put(sheet, 2, 1 + index, day);
    return brine(kit, sheet, 1 + index, { names: [labels[0]!, labels[1]!], title });
  });
  const column = { spots, heading: labels[6]!, total: null, kind: "temperature" } as const;
  marked.numberColumns.push(column);
  note(kit, sheet, 11, 0, "Sole ist nicht zum Essen. Formen außen abspülen, Handschuhe anziehen.");
  syrups(kit, sheet, 13);
}

/** Sheets about brine and syrup. */
export const sole: readonly Layout[] = [
  { name: "Eisdiele, Solebecken und Sirup", language: "de", build: baths },
];
