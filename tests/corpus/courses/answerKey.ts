import { a1, addSheet, calledFrom, fixed, put, putRow, shown, span, type Spot } from "../book";
import type { CorpusSheet } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { asFormulas } from "./words";

interface Question {
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

/** Two things dissolved in one jug. */
function asked({ random }: Kit): Question {
  const solutes = choose(random, 2, dissolved);
  const waterGrams = random.pick([500, 1000, 2000]);
  return { solutes, waterGrams, grams: solutes.map((each) => gramsOf(random, each, waterGrams)) };
}

interface Paper {
  readonly names: readonly Spot[];
  readonly grams: readonly Spot[];
  readonly water: Spot;
}

/** A question as the apprentices get it. */
function question(sheet: CorpusSheet, { solutes, grams, waterGrams }: Question, index: number) {
  const row = 3 + 6 * index;
  put(sheet, row, 0, `Question ${index + 1} (6 marks)`);
  put(
    sheet,
    row,
    1,
    "A jug of coolant is made up as below. What temperature may the chiller go to?",
  );
  const water = putRow(sheet, row + 1, 1, ["water", waterGrams, "g"])[1]!;
  const lines = solutes.map(({ en }, at) => putRow(sheet, row + 2 + at, 1, [en, grams[at], "g"]));
  put(sheet, row + 4, 1, "Answer: ................ °C");
  return { names: lines.map(([name]) => name!), grams: lines.map(([, mass]) => mass!), water };
}

const KEY = ["Solute in the question", "M (g/mol)", "Particles", "mol of particles"];

interface Given {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** The worked answer of one question, with its marks. */
function key(kit: Kit, sheet: CorpusSheet, asks: Question, paper: Paper, at: number, on: Given) {
  const row = 4 + 9 * at;
  const { constant, proviso } = on;
  put(sheet, row, 0, `Question ${at + 1}`);
  const heads = putRow(sheet, row + 1, 0, KEY);
  const lines = asks.solutes.map((each, index) => {
    const [, molar, particles] = putRow(sheet, row + 2 + index, 0, [
      ...[`=${calledFrom({ ...constant }, paper.names[index]!)}`],
      ...[shown(each.molarMass, "0.00"), each.particles],
    ]) as [Spot, Spot, Spot];
    const mass = calledFrom(molar, paper.grams[index]!);
    const moles = shown(`=${mass}/${a1(molar)}*${a1(particles)}`, "0.0000");
    return { molar, particles, moles: put(sheet, row + 2 + index, 3, moles) };
  });
  const moles = lines.map((each) => each.moles);
  const step = (down: number, label: string, formula: string, marks: number): Spot => {
    put(sheet, row + down, 4, marks);
    return putRow(sheet, row + down, 0, [label, shown(formula, "0.00")])[1]!;
  };
  const kilos = `(${calledFrom(constant, paper.water)}/1000)`;
  const all = step(4, "mol of particles per kg water", `=SUM(${span(moles)})/${kilos}`, 3);
  const depression = step(5, "lowered by (K)", `=${fixed(constant)}*${a1(all)}`, 2);
  const freezingPoint = step(6, "chiller no lower than (°C)", `=-${a1(depression)}`, 1);
  kit.marked.solutions.push({
    ...{ names: paper.names, grams: paper.grams, water: paper.water, moles },
    ...{ molarMasses: lines.map(({ molar }) => molar) },
    ...{ particles: lines.map(({ particles }) => particles) },
    ...{ constant, depression, freezingPoint, proviso },
  });
  asFormulas(kit, heads[3]!, moles);
}

/** A paper of three questions and its marking key. */
function test(kit: Kit): void {
  const [paper, answers] = ["Paper", "Key"].map((name) => addSheet(kit.marked.book, name));
  put(
    paper!,
    0,
    0,
    "Refrigeration apprentices, block 2: short test on coolants that do not freeze",
  );
  put(paper!, 1, 0, "Time allowed 40 minutes. Data sheet and calculator permitted.");
  put(answers!, 0, 0, "Marking key, not for the noticeboard");
  const label = "Kf of water on the data sheet (K kg/mol)";
  const [labelled, constant] = putRow(answers!, 1, 0, [label, shown(1.86, "0.00")]);
  const bare = "Kf of water on the data sheet";
  kit.marked.inputs.push({ label: labelled!, value: constant!, bare });
  put(answers!, 3, 4, "marks");
  const asks = [asked(kit), asked(kit), asked(kit)];
  const gaps = asks.map((each) => idealGap(each.solutes, each.grams, each.waterGrams));
  const words = `Accept the ideal law: no jug here is further than ${tolerated(Math.max(...gaps))} K from it.`;
  const on = { constant: constant!, proviso: put(answers!, 2, 0, words) };
  asks.forEach((each, index) => {
    key(kit, answers!, each, question(paper!, each, index), index, on);
  });
  note(kit, answers!, 31, 0, "Half marks where only the particles were forgotten.");
}

/** Apprentices in refrigeration. */
export const answerKeys: readonly Layout[] = [
  { name: "refrigeration apprentices, paper and key", language: "en", build: test },
];
