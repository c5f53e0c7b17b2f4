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
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { choose, dissolved, gramsOf, idealGap, tolerated } from "../solution";
import { temperatures } from "../strollers/words";
import { mixSheet } from "./secondWeek";
import { fact } from "./words";

const HEADS = [
  ...["Compound", "Weighed in (g)", "M (g/mol)", "n (mol)", "van 't Hoff i", "i × n (mol)"],
];

interface Bath {
  readonly waterGrams: number;
  readonly water: Spot;
  readonly kf: Spot;
}

interface Brew {
  readonly names: readonly string[];
  readonly grams: readonly number[];
}

/** A salt and two sugars, not strong. */
function brewed({ random }: Kit, waterGrams: number) {
  const salts = choose(
    random,
    1,
    dissolved.filter(({ particles }) => particles > 1),
  );
  const sugars = choose(
    random,
    2,
    dissolved.filter(({ particles }) => particles === 1),
  );
  const solutes = [...sugars, ...salts];
  const grams = solutes.map((each) => Math.ceil(gramsOf(random, each, waterGrams) / 2));
  return { solutes, grams };
}

/** The prediction by hand; gives what is really in the beaker and the predicted point. */
function prediction(kit: Kit, sheet: CorpusSheet, { waterGrams, water, kf }: Bath) {
  const { solutes, grams } = brewed(kit, waterGrams);
  const heads = putRow(sheet, 7, 0, HEADS);
  const rows = solutes.map(({ en, molarMass, particles }, index) => {
    const row = 8 + index;
    const [name, mass, molar] = putRow(sheet, row, 0, [en, grams[index], shown(molarMass, "0.00")]);
    const moles = put(sheet, row, 3, shown(`=${a1(mass!)}/${a1(molar!)}`, "0.0000"));
    const count = put(sheet, row, 4, particles);
    const both = put(sheet, row, 5, shown(`=${a1(count)}*${a1(moles)}`, "0.0000"));
    return [name!, mass!, molar!, moles, count, both];
  });
  [3, 5].forEach((at) =>
    kit.marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[at]!, fixed: [] }),
  );
  const line = (row: number, label: string, formula: string, format: string) =>
    fact(sheet, { row, column: 0 }, label, shown(formula, format));
  const sum = `=SUM(${span(columnOf(rows, 5))})`;
  const molality = line(
    12,
    "Molality of particles (mol/kg)",
    `${sum}/(${a1(water)}/1000)`,
    "0.000",
  );
  const depression = line(13, "ΔTf = Kf × molality (K)", `=${fixed(kf)}*${a1(molality)}`, "0.00");
  const freezingPoint = line(14, "Predicted Tf (°C)", `=-${a1(depression)}`, "0.00");
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const words = `Dilute, so the ideal law holds to about ${gap} K here.`;
  const proviso = put(sheet, 15, 0, words);
  const [names, weights, molarMasses, counted, particles, moles] = [0, 1, 2, 3, 4, 5].map((at) =>
    columnOf(rows, at),
  ) as [Spot[], Spot[], Spot[], Spot[], Spot[], Spot[]];
  kit.marked.solutions.push({
    ...{ names, grams: weights, molarMasses, particles, moles, counted, water, constant: kf },
    ...{ depression, freezingPoint, proviso },
  });
  return { brew: { names: solutes.map(({ en }) => en), grams }, freezingPoint };
}

/** What each bench read, and how far from the prediction. */
function benches(kit: Kit, sheet: CorpusSheet, { names, grams }: Brew, bath: Bath, point: Spot) {
  const heads = putRow(sheet, 17, 0, ["Bench", "Plateau read (°C)", "Read − predicted (K)"]);
  const real = freezesAt(["water", ...names], [bath.waterGrams, ...grams]);
  const read = [1, 2, 3, 4, 5, 6].map((bench, index) => {
    const off = kit.random.whole(-1, 1) / 10;
    return putRow(sheet, 18 + index, 0, [bench, shown(Number((real + off).toFixed(1)), "0.0")])[1]!;
  });
  temperatures(kit, heads[1]!, read);
  beside(kit, heads[2]!, read, {
    ...{ sheet, format: "0.00", fixed: [point] },
    content: (spot) => `=${a1(spot)}-${fixed(point)}`,
  });
  const mean = shown(`=AVERAGE(${span(read)})`, "0.00");
  fact(sheet, { row: 24, column: 0 }, "Mean of the section", mean);
}

/** A handout of a teaching lab. */
function labHandout(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Week 1 handout");
  put(sheet, 0, 0, "Food science lab, week 1: predict a freezing point, then measure it");
  note(kit, sheet, 1, 0, "Fill in your own masses before you come; goggles on at the bench.");
  const waterGrams = random.pick([200, 250, 400]);
  const words = { label: "Deionised water (g)", bare: "Deionised water", value: waterGrams };
  const water = input(kit, sheet, { row: 3, column: 0 }, words);
  const constant = shown(1.86, "0.00");
  const kf = fact(sheet, { row: 4, column: 0 }, "Kf, water (K kg/mol)", constant);
  note(kit, sheet, 5, 0, "i counts the particles that one formula unit gives in water.");
  const bath = { waterGrams, water, kf };
  const { brew, freezingPoint } = prediction(kit, sheet, bath);
  benches(kit, sheet, brew, bath, freezingPoint);
  mixSheet(kit);
}

/** A teaching assistant's handout. */
export const labHandouts: readonly Layout[] = [
  { name: "teaching assistant, predict then measure", language: "en", build: labHandout },
];
