import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic } from "../strollers/words";
import { ENGLISH, shares } from "./words";

const VOICE: Voice = {
  ...ENGLISH,
  lead: "Label must name:",
  egg: "Raw egg yolk in the mix: specify 71 °C or pasteurised yolk.",
};

const CLIENTS = ["Pier café", "Hill farm", "Two Sisters", "Museum shop"];

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Initial freezing point / °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Depression / K", { states: "depression", as: "formula", format: "0.00" }],
  ["Water / g", { states: "water", as: "formula", format: "0" }],
  ["Dissolved solids / g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Water frozen at −18 °C / %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 1 },
  ],
  [
    "Ice in mix at −13 °C / %",
    { states: "ice of mix", as: "typed", temperatureC: -13, decimals: 1 },
  ],
  ["Sugars / % of mix", { states: "sugar share", as: "typed", decimals: 1 }],
];

interface Case {
  readonly code: string;
  readonly client: string;
  readonly recipe: MarkedRecipe;
}

/** All lines of all recipes under one heading. */
function lines(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Case[] {
  const label = putRow(sheet, 0, 0, ["Case", "Client", "Ingredient as on spec", "Batch / g"])[3]!;
  let row = 1;
  return mades.map((made, index) => {
    const code = `C-${101 + index}`;
    const client = CLIENTS[index % CLIENTS.length]!;
    const rows = made.names.map((name, at) =>
      putRow(sheet, row + at, 0, [code, client, name, made.grams[at]]),
    );
    row += rows.length;
    const [names, amounts] = [columnOf(rows, 2), columnOf(rows, 3)];
    const recipe = markRecipe(kit, made, { names, amounts, amountLabel: label, unit: "g" });
    return { code, client, recipe };
  });
}

/** A case's row in the register; gives the cell of its mass. */
function register(sheet: CorpusSheet, one: Case, row: number, heads: readonly Spot[]): Spot {
  const { code, client, recipe } = one;
  const [names, amounts] = [recipe.names, recipe.amounts].map((spots) => `Lines!${span(spots)}`);
  const mass = shown(`=SUM(${amounts})`, "0");
  const cells = putRow(sheet, row, 0, [code, client, recipe.made.title, mass]);
  ANSWERS.forEach(([, plan], index) => {
    const place = { row, column: 4 + index };
    resultAt(sheet, recipe, heads[4 + index]!, place, plan, () => `${names},${amounts}`);
  });
  const next = 4 + ANSWERS.length;
  if (isAlcoholic(recipe.made)) {
    const plan = { states: "alcohol", as: "typed", decimals: 1 } as const;
    resultAt(sheet, recipe, heads[next]!, { row, column: next }, plan);
  }
  nameTarget(sheet, recipe, { row, column: next + 1 });
  tellIn(sheet, recipe, { row, column: next + 2 }, VOICE);
  return cells[3]!;
}

/** How the year's hours went. */
function hours(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 0, 0, [
    "Client",
    "Visits",
    "Hours on site",
    "Hours at desk",
    "Hours",
  ]);
  const rows = CLIENTS.map((client, index) =>
    putRow(sheet, 1 + index, 0, [
      ...[client, kit.random.whole(1, 4), kit.random.whole(6, 30), kit.random.whole(4, 20)],
    ]),
  );
  const sums = rows.map((cells) =>
    put(sheet, cells[0]!.row, 4, `=${a1(cells[2]!)}+${a1(cells[3]!)}`),
  );
  kit.marked.formulaColumns.push({ spots: sums, heading: heads[4]!, fixed: [] });
  shares(
    kit,
    sheet,
    { row: 8, column: 0 },
    {
      heads: ["Asked about", "% of questions"],
      parts: ["Too hard", "Too soft", "Icy", "Labels", "Cost"],
      total: "All questions",
    },
  );
  note(kit, sheet, 17, 0, "Museum shop pays quarterly.");
}

/** Many recipes as one long list, a register of answers, and the hours. */
function caseBook(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Register");
  const own = { sugar: "sucrose", water: "tap water", "cream 35 % fat": "cream 35%" };
  const mades = kit.make(12).map((made) => called(made, own));
  const cases = lines(kit, addSheet(book, "Lines"), mades);
  put(sheet, 0, 0, "Case register (masses are per trial batch)");
  const heads = putRow(sheet, 2, 0, [
    ...["Case", "Client", "Product", "Batch / g", ...ANSWERS.map(([head]) => head)],
    ...["Ethanol / g", "Brief", "Label advice"],
  ]);
  const masses = cases.map((each, index) => register(sheet, each, 3 + index, heads));
  kit.marked.formulaColumns.push({ spots: masses, heading: heads[3]!, fixed: [] });
  note(kit, sheet, 4 + cases.length, 0, "Lines are sorted by case; insert new cases at the end.");
  hours(kit, addSheet(book, "Hours"));
}

/** A consultant's workbook. */
export const caseBooks: readonly Layout[] = [
  {
    name: "consultant, all lines on one sheet and a case register",
    language: "en",
    build: caseBook,
  },
];
