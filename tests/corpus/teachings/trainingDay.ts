import {
  a1,
  addSheet,
  calledFrom,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { perHundred } from "../recipes";
import { choose, gramsOf, idealGap, tolerated } from "../solution";
import { block, markFormulas, table, voice } from "./words";

interface Task {
  readonly lines: readonly (readonly Spot[])[];
  readonly water: Spot;
  readonly constant: Spot;
  readonly tolerance: string;
}

/** What trainees are given. */
function task(kit: Kit, sheet: CorpusSheet): Task {
  const { random, marked } = kit;
  const solutes = choose(random, 2);
  const waterGrams = random.pick([120, 180, 350]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  put(sheet, 0, 0, "Task B: two solids share one beaker");
  put(sheet, 1, 0, "Predict where it starts to freeze; write down every step.");
  putRow(sheet, 3, 0, ["Solid", "mass / g", "M / g mol⁻¹", "ions or molecules per formula, i"]);
  const rows = solutes.map((each, index) => [
    ...[each.en, grams[index], shown(each.molarMass, "0.00"), each.particles],
  ]);
  const lines = table(sheet, { row: 4, column: 0 }, rows);
  const [label, water] = putRow(sheet, 7, 0, ["distilled water / g", waterGrams]);
  marked.inputs.push({ label: label!, value: water!, bare: "distilled water" });
  const constant = putRow(sheet, 8, 0, ["Kf (water) / K kg mol⁻¹", shown(1.86, "0.00")])[1]!;
  putRow(sheet, 10, 0, ["Time allowed", "12 min"]);
  putRow(sheet, 11, 0, ["Marks", 6]);
  return {
    lines,
    water: water!,
    constant,
    tolerance: tolerated(idealGap(solutes, grams, waterGrams)),
  };
}

const WHICH = ["first", "second"];

/** The steps, each reading the task's cells. */
function key(kit: Kit, sheet: CorpusSheet, { lines, water, constant, tolerance }: Task): void {
  put(sheet, 0, 0, "Key to task B (facilitators only)");
  const heads = putRow(sheet, 2, 0, ["Step", "Result", "Unit"]);
  const step = (row: number, [label, formula, unit]: readonly string[], format: string): Spot =>
    putRow(sheet, row, 0, [label, shown(`=${formula}`, format), unit])[1]!;
  const away = (spot: Spot) => calledFrom(heads[0]!, spot);
  const moles = lines.map((cells, index) => {
    const [, mass, molar, particles] = cells.map(away);
    const formula = `${mass}/${molar}*${particles}`;
    return step(3 + index, [`particles from the ${WHICH[index]}`, formula, "mol"], "0.0000");
  });
  markFormulas(kit, heads[1]!, moles);
  const all = step(5, ["particles, both", `SUM(${span(moles)})`, "mol"], "0.0000");
  kit.marked.sums.push({ spot: all, parts: moles });
  const perKilogram = `1000*${a1(all)}/${away(water)}`;
  const molal = step(6, ["per kg of water", perKilogram, "mol kg⁻¹"], "0.000");
  const depression = step(7, ["ΔTf", `${away(constant)}*${a1(molal)}`, "K"], "0.00");
  const freezingPoint = step(8, ["Tf", `-${a1(depression)}`, "°C"], "0.00");
  const proviso = put(sheet, 10, 0, `Accept ±${tolerance} K: the law is for ideal solutions only.`);
  const [names, grams, molarMasses, particles] = [0, 1, 2, 3].map((at) => columnOf(lines, at));
  kit.marked.solutions.push({
    ...{ names: names!, grams: grams!, molarMasses: molarMasses!, particles: particles!, moles },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}

const SAID: readonly Said[] = [
  { label: "first ice forms at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "below pure water by", inCell: "K", states: "depression", as: "formula", format: "0.0" },
  { label: "water in 100 g", inCell: "g", states: "water", as: "formula", format: "0.0" },
  {
    ...{ label: "water locked up as ice at −16 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -16, decimals: 0 },
  },
];

const VOICE = voice(
  "Contains:",
  "Honey in it, keep away from under-ones (12 months).",
  "Alcohol in it: adults only; not if pregnant, not before the drive home.",
  "Whole nuts in it: a choking risk under 5 years.",
  "Raw egg yolk in it: cook the custard to 71 °C or buy pasteurised yolk.",
);

/** What is eaten in the break. */
function tea(kit: Kit, sheet: CorpusSheet): void {
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), { sugar: "caster sugar" });
  put(sheet, 0, 1, `3.15 pm, tea room: ${made.title}`);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 2, column: 1 },
    {
      heads: ["% by mass", "what", "brought by"],
      cells: (item, grams, index) => [shown(grams, "0.0"), item, ["Lab", "Prep room"][index % 2]],
      ...{ name: 1, amount: 0, unit: "%", format: "0.0", word: "(adds up to 100)" },
    },
  );
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "we want it" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  note(kit, sheet, last + 1, 1, "Sign-in sheets go to the office before tea, please.");
}

/** A task, its key on another sheet, and the ice of the tea break. */
function trainingDay(kit: Kit): void {
  const { book } = kit.marked;
  const given = task(kit, addSheet(book, "Task"));
  key(kit, addSheet(book, "Key"), given);
  tea(kit, addSheet(book, "Break"));
}

/** A training day for teachers. */
export const trainingDays: readonly Layout[] = [
  {
    name: "teacher training, task tab, key tab, tea-break ice",
    language: "en",
    build: trainingDay,
  },
];
