import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { withLines, type MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import type { StockLine } from "../stock";
import { little, SCHLICHT } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Gefrierbeginn", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "also unter 0 um", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser darin", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes darin", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "vom Wasser Eis (bei −18 °C)", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    ...{ label: "Zucker auf 100 g Wasser", inCell: "g", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 0 },
  },
];

const SWEET = /sugar|sucrose|dextrose|syrup|fructose|honey/;

/** The lines by kind: what sweetens, then all the rest. */
const kinds = ({ lines }: MadeRecipe): readonly (readonly [string, readonly StockLine[]])[] => [
  ["SÜSSES", lines.filter(({ en }) => SWEET.test(en))],
  ["ALLES ANDERE", lines.filter(({ en }) => !SWEET.test(en))],
];

const OWN = { Zucker: "Kristallzucker", Honig: "Blütenhonig" };

/** A recipe in two sections with their sums, the sum of both above them. */
function sheetOf(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): void {
  const sections = kinds(given);
  const lines = sections.flatMap(([, list]) => list);
  const made = called(withLines(given, lines), OWN);
  putRow(sheet, 0, 0, ["1 kg", made.title]);
  const label = put(sheet, 2, 2, "g");
  put(sheet, 2, 0, "Nr.");
  const [names, amounts, sums]: [Spot[], Spot[], Spot[]] = [[], [], []];
  let row = 4;
  for (const [title, list] of sections) {
    put(sheet, row++, 1, title);
    const first = amounts.length;
    list.forEach((_, index) => {
      const at = first + index;
      const cells = putRow(sheet, row++, 0, [at + 1, made.names[at], made.grams[at]]);
      names.push(cells[1]!);
      amounts.push(cells[2]!);
    });
    put(sheet, row, 1, "zus.");
    sums.push(sumOf(kit, sheet, { row, column: 2 }, amounts.slice(first)));
    row += 2;
  }
  put(sheet, 3, 1, "Eimer komplett");
  const total = put(sheet, 3, 2, `=${sums.map(a1).join("+")}`);
  kit.marked.sums.push({ spot: total, parts: sums });
  const recipe = markRecipe(kit, made, { names, amounts, amountLabel: label, total, unit: "g" });
  const next = say(sheet, recipe, { row: 3, column: 5 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next + 1, column: 5, label: "Konsistenz" });
  tellIn(sheet, recipe, { row: row + 1, column: 1 }, SCHLICHT);
}

const MONTHS = [
  ["März", 2, 9],
  ["April", 5, 13],
  ["Mai", 9, 18],
  ["Juni", 13, 22],
  ["Juli", 15, 25],
  ["August", 14, 24],
] as const;

/** How warm it was at the hives. */
function weather(kit: Kit, sheet: CorpusSheet): void {
  const { heads, rows } = little(
    sheet,
    { row: 1, column: 5 },
    ["Monat", "früh (°C)", "mittags (°C)"],
    MONTHS.map(([month, ...usual]) => [
      month,
      ...usual.map((each) => shown(each + kit.random.whole(-3, 3) / 2, "0.0")),
    ]),
  );
  for (const column of [1, 2]) temperatures(kit, heads[column]!, columnOf(rows, column));
}

/** What the hives gave; the sum stands in the first row. */
function hives(kit: Kit, sheet: CorpusSheet): void {
  const head = putRow(sheet, 1, 0, ["Volk", "Tracht", "kg"]);
  const spots = ["Linde", "Raps", "Wald", "Linde", "Obst"].map((flow, index) => {
    const kilos = shown(kit.random.whole(60, 240) / 10, "0.0");
    return putRow(sheet, 2 + index, 0, [index + 1, flow, kilos])[2]!;
  });
  put(sheet, 0, 0, "Ernte heuer");
  sumOf(kit, sheet, { row: 0, column: head[2]!.column }, spots, "0.0");
  weather(kit, sheet);
  note(kit, sheet, 9, 0, "Wabenrahmen nachbestellen, 30 Stück");
}

/** A beekeeper who sells ice at the gate. */
function imkerei(kit: Kit): void {
  const { book } = kit.marked;
  hives(kit, addSheet(book, "Völker"));
  kit.make(3).forEach((made, index) => {
    const sheet = addSheet(book, `Eis ${"ABC"[index]!}`);
    sheetOf(kit, sheet, perKilogram(made));
  });
}

/** Sheets of a beekeeper. */
export const imkereien: readonly Layout[] = [
  { name: "Imkerei, Süßes und alles andere, Eimer zuoberst", language: "de", build: imkerei },
];
