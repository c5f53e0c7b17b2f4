import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { reading } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { block, markFormulas, markWorked, voice } from "./words";

const HEADS = [
  ...["Name", "Unknown", "g/mol", "i", "wt. taken (g)", "wt. water (g)", "expected depression (K)"],
  ...[
    "expected f.p. (°C)",
    "their f.p. (°C)",
    "Notebook /5",
    "Working /4",
    "Units /1",
    "Total /10",
  ],
];

const NAMES = ["Abara, C.", "Chowdhury, R.", "Eklund, M.", "Hargreave, T.", "Novak, P."];

/** One student's line: what the beaker held, what it should have read, the marks. */
function student(kit: Kit, sheet: CorpusSheet, problem: Problem, index: number, constant: Spot) {
  const { random } = kit;
  const { solute, grams, waterGrams } = problem;
  const row = 5 + index;
  const [, name, molar, particles, mass, water] = putRow(sheet, row, 0, [
    ...[NAMES[index], solute.en, shown(solute.molarMass, "0.00"), solute.particles],
    ...[grams, waterGrams],
  ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
  const amount = `${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const law = `=1000*${fixed(constant)}*(${amount})/${a1(water)}`;
  const depression = put(sheet, row, 6, shown(law, "0.00"));
  const point = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.00"));
  const read = put(sheet, row, 8, shown(reading(problem), "0.0"));
  const marks = putRow(sheet, row, 9, [random.whole(3, 5), random.whole(2, 4), random.whole(0, 1)]);
  const total = sumOf(kit, sheet, { row, column: 12 }, marks);
  const worked = { name, molar, particles, mass, water, constant, moles: depression };
  return {
    worked: { ...worked, depression, point },
    cells: [depression, point, read, ...marks, total],
  };
}

/** The marks of a bench of students. */
function marking(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "CHM1 lab 5: marks, bench 2 (demonstrator keeps this sheet)");
  const constant = putRow(sheet, 2, 0, ["Kf H₂O (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 4, 0, HEADS);
  const { list, tolerance } = problems(kit, NAMES.length);
  const rows = list.map((each, index) => student(kit, sheet, each, index, constant));
  const end = 5 + rows.length;
  const text = `Full marks for a reading within ${tolerance} K of the ideal value.`;
  const proviso = put(sheet, end + 2, 0, text);
  rows.forEach(({ worked }) => markWorked(kit, worked, proviso));
  const cells = rows.map((each) => each.cells);
  markFormulas(kit, heads[6]!, columnOf(cells, 0), [constant]);
  markFormulas(kit, heads[7]!, columnOf(cells, 1));
  markFormulas(kit, heads[12]!, columnOf(cells, 6));
  temperatures(kit, heads[8]!, columnOf(cells, 2));
  put(sheet, end, 8, "bench mean");
  [9, 10, 11, 12].forEach((column, at) =>
    put(sheet, end, column, shown(`=AVERAGE(${span(columnOf(cells, 3 + at))})`, "0.0")),
  );
  note(kit, sheet, end + 3, 0, "Eklund: medical note, resit not needed.");
}

const VOICE = voice(
  "Ask about allergies! Has",
  "Has honey: nobody under 12 months.",
  "Has alcohol: no children, nobody pregnant, nobody who drives.",
  "Has whole nuts: not for anyone under 5, they choke.",
  "Has raw yolk: 71 °C on the probe, or use pasteurised.",
);

const SAID: readonly Said[] = [
  {
    label: "f.p. of the treat",
    inCell: "°C",
    states: "freezing point",
    as: "formula",
    format: "0.0",
  },
  { label: "ΔTf of the treat", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    ...{ label: "water frozen at −16 °C", inCell: "%", states: "ice of water", as: "typed" },
    ...{ temperatureC: -16, decimals: 0 },
  },
];

/** What the bench that tidies up first may eat. */
function treat(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { water: "cold water", "lemon juice": "juice of lemons" });
  put(sheet, 0, 1, "For the bench that tidies first");
  put(sheet, 1, 1, made.title);
  const { recipe } = block(
    kit,
    sheet,
    made,
    { row: 4, column: 1 },
    {
      heads: ["What", "Take", "tick"],
      cells: (item, grams) => [item, shown(grams, '0" g"')],
      ...{ name: 0, amount: 1, unit: "g", format: '0" g"', word: "in the Dewar" },
    },
  );
  tellIn(sheet, recipe, { row: 2, column: 1 }, VOICE);
  const next = say(sheet, recipe, { row: 4, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "wanted" });
}

/** A demonstrator's marks, and the treat. */
function markingGrid(kit: Kit): void {
  marking(kit, addSheet(kit.marked.book, "Bench 2"));
  treat(kit, addSheet(kit.marked.book, "Treat"));
}

/** A demonstrator in a university's teaching laboratory. */
export const markingGrids: readonly Layout[] = [
  { name: "demonstrator, marks for own unknowns and a treat", language: "en", build: markingGrid },
];
