import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { asFormulas, asTemperatures, readOff, rowsAt, tellAt, told } from "./words";

/** What stands left and right of the pans, and how each is worked out. */
const ROWS: readonly (readonly [label: string, unit: string | undefined])[] = [
  ["Stirred in", undefined],
  ["how much of it", "g"],
  ["into how much water", "g"],
  ["a mole of it", "g/mol"],
  ["pieces it falls into", undefined],
  ["Moles in the pan", "mol"],
  ["Moles of pieces per kg of water", "mol/kg"],
  ["Times Kf: freezes lower by", "K"],
  ["Sum says it freezes at", "°C"],
  ["Jam thermometer said", "°C"],
];

interface Desk {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One pan, down its column; gives the cells that are worked out and the reading. */
function pan(kit: Kit, sheet: CorpusSheet, problem: Problem, column: number, desk: Desk): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const { constant, proviso } = desk;
  put(sheet, 4, column, `Pan ${column}`);
  const at = (index: number, content: Content): Spot => put(sheet, 5 + index, column, content);
  const name = at(0, solute.en);
  const mass = at(1, grams);
  const water = at(2, waterGrams);
  const molar = at(3, shown(solute.molarMass, "0.00"));
  const particles = at(4, solute.particles);
  const moles = at(5, shown(`=${a1(mass)}/${a1(molar)}`, "0.000"));
  const pieces = at(6, shown(`=1000*${a1(moles)}*${a1(particles)}/${a1(water)}`, "0.000"));
  const depression = at(7, shown(`=${a1(pieces)}*${fixed(constant)}`, "0.00"));
  const freezingPoint = at(8, shown(`=-${a1(depression)}`, "0.00"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [pieces], counted: [moles], water, constant, depression, freezingPoint, proviso },
  });
  const reading = at(9, readOff(problem));
  return [moles, pieces, depression, freezingPoint, reading];
}

/** The pans beside each other, units after the last. */
function pans(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 3);
  const constant = putRow(sheet, 2, 0, ["Kf for water (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const words = `We pretend nothing in the pan minds its neighbours: right to ${tolerance} K this thin.`;
  const proviso = put(sheet, 16, 0, words);
  const labels = ROWS.map(([label, unit], index) => {
    put(sheet, 5 + index, 4, unit);
    return put(sheet, 5 + index, 0, label);
  });
  const done = list.map((each, index) => pan(kit, sheet, each, 1 + index, { constant, proviso }));
  [[], [], [constant], []].forEach((cells, at) => {
    asFormulas(kit, labels[5 + at]!, columnOf(done, at), cells);
  });
  asTemperatures(kit, labels[9]!, columnOf(done, 4));
}

/** Syrups told both ways. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 18, 0, "Why '50 % syrup' means two things");
  const heads = putRow(sheet, 19, 0, [
    ...["Jug", "sugar (g)", "water (g)", "g sugar per 100 g water", "% sugar by mass"],
  ]);
  const rows = ["A", "B", "C"].map((jug, index) => {
    const row = 20 + index;
    const [grams, waterGrams] = [kit.random.whole(4, 12) * 25, kit.random.pick([300, 400, 500])];
    const [, sugar, water] = putRow(sheet, row, 0, [jug, grams, waterGrams]) as [Spot, Spot, Spot];
    const perWater = put(sheet, row, 3, shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0"));
    const share = `=100*${a1(sugar)}/(${a1(sugar)}+${a1(water)})`;
    return { sugar, water, perWater, share: put(sheet, row, 4, shown(share, "0.0")) };
  });
  kit.marked.strengths.push(...rows);
  asFormulas(
    kit,
    heads[3]!,
    rows.map(({ perWater }) => perWater),
  );
  asFormulas(
    kit,
    heads[4]!,
    rows.map(({ share }) => share),
  );
}

/** What is churned at the end of the evening, at the right of it all. */
function churned(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { water: "cold water", sugar: "caster sugar" });
  put(sheet, 2, 6, `And at half past eight: ${made.title.toLowerCase()}`);
  const heads = ["g", "into the churn"];
  const { names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 6 },
    { heads, cells: (name, grams) => [grams, name], name: 1, amount: 0 },
  );
  const total = sumOf(kit, sheet, { row: end, column: 6 }, amounts);
  put(sheet, end, 7, "in the churn");
  const amountLabel = { sheet: sheet.name, row: 4, column: 6 };
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  const next = say(sheet, recipe, { row: end + 2, column: 7 }, [
    { label: "first ice at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "lowered by", inCell: "K", states: "depression", as: "formula", format: "0.0" },
    { label: "water, fruit and milk included", inCell: "g", states: "water", as: "formula" },
    {
      ...{ label: "of that water frozen at −16 °C", inCell: "%", states: "ice of water" },
      ...{ as: "typed", temperatureC: -16, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "meant to be" });
  tellAt(sheet, recipe, { row: next + 2, column: 6 }, told(made, "For the door:"));
}

/** One evening: three pans, three syrups, one churn. */
function evening(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week 4");
  put(sheet, 0, 0, "Physics for people who cook, week 4: what a spoonful does to ice");
  pans(kit, sheet);
  syrups(kit, sheet);
  churned(kit, sheet);
  rowsAt(sheet, { row: 25, column: 0 }, [
    ["Room", "B2, kettle works"],
    ["Doors", "18:45"],
    ["Fee owed by", "Jo, the two from Hill Road"],
  ]);
  note(kit, sheet, 29, 0, "Next time start the salt pan first, it takes ages.");
}

/** An evening class in kitchen physics. */
export const eveningPans: readonly Layout[] = [
  { name: "evening class, three pans and a churn", language: "en", build: evening },
];
