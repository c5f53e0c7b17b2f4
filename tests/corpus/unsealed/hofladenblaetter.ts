import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { anchored } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { itemsOf, upTo } from "../strollers/words";
import type { MadeRecipe } from "../recipes";
import {
  formulaColumn,
  inGerman,
  linesFrom,
  price,
  readings,
  degrees,
  sayAlong,
  smallTable,
} from "../sidings/words";

const VOICE = inGerman("Schild: enthält");

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt sinkt um (K)", states: "depression", as: "typed" },
  { label: "Zucker auf 100 g Wasser (g)", states: "sugar per 100 g water", as: "formula" },
];

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "vom Wasser gefroren bei −14 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

const supplier = (item: string): string | undefined => {
  if (item === "Wasser") return undefined;
  return /^(Milch|Sahne|Naturjoghurt)/.test(item) ? "Molkerei" : "Großmarkt";
};

/** Was wir einkaufen; gibt den Bereich, in dem nachgeschlagen wird. */
function priceSheet(kit: Kit, mades: readonly MadeRecipe[]): string {
  const sheet = addSheet(kit.marked.book, "Einkauf");
  put(sheet, 0, 0, "Einkaufspreise ohne MwSt., Stand März");
  const { rows } = smallTable(
    sheet,
    { row: 2, column: 0 },
    ["Ware", "€ je kg", "Lieferant"],
    itemsOf(mades).map((item) => [item, shown(price(kit, item), "0.00"), supplier(item)]),
  );
  const first = rows[0]!;
  const last = rows.at(-1)!;
  return `Einkauf!${anchored(span([first[0]!, last[1]!]))}`;
}

interface Page {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** Eine Sorte auf ihrem Blatt. */
function page(kit: Kit, made: MadeRecipe, bought: string, at: number): Page {
  const sheet = addSheet(kit.marked.book, `Sorte ${at + 1}`);
  putRow(sheet, 0, 0, [made.title, undefined, undefined, "Ansatz für die große Maschine"]);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Ware", "kg", "€ je kg", "€"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), "0.000")],
    },
  );
  const look = (cell: (at: number) => string) => `VLOOKUP(${cell(0)},${bought},2,FALSE)`;
  const prices = formulaColumn(kit, sheet, heads[2]!, rows, look, "0.00");
  const paid = rows.map((cells, index) => [...cells, prices[index]!]);
  const times = (cell: (at: number) => string) => `${cell(1)}*${cell(2)}`;
  const costs = formulaColumn(kit, sheet, heads[3]!, paid, times, "0.00");
  put(sheet, end + 1, 0, "Ansatz");
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end + 1, column: 3 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[1]!, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 3, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Verkauf als" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  return { recipe, cost };
}

const HEADS = ["Sorte", "Ansatz (kg)", "Ware (€)", ...FACTS.map(([words]) => words), "Truhe (°C)"];

/** Alle Sorten zusammen. */
function overview(kit: Kit, pages: readonly Page[]): void {
  const sheet = addSheet(kit.marked.book, "Übersicht");
  put(sheet, 0, 0, "Hofladen, Eis dieser Saison");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = pages.map(({ recipe, cost }, at) => {
    const row = 3 + at;
    const from = (spot: Spot) => `='${spot.sheet}'!${a1(spot)}`;
    const sums = [shown(from(recipe.total!), "0.000"), shown(from(cost), "0.00")];
    const cells = putRow(sheet, row, 0, [recipe.made.title, ...sums]);
    const lines = linesFrom(recipe);
    sayAlong(sheet, { recipe, lines }, FACTS, { row, column: 3 }, heads.slice(3));
    return [...cells, put(sheet, row, 5, degrees(kit, -16, -13))];
  });
  readings(kit, heads[5]!, columnOf(rows, 3));
  const end = 3 + pages.length;
  put(sheet, end, 0, "alles");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 1), "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 2), "0.00");
  note(kit, sheet, end + 2, 0, "Truhe vor der Tür ab Mai, Schlüssel hängt in der Milchkammer.");
}

function build(kit: Kit): void {
  const own = { Vollmilch: "Milch 3,5 %", Honig: "Bienenhonig", Zucker: "Rübenzucker" };
  const mades = kit.make(4).map((made) => called(upTo(made, 5000), own));
  const bought = priceSheet(kit, mades);
  overview(
    kit,
    mades.map((made, at) => page(kit, made, bought, at)),
  );
}

/** Ein Hofladen mit eigenem Eis. */
export const hofladenblaetter: readonly Layout[] = [
  { name: "Hofladen, vier Sorten auf Blättern mit Einkaufspreisen", language: "de", build },
];
