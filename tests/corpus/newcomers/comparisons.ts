import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit, type Layout } from "../kit";
import { again, anchored, answer, markRecipe, namesOf, sumAt } from "../layouts/marking";
import { withLines, type MadeRecipe } from "../recipes";
import { perKilogram } from "../kitchens/hand";
import { line, type StockLine } from "../stock";
import { contains } from "./words";

const isSugar = ({ en }: StockLine): boolean => en === "sugar" || en === "sucrose";

const sugarTimes = (lines: readonly StockLine[], factor: number): StockLine[] =>
  lines.map((each) => (isSugar(each) ? { ...each, grams: each.grams * factor } : each));

/** Three tenths of the sugar as dextrose. */
function partDextrose(lines: readonly StockLine[]): StockLine[] {
  const isDextrose = ({ en }: StockLine): boolean => en === "dextrose monohydrate";
  const before = lines.find(isDextrose)?.grams ?? 0;
  const grams = before + 0.3 * lines.find(isSugar)!.grams;
  const dextrose = line("dextrose monohydrate", "Dextrose-Monohydrat", grams);
  return [...sugarTimes(lines, 0.7).filter((each) => !isDextrose(each)), dextrose];
}

/** The mix of the lesson, and the same with its sugar changed. */
function versionsOf(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = kit.make(1)[0]!;
  const plain = made.seeded === undefined ? made : again(kit, made);
  const changed = (lines: readonly StockLine[]) => perKilogram(withLines(plain, lines));
  return [
    ["As written", perKilogram(made)],
    ["Sugar cut back", changed(sugarTimes(plain.lines, 0.75))],
    ["Dextrose for some sugar", changed(partDextrose(plain.lines))],
  ];
}

interface Side {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
}

const ANSWERS = [
  ["Freezing starts at (°C)", { states: "freezing point", as: "formula" }],
  [
    "Sugars for every 100 g of water (g)",
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  [
    "Water turned to ice at −12 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  ],
  [
    "Ice in 100 g of the mix at −18 °C (g)",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  ],
] as const;

/** One version down its column. */
function version(kit: Kit, made: MadeRecipe, column: number, side: Side): void {
  const { sheet, items, amountLabel } = side;
  const names = made.names.map((name) =>
    items.find(({ row }) => sheet.cells[row]![0]!.content === name),
  ) as Spot[];
  const amounts = names.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, column }));
  const end = items.at(-1)!.row + 1;
  const total = sumAt(kit, sheet, [end, column], all);
  const recipe = markRecipe(kit, made, { names, amounts, total, amountLabel, shared: true });
  const lines = `${anchored(span(items))},${span(all)}`;
  ANSWERS.forEach(([label, plan], index) => {
    const row = end + 2 + index;
    answer(sheet, recipe, [label, row, 0], [row, column], plan, lines);
  });
  nameTarget(sheet, recipe, { row: end + 7, column });
  const words = contains(made, "Contains");
  if (words !== "") recipe.flags.push(put(sheet, end + 8, column, words));
}

/** One mix sweetened in three ways, beside each other, each for a kilogram. */
function sweetened(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Session 8");
  const versions = versionsOf(kit);
  put(sheet, 0, 0, `Sugar and texture: ${versions[0]![1].title} in three versions`);
  kit.marked.notes.push(put(sheet, 1, 0, "Taste blind, then look at the numbers."));
  const [amountLabel] = putRow(sheet, 3, 0, ["Weigh out (g)", ...versions.map(([each]) => each)]);
  const items = namesOf(versions.map(([, made]) => made)).map((name, index) =>
    put(sheet, 4 + index, 0, name),
  );
  const end = 4 + items.length;
  put(sheet, end, 0, "Whole mix");
  put(sheet, end + 7, 0, "Good for");
  put(sheet, end + 8, 0, "On the label");
  versions.forEach(([, made], index) =>
    version(kit, made, 1 + index, { sheet, items, amountLabel: amountLabel! }),
  );
}

/** Mixes beside each other in class. */
export const comparisons: readonly Layout[] = [
  { name: "session 8, sugar in three versions", language: "en", build: sweetened },
];
