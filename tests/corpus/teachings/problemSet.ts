import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { usualPrice } from "../unseen/shared";
import { block, markWorked, table, voice } from "./words";

const DATA = ["compound", "M, g/mol", "i", "state at 20 °C"];

/** The page of data: a line for each substance, the constant on top. */
function data(sheet: CorpusSheet, list: readonly Problem[]) {
  put(sheet, 0, 0, "Data sheet (allowed in the exam)");
  const constant = putRow(sheet, 1, 0, [
    "cryoscopic constant of water, K kg/mol",
    shown(1.86, "0.00"),
  ]);
  putRow(sheet, 3, 0, DATA);
  const lines = list.map(({ solute }, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[solute.en, shown(solute.molarMass, "0.00"), solute.particles, "solid"],
    ]),
  );
  return { constant: constant[1]!, lines };
}

interface Given {
  readonly problem: Problem;
  readonly line: readonly Spot[];
  readonly constant: Spot;
  readonly tolerance: string;
}

/** A question on its own sheet: what is asked, and the solution below it. */
function question(kit: Kit, index: number, { problem, line, constant, tolerance }: Given): void {
  const sheet = addSheet(kit.marked.book, `Q${index + 1}`);
  const { grams, waterGrams } = problem;
  const [name, molar, particles] = line as [Spot, Spot, Spot];
  put(
    sheet,
    0,
    0,
    `Question ${index + 1}. At what temperature does this solution start to freeze?`,
  );
  const there = (spot: Spot) => calledFrom({ sheet: sheet.name, row: 0, column: 0 }, spot);
  putRow(sheet, 2, 0, ["compound (see Data)", `=${there(name)}`]);
  const [mass, water] = table(sheet, { row: 3, column: 0 }, [
    ["mass of compound, g", grams],
    ["mass of water, g", waterGrams],
  ]).map((cells) => cells[1]!) as [Spot, Spot];
  put(sheet, 5, 0, "Solution");
  const step = (row: number, label: string, formula: string, format: string) =>
    putRow(sheet, row, 0, [label, shown(`=${formula}`, format)])[1]!;
  const moles = step(6, "n, mol", `${a1(mass)}/${there(molar)}`, "0.0000");
  const molal = step(7, "b, mol/kg", `${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const law = `${there(particles)}*${there(constant)}*${a1(molal)}`;
  const depression = step(8, "depression, K", law, "0.00");
  const point = step(9, "freezing point, °C", `-${a1(depression)}`, "0.00");
  const proviso = put(
    sheet,
    11,
    0,
    `Ideal dilute solution assumed; error no more than ${tolerance} K.`,
  );
  const cells = { name, mass, water, molar, particles, constant, moles, depression, point };
  markWorked(kit, cells, proviso);
}

const VOICE = voice(
  "Declared allergens:",
  "Honey: not suitable for those under 12 months.",
  "Alcohol: not for children, during pregnancy or ahead of driving.",
  "Whole nuts: choking hazard to children under 5.",
  "Raw egg yolk: heat the base to 71 °C or take pasteurised yolk.",
);

/** What the freezing box is set to. */
const COLD = -10;

const SAID: readonly Said[] = [
  { label: "freezing point, °C", states: "freezing point", as: "formula" },
  { label: "depression, K", states: "depression", as: "typed", decimals: 2 },
  { label: "water, g", states: "water", as: "typed", decimals: 0 },
  { label: "dissolved, g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "per cent of the water frozen in the box",
    ...{ states: "ice of water", as: "formula", format: "0.0", temperatureC: COLD },
  },
];

/** The mix of the lecture with its costs; a cell holds the temperature of the ice share. */
function lectureMix(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lecture mix");
  const own = { sugar: "refined sugar", "whole milk": "full-fat milk" };
  const made = called(perKilogram(kit.make(1)[0]!), own);
  put(sheet, 0, 0, `Not ideal at all: ${made.title}, 1 kg`);
  const [label, cold] = putRow(sheet, 2, 5, ["temperature in the box, °C", COLD]);
  kit.marked.inputs.push({ label: label!, value: cold!, bare: "temperature in the box" });
  const price = (index: number) => shown(usualPrice(kit.random, made.lines[index]!.en), "0.00");
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["m (g)", "component", "€/kg", "€"],
      cells: (item, grams, index) => [grams, item, price(index)],
      ...{ name: 1, amount: 0, unit: "g", word: "sum" },
      also: ({ heads, amounts, end: row }) => {
        const paid = beside(kit, heads[3]!, amounts, {
          ...{ sheet, format: "0.00" },
          content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
        });
        sumOf(kit, sheet, { row, column: 3 }, paid, "0.00");
        return [];
      },
    },
  );
  const said = SAID.map((each) =>
    each.states === "ice of water" ? { ...each, temperature: cold! } : each,
  );
  const next = say(sheet, recipe, { row: 4, column: 5 }, said);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "texture" });
  tellIn(sheet, recipe, { row: Math.max(end, next) + 2, column: 0 }, VOICE);
}

/** Questions on sheets of their own, data on the first, the mix of the lecture last. */
function problemSet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Data");
  const { list, tolerance } = problems(kit, 3);
  const { constant, lines } = data(sheet, list);
  list.forEach((problem, index) =>
    question(kit, index, { problem, line: lines[index]!, constant, tolerance }),
  );
  const [heads, ...weeks] = table(sheet, { row: 9, column: 0 }, [
    ["Problem set", "counts (%)"],
    ["colligative properties", 30],
    ["phase diagrams", 45],
    ["kinetics", 25],
  ]);
  const spots = columnOf(weeks, 1);
  put(sheet, 13, 0, "whole course work");
  const total = sumOf(kit, sheet, { row: 13, column: 1 }, spots);
  kit.marked.numberColumns.push({ spots, heading: heads![1]!, total, kind: "per cent" });
  note(kit, sheet, 15, 0, "Office hour moved to Wednesdays after the lecture.");
  lectureMix(kit);
}

/** A lecturer's problem set. */
export const problemSets: readonly Layout[] = [
  {
    name: "lecturer, data sheet, three questions and a mix that is not ideal",
    language: "en",
    build: problemSet,
  },
];
