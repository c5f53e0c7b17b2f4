import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import type { StockLine } from "../stock";
import { degrees, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Allergy tables stay clear, it has:",
  honey: "Honey - nobody under 12 months.",
  alcohol: "Booze in it (alcohol) - no kids, nobody pregnant, nobody driving.",
  nuts: "Whole nuts - kids under 5 can choke, tell the table.",
  egg: "Raw yolk - mix to 71 °C or pasteurised carton only.",
};

const SECTIONS: readonly (readonly [string, RegExp])[] = [
  ["LIQUIDS", /water|milk$|cream|juice|coffee|yogurt|vodka|yolk/],
  ["FRUIT + NUTS", /berries|cherries|peach|mango|banana|puree|nuts|pistachios/],
  ["DRY + STICKY", /./],
];

const sectionOf = ({ en }: StockLine): number => SECTIONS.findIndex(([, of]) => of.test(en));

/** The same recipe, sorted by what stands together on the shelf. */
const sorted = (made: MadeRecipe): MadeRecipe =>
  withLines(
    made,
    [...made.lines].sort((one, other) => sectionOf(one) - sectionOf(other)),
  );

interface Section {
  readonly names: Spot[];
  readonly amounts: Spot[];
  readonly sum: Spot;
  readonly end: number;
}

/** One shelf: its name, its lines, what they weigh. */
function section(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [row, which]: readonly [number, number],
): Section | null {
  const at = made.lines.flatMap((each, index) => (sectionOf(each) === which ? [index] : []));
  if (at.length === 0) return null;
  put(sheet, row, 0, SECTIONS[which]![0]);
  const rows = at.map((index, step) =>
    putRow(sheet, row + 1 + step, 1, [made.names[index], made.grams[index], "g"]),
  );
  const [names, amounts] = [0, 1].map((column) => rows.map((cells) => cells[column]!));
  const end = row + 1 + rows.length;
  put(sheet, end, 1, "subtotal");
  const sum = sumOf(kit, sheet, { row: end, column: 2 }, amounts!);
  return { names: names!, amounts: amounts!, sum, end: end + 1 };
}

/** A mix on its prep sheet. */
function prep(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): MarkedRecipe {
  const made = called(sorted(given), { sugar: "caster sugar", salt: "sea salt" });
  put(sheet, 0, 0, `PREP ${made.title}`);
  const amountLabel = putRow(sheet, 1, 1, ["item", "weight", "unit", "tick"])[1]!;
  let row = 2;
  const sections: Section[] = [];
  SECTIONS.forEach((_, which) => {
    const next = section(kit, sheet, made, [row, which]);
    if (next === null) return;
    sections.push(next);
    row = next.end;
  });
  const parts = sections.map(({ sum }) => sum);
  put(sheet, row, 1, "IN THE BEAKER");
  const total = put(sheet, row, 2, `=${parts.map(a1).join("+")}`);
  if (parts.length > 1) kit.marked.sums.push({ spot: total, parts });
  const [names, amounts] = [
    sections.flatMap((each) => each.names),
    sections.flatMap((each) => each.amounts),
  ];
  const unitCells = amounts.map((spot) => ({ ...spot, column: 3 }));
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells, unit: "g", amountLabel, total },
  });
  tellIn(sheet, recipe, { row: row + 2, column: 0 }, VOICE);
  return recipe;
}

const BOARD: readonly (readonly [string, ResultPlan])[] = [
  ["freezes °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["down from 0, K", { states: "depression", as: "typed", decimals: 2 }],
  ["water g", { states: "water", as: "typed", decimals: 0 }],
  [
    "ice in the mix at −18 °C, %",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  ["g sugars / 100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

/** All of them on the board by the pass. */
function board(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "BOARD BY THE PASS");
  const labels = BOARD.map(([label]) => label);
  const heads = putRow(sheet, 2, 0, ["mix", "beaker, g", ...labels, "texture", "beakers spun"]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    const total = recipe.total!;
    putRow(sheet, row, 0, [recipe.made.title, `='${total.sheet}'!${a1(total)}`]);
    BOARD.forEach(([, plan], at) =>
      resultAt(sheet, recipe, heads[2 + at]!, { row, column: 2 + at }, plan),
    );
    nameTarget(sheet, recipe, { row, column: 7 });
    put(sheet, row, 8, kit.random.whole(2, 12));
  });
  const spun = recipes.map((_, index) => ({ sheet: sheet.name, row: 3 + index, column: 8 }));
  const end = 3 + recipes.length;
  put(sheet, end, 7, "this week");
  sumOf(kit, sheet, { row: end, column: 8 }, spun);
  put(sheet, end + 1, 7, "a mix, on average");
  put(sheet, end + 1, 8, shown(`=AVERAGE(${span(spun)})`, "0.0"));
}

/** A restaurant's pastry: prep sheets in sections, what follows from them on the board. */
function pastry(kit: Kit): void {
  const { book } = kit.marked;
  const recipes = kit
    .make(3)
    .map((made, index) => prep(kit, addSheet(book, `P${index + 1}`), made));
  const sheet = addSheet(book, "Board");
  board(kit, sheet, recipes);
  const rows = ["before lunch", "before dinner", "close"].map((when) => [
    ...[when, degrees(kit, -22, -18), degrees(kit, 2, 5)],
  ]);
  const heads = ["check", "beaker freezer °C", "under-counter °C"];
  readings(kit, sheet, { row: 10, column: 0 }, { heads, rows, temperatures: [1, 2] });
  const shifts = [
    ["Mon", "closed", undefined],
    ["Tue-Thu", "Ines", "14-23"],
    ["Fri-Sun", "Ines + Bo", "13-24"],
  ];
  table(sheet, { row: 10, column: 5 }, ["rota", "pastry", "hours"], shifts);
  note(kit, sheet, 15, 0, "Spin twice if the top looks floury.");
}

/** Sheets of a restaurant's pastry section. */
export const prepSections: readonly Layout[] = [
  { name: "restaurant pastry, prep in sections and the board", language: "en", build: pastry },
];
