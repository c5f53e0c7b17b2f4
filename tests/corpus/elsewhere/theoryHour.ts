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
import type { Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { ice, shortMix } from "../scholars/words";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

const ROWS = ["On the scale (g)", "One mole is (g)", "Splits into", "Moles of particles"];

/** What is dissolved, a column each; gives the cells by row. */
function columns(
  sheet: CorpusSheet,
  solutes: readonly Dissolved[],
  grams: readonly number[],
): readonly Spot[][] {
  ROWS.forEach((label, index) => put(sheet, 7 + index, 0, label));
  return solutes.map(({ en, molarMass, particles }, index) => {
    const column = 1 + index;
    const typed = [en, grams[index]!, shown(molarMass, "0.00"), particles];
    const spots = typed.map((content, at) => put(sheet, 6 + at, column, content));
    const [, mass, molar, count] = spots.map(a1);
    return [...spots, put(sheet, 10, column, shown(`=${count}*${mass}/${molar}`, "0.0000"))];
  });
}

/** The sum of the lesson: three things in one jug of water. */
function jug(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  const solutes = choose(random, 3, dissolved);
  const waterGrams = random.pick([400, 500, 750]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams / 2));
  const water = given(kit, sheet, [2, 0], ["Water in the jug", "g", waterGrams]);
  const constant = putRow(sheet, 3, 0, ["Kf, water (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  put(sheet, 6, 0, "Stirred in");
  const made = columns(sheet, solutes, grams);
  const row = (at: number) => made.map((spots) => spots[at]!);
  const moles = row(4);
  const line = (at: number, label: string, formula: string): Spot =>
    putRow(sheet, at, 0, [label, shown(formula, "0.00")])[1]!;
  const kilo = line(
    12,
    "Particles for a kilo of water (mol/kg)",
    `=SUM(${span(moles)})/${a1(water)}*1000`,
  );
  const depression = line(13, "Freezing point drops by (K)", `=${fixed(constant)}*${a1(kilo)}`);
  const freezingPoint = line(14, "The jug freezes at (°C)", `=-${a1(depression)}`);
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const text = `Only a rule for thin solutions; for this jug it is good to ${gap} K, for a sorbet it is not.`;
  marked.solutions.push({
    ...{ names: row(0), grams: row(1), molarMasses: row(2), particles: row(3), moles },
    ...{ water, constant, depression, freezingPoint, proviso: put(sheet, 16, 0, text) },
  });
}

const SAID: readonly Said[] = [
  { label: "Freezing begins", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water, the milk's included", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Sugars, of the whole mix", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Ice at −14 °C, of the whole mix", inCell: "%", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** Syrups that wait in bottles, their strength said both ways. */
function bottles(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  putRow(sheet, 2, 6, [
    "Bottle",
    "Sucrose (g)",
    "Water (g)",
    "g per 100 g water",
    "% of the syrup",
  ]);
  ["thin", "middling", "thick"].forEach((bottle, index) => {
    const [sugarGrams, waterGrams] = [random.whole(2, 4) * 50 + 250 * index, 500];
    const [perWater, share] = [waterGrams, waterGrams + sugarGrams].map((under) =>
      Number(((100 * sugarGrams) / under).toFixed(1)),
    );
    const cells = putRow(sheet, 3 + index, 6, [bottle, sugarGrams, waterGrams, perWater, share]);
    const [, sugar, water, strength, part] = cells as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater: strength, share: part });
  });
}

/** An evening at a cookery school: the sum first, then what the machine makes. */
function evening(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Handout 3");
  put(sheet, 0, 0, "Why ice cream never freezes hard – the sum on the board");
  jug(kit, sheet);
  bottles(kit, sheet);
  put(sheet, 18, 0, "And in the machine tonight");
  ice(kit, sheet, shortMix(kit, "milk", ["Plain milk ice", "Milcheis"]), {
    ...{ row: 19, column: 0, heads: ["For six people", "Grams"], total: "fits the bowl" },
    ...{ said: SAID, target: "We want", lead: "Contains", amountFirst: true, saidRight: 4 },
  });
  note(kit, sheet, 8, 6, "Bottles live in the door of the fridge, use within a week.");
}

/** A cookery school that explains what it does. */
export const theoryHour: readonly Layout[] = [
  { name: "cookery school, the sum on the handout", language: "en", build: evening },
];
