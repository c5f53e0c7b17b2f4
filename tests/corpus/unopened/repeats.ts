import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { temperatures } from "../strollers/words";
import { single } from "./words";

const HEADS = [
  ...["Pair", "Solute", "M / g mol⁻¹", "i", "Solute / g", "Water / g", "n / mol", "b / mol kg⁻¹"],
  ...["ΔT predicted / K", "Tf predicted / °C", "1st try / °C", "2nd try / °C", "3rd try / °C"],
  ...["Mean / °C", "Mean − predicted / K"],
];

const PAIRS = ["Ada & Tom", "Bea & Noor", "Cas & Eli", "Dov & Ivy", "Fay & Gus"];

/** One pair's line. */
function pair(
  kit: Kit,
  sheet: CorpusSheet,
  problem: Problem,
  index: number,
  constant: Spot,
): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const row = 5 + index;
  const at = (column: number) => a1({ sheet: sheet.name, row, column });
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const tries = [-1, 0, 1].map((step) => {
    const read = real + (step * kit.random.whole(0, 1)) / 10;
    return shown(Number(read.toFixed(1)), "0.0");
  });
  return putRow(sheet, row, 0, [
    ...[PAIRS[index], solute.en, shown(solute.molarMass, "0.00"), solute.particles],
    ...[grams, waterGrams, shown(`=${at(4)}/${at(2)}`, "0.0000")],
    shown(`=${at(6)}/${at(5)}*1000`, "0.000"),
    shown(`=${at(3)}*${fixed(constant)}*${at(7)}`, "0.00"),
    ...[shown(`=-${at(8)}`, "0.00"), ...tries],
    shown(`=AVERAGE(${at(10)}:${at(12)})`, "0.00"),
    shown(`=${at(13)}-${at(9)}`, "0.00"),
  ]);
}

/** Five pairs in rows, three tries each. */
function repeats(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Results");
  const { list, tolerance } = problems(kit, 5);
  putRow(sheet, 0, 0, ["Practical 11", undefined, "Depression of freezing point"]);
  putRow(sheet, 1, 0, ["Group", "12B", "Room", "Physics 3"]);
  const constant = putRow(sheet, 2, 0, ["Kf (water)", shown(1.86, "0.00"), "K kg mol⁻¹"])[1]!;
  const heads = putRow(sheet, 4, 0, HEADS);
  const rows = list.map((each, index) => pair(kit, sheet, each, index, constant));
  [6, 7, 8, 9, 13, 14].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, fixed: at === 8 ? [constant] : [] },
    }),
  );
  [10, 11, 12].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
  const text = `Predictions assume an ideal solution. For these strengths they are good to ${tolerance} K.`;
  const proviso = put(sheet, 11, 0, text);
  for (const cells of rows) {
    const [, name, molar, particles, grams, water, moles, , depression, freezingPoint] = cells;
    const own = { name: name!, molar: molar!, particles: particles!, grams: grams!, moles: moles! };
    const rest = { constant, proviso, water: water!, depression: depression! };
    kit.marked.solutions.push(single(own, { ...rest, freezingPoint: freezingPoint! }));
  }
  note(
    kit,
    sheet,
    13,
    0,
    "Stir gently: a beaker that is left alone cools past its freezing point first.",
  );
  freezers(kit, addSheet(kit.marked.book, "Kit check"));
}

/** What the technician reads before the lesson. */
function freezers(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Technician's check before the lesson");
  const heads = putRow(sheet, 2, 0, ["Probe no.", "In melting ice (°C)", "In the salt bath (°C)"]);
  const rows = [1, 2, 3, 4, 5, 6].map((probe) =>
    putRow(sheet, 2 + probe, 0, [
      probe,
      shown(kit.random.whole(-1, 1) / 10, "0.0"),
      shown(-kit.random.whole(140, 170) / 10, "0.0"),
    ]),
  );
  [1, 2].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
  note(kit, sheet, 10, 0, "Probe 4 wants a new battery.");
}

/** A physics teacher's practical. */
export const practicals: readonly Layout[] = [
  { name: "year 12 practical, five pairs with three tries each", language: "en", build: repeats },
];
