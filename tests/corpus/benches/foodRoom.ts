import { a1, addSheet, fixed, put, putRow, span, type CorpusSheet } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { choose, dissolved, solution } from "../solution";
import { about, mix, small } from "./words";

const VOICE: Voice = {
  lead: "ALLERGENS on the board:",
  honey: "Honey: under 12 months must not have it.",
  alcohol: "ALCOHOL: teachers' portion only, not if pregnant, not if driving.",
  nuts: "Whole nuts can choke a child under 5.",
  egg: "Raw egg yolk: mix to 71 °C, or pasteurised yolk.",
};

const TABLES = ["Table 1", "Table 2", "Table 3", "Table 4"];

const SAID: readonly Said[] = [
  { label: "Freezing starts (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water, everything counted (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved in that water (g)", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "Ice after the night at −18 °C (% of the mix)", decimals: 0 },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
  {
    ...{ label: "Sugars of the mix (%)", decimals: 0 },
    ...{ states: "sugar share", as: "typed" },
  },
];

/** The recipe for one table and for as many as there are, with the shopping beside it. */
function recipeSheet(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar", water: "cold water" });
  put(sheet, 0, 0, "Year 11 Food, double lesson: ices");
  put(sheet, 1, 0, made.title);
  const factor = putRow(sheet, 3, 0, ["Number of tables", TABLES.length])[1]!;
  const heads = ["Ingredient", "1 table (g)", "All tables (g)"];
  const { recipe, end } = mix(
    kit,
    sheet,
    made,
    {
      ...{ row: 5, column: 0, heads, name: 0, amount: 1, total: "Weight" },
      cells: (item, grams) => [item, grams],
    },
    (rows, total) => {
      const scaled = columnOf(rows, 1).map((spot) =>
        put(sheet, spot.row, 2, `=${a1(spot)}*${fixed(factor)}`),
      );
      const heading = { sheet: sheet.name, row: 5, column: 2 };
      kit.marked.formulaColumns.push({ spots: scaled, heading, fixed: [factor] });
      const sum = put(sheet, total!.row, 2, `=SUM(${span(scaled)})`);
      kit.marked.sums.push({ spot: sum, parts: scaled });
      return scaled;
    },
  );
  const telling = { said: SAID, target: "Serve it as", voice: VOICE };
  const next = about(sheet, recipe, { row: end + 1, column: 0 }, telling);
  note(kit, sheet, next + 1, 0, "Freezer shelf labels by Thursday lunch, please.");
  vote(kit, sheet);
}

/** How the tables liked each other's. */
function vote(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 5, 5, ["Vote (1–5)", "Smooth", "Sweet", "Scoops well"]);
  const mark = () => kit.random.whole(2, 5);
  small(
    sheet,
    { row: 6, column: 5 },
    TABLES.map((table) => [table, mark(), mark(), mark()]),
  );
  putRow(sheet, 11, 5, ["Clearing up", "Who"]);
  small(sheet, { row: 12, column: 5 }, [
    ["sinks", "Table 3"],
    ["floor", "Table 1"],
    ["aprons to wash", "Table 4"],
  ]);
}

/** One solution for each table, each a block of its own down the sheet. */
function theory(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Theory: what each table's bowl should do before we add flavour");
  const pairs = [choose(kit.random, 3, dissolved), choose(kit.random, 3, dissolved)];
  pairs.forEach((from, index) => {
    const left = 7 * index;
    put(sheet, 2, left, `Tables ${2 * index + 1} and ${2 * index + 2}`);
    solution(kit, sheet, {
      ...{ top: 3, left, count: 2, from, inputsFirst: index === 1 },
      headings: ["Powder", "Weight (g)", "Molar mass (g/mol)", "Splits into", "Moles of bits"],
      words: {
        water: ["Water in the bowl (g)", "Water in the bowl"],
        constant: "Water's constant (K kg/mol)",
        depression: "Drop (K)",
        freezingPoint: "New freezing point (°C)",
        proviso: (gap) => `Ideal sum, true to ${gap} K for a bowl this weak.`,
      },
    });
  });
}

/** A food teacher's double lesson. */
export const foodRooms: readonly Layout[] = [
  {
    ...{ name: "Year 11 Food, double lesson for four tables", language: "en" },
    build: (kit) => {
      recipeSheet(kit, addSheet(kit.marked.book, "Ices"));
      theory(kit, addSheet(kit.marked.book, "Theory"));
    },
  },
];
