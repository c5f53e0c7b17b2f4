import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { problems, say, type Problem, type Said } from "../layouts/parts";
import { block, markFormulas, markWorked, table, voice, type Worked } from "./words";

const HEADS = [
  ...["Q", "Dissolve", "this many g", "in g of water", "g per mol", "pieces it splits into"],
  ...["mol", "mol per kg", "K down", "°C"],
];

/** A question in its row, the working far at the right. */
function question(sheet: CorpusSheet, problem: Problem, index: number, constant: Spot): Worked {
  const { solute, grams, waterGrams } = problem;
  const row = 3 + index;
  const given = [solute.en, grams, waterGrams, shown(solute.molarMass, "0.00"), solute.particles];
  const [, name, mass, water, molar, particles] = putRow(sheet, row, 0, [index + 1, ...given]) as [
    ...[Spot, Spot, Spot, Spot, Spot, Spot],
  ];
  const work = (column: number, formula: string, format: string) =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const moles = work(10, `${a1(mass)}/${a1(molar)}`, "0.0000");
  const molal = work(11, `${a1(moles)}/${a1(water)}*1000`, "0.000");
  const law = calledFrom(moles, constant).replace(/([A-Z])(\d)/, "$$$1$$$2");
  const depression = work(12, `${a1(molal)}*${a1(particles)}*${law}`, "0.00");
  const point = work(13, `-${a1(depression)}`, "0.00");
  return { name, mass, water, molar, particles, constant, moles, depression, point };
}

/** The homework with its working, and the short answers on a sheet to print. */
function homework(kit: Kit): void {
  const { book } = kit.marked;
  const [sheet, facts] = [addSheet(book, "Homework 7"), addSheet(book, "Constants")];
  put(facts, 0, 0, "Constants we use all term");
  const constant = putRow(facts, 2, 0, ["Kf water, K kg/mol", shown(1.86, "0.00")])[1]!;
  putRow(facts, 3, 0, ["Heat of melting of ice, kJ/kg", 334]);
  putRow(facts, 4, 0, ["Density of water at 20 °C, g/mL", shown(0.998, "0.000")]);
  put(sheet, 0, 0, "Homework 7, back by Tuesday. Working for the tutor from column K on");
  putRow(sheet, 2, 0, HEADS.slice(0, 6));
  const heads = putRow(sheet, 2, 10, HEADS.slice(6));
  const { list, tolerance } = problems(kit, 4);
  const rows = list.map((each, index) => question(sheet, each, index, constant));
  const text = `Assume an ideal solution; the real ones are within ${tolerance} K.`;
  const proviso = put(sheet, 8, 0, text);
  rows.forEach((each) => markWorked(kit, each, proviso));
  [0, 1, 2, 3].forEach((at) => {
    const spots = rows.map(({ moles }) => ({ ...moles, column: 10 + at }));
    markFormulas(kit, heads[at]!, spots, at === 2 ? [constant] : []);
  });
  answers(kit, rows);
  note(kit, sheet, 10, 0, "Late again? Hand it in at the porter's lodge.");
}

/** Short answers, taken from the working. */
function answers(kit: Kit, rows: readonly Worked[]): void {
  const sheet = addSheet(kit.marked.book, "Answers");
  const heads = putRow(sheet, 0, 0, ["Q", "Freezes at (°C)", "points"]);
  const taken = rows.map(({ point }, index) => {
    const there = `=${calledFrom({ sheet: sheet.name, row: 0, column: 0 }, point!)}`;
    return putRow(sheet, 1 + index, 0, [index + 1, shown(there, "0.00"), 3]);
  });
  markFormulas(kit, heads[1]!, columnOf(taken, 1));
  const total = put(sheet, 1 + rows.length, 2, `=SUM(C2:C${1 + rows.length})`);
  kit.marked.sums.push({ spot: total, parts: columnOf(taken, 2) });
}

const VOICE = voice(
  "Allergy information:",
  "Honey inside; not for infants under 12 months.",
  "Alcohol inside; not for children, pregnant guests or drivers.",
  "Whole nuts inside; under-5s could choke.",
  "Raw egg yolk inside; bring to 71 °C or use pasteurised yolk.",
);

const SAID: readonly Said[] = [
  { label: "Begins to freeze, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "In solution, g", states: "dissolved", as: "formula", format: "0" },
  { label: "Water, g", states: "water", as: "formula", format: "0" },
  {
    label: "Frozen part of the water, % at −18 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** What is eaten on the last evening. */
function lastEvening(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Last evening");
  const made = called(kit.make(1)[0]!, { water: "water (tap)", sugar: "sugar (granulated)" });
  put(sheet, 0, 0, `${made.title}, made by all of us in week 10`);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["who brings it", "ingredient", undefined, "weight in g"],
      cells: (item, grams, index) => [["Dot", "Errol", "Gwen"][index % 3], item, undefined, grams],
      ...{ name: 1, amount: 3, unit: "g", word: "in the freezer box" },
    },
  );
  const after = say(sheet, recipe, { row: end + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: after, column: 1, label: "Aim" });
  tellIn(sheet, recipe, { row: 1, column: 0 }, VOICE);
  table(sheet, { row: 3, column: 6 }, [
    ["Room 21", "open"],
    ["Tuesdays", "18:30 to 21:00"],
    ["half-term", "closed"],
  ]);
}

/** Homework of an evening class and its last evening. */
function nightSchool(kit: Kit): void {
  homework(kit);
  lastEvening(kit);
}

/** An evening class in chemistry. */
export const nightSchools: readonly Layout[] = [
  {
    name: "night school, homework worked from column K, last evening",
    language: "en",
    build: nightSchool,
  },
];
