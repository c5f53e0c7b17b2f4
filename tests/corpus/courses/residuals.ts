import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { asFormulas, asTemperatures, readOff } from "./words";

const WEIGHED = [
  ...["Flask", "Solute", "Boat, empty (g)", "Boat + solute (g)", "Solute, net (g)"],
  ...["Flask, empty (g)", "Flask + water (g)", "Water, net (g)", "T observed (°C)"],
];

const WORKED = [
  ...["Flask", "Molar mass (g/mol)", "Ions or molecules, ν", "Molality (mol/kg)"],
  ...["θ calc (K)", "T calc (°C)", "Residual, T obs − T calc (K)"],
];

interface Weighed {
  readonly name: Spot;
  readonly mass: Spot;
  readonly water: Spot;
  readonly observed: Spot;
}

/** The balance's readings of one flask and what they leave. */
function weigh(kit: Kit, sheet: CorpusSheet, problem: Problem, index: number): Weighed {
  const { random } = kit;
  const { solute, grams, waterGrams } = problem;
  const row = 4 + index;
  const [boat, flask] = [random.whole(210, 380) / 100, random.whole(9000, 12500) / 100];
  const cells = putRow(sheet, row, 0, [
    ...[index + 1, solute.en, shown(boat, "0.00"), shown(boat + grams, "0.00"), undefined],
    ...[shown(flask, "0.00"), shown(flask + waterGrams, "0.00"), undefined, readOff(problem)],
  ]);
  const net = (column: number): Spot => {
    const [empty, full] = [cells[column - 2]!, cells[column - 1]!];
    return put(sheet, row, column, shown(`=${a1(full)}-${a1(empty)}`, "0.00"));
  };
  return { name: cells[1]!, mass: net(4), water: net(7), observed: cells[8]! };
}

interface Law {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** What follows from one flask's weights, on the second sheet. */
function work(kit: Kit, sheet: CorpusSheet, problem: Problem, weighed: Weighed, law: Law): Spot[] {
  const { name, mass, water, observed } = weighed;
  const { constant, proviso } = law;
  const { row } = mass;
  const { molarMass, particles: each } = problem.solute;
  const [, molar, particles] = putRow(sheet, row, 0, [row - 3, shown(molarMass, "0.00"), each]) as [
    ...[Spot, Spot, Spot],
  ];
  const at = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const [net, kept] = [calledFrom(molar, mass), calledFrom(molar, water)];
  const molality = at(3, `${net}/${a1(molar)}/${kept}*1000`, "0.0000");
  const depression = at(4, `${a1(molality)}*${a1(particles)}*${fixed(constant)}`, "0.000");
  const freezingPoint = at(5, `-${a1(depression)}`, "0.000");
  const residual = at(6, `${calledFrom(molar, observed)}-${a1(freezingPoint)}`, "0.000");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
  });
  return [molality, depression, freezingPoint, residual];
}

/** Weights on one sheet, sums on the next, and the largest residual. */
function residuals(kit: Kit): void {
  const [balance, sums] = ["Balance", "Calculated"].map((each) => addSheet(kit.marked.book, each));
  put(balance!, 0, 0, "FS2104 Physical chemistry of foods, experiment 3: cryoscopy");
  put(balance!, 1, 0, "Pair 7, Tuesday afternoon. All weighings by difference.");
  const heads = putRow(balance!, 3, 0, WEIGHED);
  put(sums!, 0, 0, "Ideal dilute solution against the Beckmann thermometer");
  const constant = putRow(sums!, 1, 0, ["Kf, water (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const second = putRow(sums!, 3, 0, WORKED);
  const { list, tolerance } = problems(kit, 6);
  const words = `θ = ν·Kf·b holds in the limit of dilution; for these flasks within ${tolerance} K.`;
  const law = { constant, proviso: put(sums!, 13, 0, words) };
  const flasks = list.map((each, index) => weigh(kit, balance!, each, index));
  const rows = list.map((each, index) => work(kit, sums!, each, flasks[index]!, law));
  asFormulas(
    kit,
    heads[4]!,
    flasks.map(({ mass }) => mass),
  );
  asFormulas(
    kit,
    heads[7]!,
    flasks.map(({ water }) => water),
  );
  asTemperatures(
    kit,
    heads[8]!,
    flasks.map(({ observed }) => observed),
  );
  [[], [constant], [], []].forEach((cells, index) => {
    asFormulas(kit, second[3 + index]!, columnOf(rows, index), cells);
  });
  const left = span(columnOf(rows, 3));
  put(sums!, 11, 5, "Largest, either way (K)");
  put(sums!, 11, 6, shown(`=MAX(MAX(${left}),-MIN(${left}))`, "0.000"));
  note(kit, sums!, 15, 0, "Discuss: which flask strays most, and is it the strongest one?");
  note(
    kit,
    balance!,
    12,
    0,
    "Zero of the thermometer set in melting ice made from the same water.",
  );
}

/** A university practical. */
export const residualSheets: readonly Layout[] = [
  { name: "university cryoscopy, weighed by difference", language: "en", build: residuals },
];
