import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Place } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures, upTo } from "../strollers/words";
import { stimme } from "../settled/stimme";
import { halfDegrees, pricesOf, table } from "../settled/words";

const OWN = {
  Zucker: "Haushaltszucker",
  Vollmilch: "Milch 3,5 %",
  "Sahne 35 %": "Schlagsahne 35 %",
};

const ANTWORTEN: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["gelöst (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zucker, Massen-%", { states: "sugar share", as: "typed", decimals: 1 }],
  [
    "vom Wasser gefroren in der Truhe, −18 °C",
    { states: "ice of water", as: "formula", temperatureC: -18, percent: "format" },
  ],
];

interface Rows extends Place {
  readonly truhe: Spot;
}

/** The ingredients across; kilograms, price and cost below each other. */
function quer(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { row, column }: Place) {
  const first = column + 1;
  const end = first + made.names.length;
  put(sheet, row, column, made.title);
  const names = putRow(sheet, row, first, made.names);
  const [amountLabel] = putRow(sheet, row + 1, column, ["kg"]);
  const kilos = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, row + 1, first, kilos);
  put(sheet, row + 2, column, "€ je kg");
  const money = pricesOf(kit, made).map((price) => shown(price, "0.00"));
  const prices = putRow(sheet, row + 2, first, money);
  const heading = put(sheet, row + 3, column, "€");
  const spots = amounts.map((amount, index) =>
    put(sheet, row + 3, first + index, shown(`=${a1(amount)}*${a1(prices[index]!)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  put(sheet, row, end, "Kübel");
  const total = sumOf(kit, sheet, { row: row + 1, column: end }, amounts, "0.000");
  sumOf(kit, sheet, { row: row + 3, column: end }, spots, "0.00");
  return markRecipe(kit, made, { names, amounts, total, amountLabel: amountLabel!, unit: "kg" });
}

/** What comes of it, line by line. */
function antworten(sheet: CorpusSheet, recipe: MarkedRecipe, { row, column, truhe }: Rows): number {
  const lines = () => `${span(recipe.names)},${span(recipe.amounts)}`;
  ANTWORTEN.forEach(([words, plan], index) => {
    const label = put(sheet, row + index, column, words);
    const full = plan.as === "formula" ? { ...plan, temperature: truhe } : plan;
    resultAt(sheet, recipe, label, { row: row + index, column: column + 1 }, full, lines);
  });
  const next = row + ANTWORTEN.length;
  nameTarget(sheet, recipe, { row: next, column, label: "soll werden" });
  return tellIn(sheet, recipe, { row: next + 1, column }, stimme("Aushang Allergene:"));
}

/** Who serves when, and what the freezer read. */
function dienst(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Thekendienst");
  put(sheet, 0, 0, "Thekendienst in der Medenrunde");
  const tage = ["Sa 4. Mai", "So 5. Mai", "Sa 11. Mai", "So 12. Mai", "Sa 25. Mai"];
  const teams = ["Damen 40", "Herren 30", "Jugend", "Vorstand", "Herren 60"];
  const rows = tage.map((tag, index) => [
    ...[tag, "11 bis 19 Uhr", teams[index], kit.random.whole(20, 90)],
    shown(halfDegrees(kit, -20, -15), "0.0"),
  ]);
  const heads = ["Tag", "geöffnet", "Mannschaft", "Kugeln", "Truhe abends (°C)"];
  const list = table(sheet, { row: 2, column: 0 }, heads, rows);
  put(sheet, list.end, 0, "Runde");
  sumOf(kit, sheet, { row: list.end, column: 3 }, columnOf(list.rows, 3));
  temperatures(kit, list.heads[4]!, columnOf(list.rows, 4));
  note(kit, sheet, list.end + 2, 0, "Wer tauscht, trägt es hier ein.");
}

/** Two ices, their ingredients across, then the roster. */
function clubhaus(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  put(sheet, 0, 0, "Clubhaus, Eis für die Heimspiele");
  const [label, truhe] = putRow(sheet, 1, 0, ["Truhe (°C)", -18]);
  kit.marked.inputs.push({ label: label!, value: truhe!, bare: "Truhe" });
  let row = 3;
  for (const made of kit.make(2).map((each) => called(upTo(each, 2000), OWN))) {
    const recipe = quer(kit, sheet, made, { row, column: 0 });
    row = antworten(sheet, recipe, { row: row + 5, column: 0, truhe: truhe! }) + 1;
  }
  dienst(kit);
}

/** The clubhouse of a tennis club. */
export const clubhaeuser: readonly Layout[] = [
  { name: "Clubhaus, Zutaten quer und Thekendienst", language: "de", build: clubhaus },
];
