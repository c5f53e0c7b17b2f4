import { a1, addSheet, fixed, put, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem, type Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

/** What is known of each beaker and what follows, a line each. */
const lines = (constant: Spot): Lines => ({
  label: { head: "Beaker", unit: "unit", cell: (_, __, index) => "ABCD"[index] },
  name: typed("What is in it", ({ solute }) => solute.en),
  water: typed("Tap water", ({ waterGrams }) => waterGrams, "g"),
  mass: typed("Weighed in", ({ grams }) => grams, "g"),
  molar: typed("One mole weighs", words.molarOf, "g/mol"),
  particles: typed("Particles from each formula unit", words.particlesOf),
  moles: worked("Moles", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  molality: worked(
    "Moles in a kilo of water",
    (at) => `${at("moles")}/${at("water")}*1000`,
    "0.000",
    {
      unit: "mol/kg",
    },
  ),
  depression: worked(
    "So it should freeze lower by",
    (at) => `${fixed(constant)}*${at("molality")}*${at("particles")}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("Expected freezing point", (at) => `-${at("depression")}`, "0.00", {
    unit: "°C",
  }),
  measured: typed("Our thermometer said", (each) => shown(words.reading(each), "0.0"), "°C"),
});

const SLUSH: readonly Said[] = [
  { label: "Slush starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the jug (g)", states: "water", as: "formula", format: "0" },
  { label: "Sugar for every 100 g of water (g)", states: "sugar per 100 g water", as: "typed" },
];

/** Four beakers side by side, then the slush that the class drinks. */
function beakers(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Beakers");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Year 10 science club: four beakers in the freezer");
  const label = { label: "Kf for water (K kg/mol)", bare: "Kf for water", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 0 }, { ...label, format: "0.00" });
  const made = grid(kit, sheet, { row: 4, column: 0, across: true }, lines(constant), list);
  const text = `The sum treats every beaker as ideal; ours agreed with the thermometer to ${tolerance} K.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, () => ({ constant }));
  const row = made.end + 4;
  const mix = words.shortMix(kit, "water", ["Lemonade slush", "Limonadenslush"]);
  put(sheet, row - 1, 0, "Then we drink this one");
  words.ice(kit, sheet, mix, {
    ...{ row, column: 0, heads: ["Goes into the jug", "Grams"], total: "Jug in all" },
    ...{ said: SLUSH, target: "To be", lead: "Contains" },
  });
  note(kit, sheet, row, 3, "Rinse the thermometer between beakers.");
}

/** One solution, its values down the page. */
function example(kit: Kit, problem: Problem, index: number, tolerance: string): void {
  const sheet = addSheet(kit.marked.book, `Example ${index + 1}`);
  put(sheet, 0, 0, `Worked example ${index + 1}`);
  const { solute, waterGrams, grams } = problem;
  const known = words.block(
    sheet,
    { row: 2, column: 0 },
    {
      name: ["Solute", solute.en],
      mass: ["Mass of solute", grams, "g"],
      molar: ["Molar mass", shown(solute.molarMass, "0.00"), "g/mol"],
      particles: ["van 't Hoff factor, i", solute.particles],
      water: ["Mass of water", waterGrams, "g"],
      constant: ["Cryoscopic constant of water, Kf", shown(1.86, "0.00"), "K kg/mol"],
    },
  );
  const { mass, molar, water, particles, constant } = known;
  const line = (row: number, label: string, formula: string, unit: string, format = "0.00") =>
    words.block(sheet, { row, column: 0 }, { it: [label, shown(formula, format), unit] }).it;
  const moles = line(9, "Amount of solute", `=${a1(mass)}/${a1(molar)}`, "mol", "0.0000");
  const molal = `=${a1(moles)}/(${a1(water)}/1000)`;
  const molality = line(10, "Molality", molal, "mol/kg", "0.000");
  const law = `=${a1(particles)}*${a1(constant)}*${a1(molality)}`;
  const depression = line(11, "Depression of freezing point", law, "K");
  const freezingPoint = line(12, "Freezing point", `=0-${a1(depression)}`, "°C");
  const text = `Assumes ideal behaviour, which holds here to within ${tolerance} K.`;
  const proviso = put(sheet, 14, 0, text);
  kit.marked.solutions.push({
    ...{ names: [known.name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

const BATCH: readonly Said[] = [
  { label: "Begins to freeze at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Lower than water by", inCell: "K", states: "depression", as: "typed" },
  { label: "Water in 100 g, all sources", inCell: "g", states: "water", as: "typed", decimals: 1 },
  {
    label: "Part of the water frozen at −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** Three examples, a sheet each, and the ice to which the lecture leads. */
function lecture(kit: Kit): void {
  const { list, tolerance } = problems(kit, 3);
  list.forEach((each, index) => example(kit, each, index, tolerance));
  const sheet = addSheet(kit.marked.book, "Batch");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `For the tasting: ${made.title.toLowerCase()}`);
  words.ice(kit, sheet, made, {
    ...{ row: 2, column: 0, heads: ["Ingredient", "% of the mix"], total: "Sum" },
    perCent: true,
    ...{ said: BATCH, target: "Serve as", lead: "Allergens:" },
  });
  note(kit, sheet, 1, 0, "Compare with the examples: would the law still do for this batch?");
}

/** Sheets of a science club and of a lecturer. */
export const beakerSheets: readonly Layout[] = [
  { name: "science club, four beakers side by side", language: "en", build: beakers },
  { name: "food science lecture, an example on each sheet", language: "en", build: lecture },
];
