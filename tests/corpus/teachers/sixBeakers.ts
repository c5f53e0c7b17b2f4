import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { input } from "../page";
import { dissolved, type Dissolved } from "../solution";
import { temperatures } from "../strollers/words";
import { inColumn, markSample, nearness, sideTable, under, worked } from "./words";

const HEADS = [
  ...["Beaker", "m / g", "n / mol", "b / mol kg⁻¹", "ΔT / K", "T_f / °C"],
  "read off / °C",
];

const ROWS = [4, 5, 6, 7, 8, 9];

interface Given {
  readonly solute: Dissolved;
  readonly waterGrams: number;
  readonly steps: readonly number[];
}

/** One sugar or salt, weighed in six even steps. */
function seriesOf({ random }: Kit): Given {
  const solute = random.pick(dissolved);
  const waterGrams = random.pick([200, 250, 400, 500]);
  const [from, to] = solute.gramsPerKg;
  const steps = ROWS.map((_, index) => {
    const perKg = from + ((to - from) * index) / (ROWS.length - 1);
    return Math.max(0.5, Math.round((2 * perKg * waterGrams) / 1000) / 2);
  });
  return { solute, waterGrams, steps };
}

/** What is the same for all six, at the left. */
function constants(kit: Kit, sheet: CorpusSheet, { solute, waterGrams }: Given) {
  const pair = (row: number, label: string, value: Parameters<typeof put>[3]): Spot =>
    putRow(sheet, row, 0, [label, value])[1]!;
  const name = pair(3, "Solute", solute.en);
  const molar = pair(4, "M / g mol⁻¹", shown(solute.molarMass, "0.00"));
  const particles = pair(5, "i (particles from one unit)", solute.particles);
  const water = input(
    kit,
    sheet,
    { row: 6, column: 0 },
    { label: "water in each beaker / g", bare: "water in each beaker", value: waterGrams },
  );
  const constant = pair(7, "K_f (water) / K kg mol⁻¹", shown(1.86, "0.00"));
  return { name, molar, particles, water, constant };
}

/** The thermometer in beaker 3: below, back up, and flat. */
function coolingCurve(kit: Kit, sheet: CorpusSheet, pointC: number): void {
  const shape = [6.2, 3.4, 1.1, pointC - 0.6, pointC - 1.2, pointC + 0.1, pointC, pointC];
  const lines = shape.map((celsius, index) => [index, shown(Number(celsius.toFixed(1)), "0.0")]);
  put(sheet, 14, 3, "Cooling curve, beaker 3");
  const heads = sideTable(sheet, [15, 3], ["t / min", "θ / °C"], lines);
  temperatures(kit, heads[1]!, under(heads[1]!, shape.length));
}

/** Six beakers of one solute: constants at the left, the series at the right. */
function sixBeakers(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Series");
  put(sheet, 0, 0, "Y12 practical 7: the more dissolved, the colder it freezes");
  const given = seriesOf(kit);
  const { solute, waterGrams, steps } = given;
  const { name, molar, particles, water, constant } = constants(kit, sheet, given);
  const heads = putRow(sheet, 3, 3, HEADS);
  const reads = steps.map((grams) => freezesAt(["water", solute.en], [waterGrams, grams]));
  const lines = steps.map((grams, index) => {
    put(sheet, 4 + index, 9, shown(reads[index]!, "0.0"));
    return putRow(sheet, 4 + index, 3, [index + 1, shown(grams, "0.0")]);
  });
  const [grams, moles, molality, depression] = [4, 5, 6, 7].map(inColumn);
  const column = (at: number, format: string, formula: (row: number) => string, read: Spot[]) =>
    worked(kit, sheet, heads[at]!, ROWS, { formula, format, fixed: read });
  const n = column(2, "0.0000", (row) => `${grams!(row)}/${fixed(molar)}`, [molar]);
  const perKg = (row: number) => `${moles!(row)}/${fixed(water)}*1000`;
  column(3, "0.000", perKg, [water]);
  const law = (row: number) => `${fixed(particles)}*${fixed(constant)}*${molality!(row)}`;
  const drops = column(4, "0.00", law, [particles, constant]);
  const points = column(5, "0.00", (row) => `0-${depression!(row)}`, []);
  temperatures(kit, heads[6]!, under(heads[6]!, steps.length));
  const gap = nearness(
    kit,
    steps.map((each) => [solute, each, waterGrams]),
  );
  const text = `Ideal dilute solution assumed; over this range the error is at most ${gap} K.`;
  const proviso = put(sheet, 11, 0, text);
  columnOf(lines, 1).forEach((mass, index) => {
    const answers = { depression: drops[index]!, freezingPoint: points[index]! };
    const shared = { name, molar, particles, water, constant, proviso };
    markSample(kit, { ...shared, ...answers, grams: mass, moles: n[index]! });
  });
  coolingCurve(kit, sheet, reads[2]!);
  note(kit, sheet, 12, 0, "Plot ΔT against b. What does the gradient tell you?");
  put(sheet, 14, 0, "Slope of the last pair / K kg mol⁻¹");
  const slope = `=(${a1(drops[5]!)}-${a1(drops[4]!)})/(${molality!(9)}-${molality!(8)})`;
  put(sheet, 14, 1, shown(slope, "0.00"));
}

/** A sixth-form practical. */
export const sixBeakerSheets: readonly Layout[] = [
  { name: "sixth-form practical, one solute in six steps", language: "en", build: sixBeakers },
];
