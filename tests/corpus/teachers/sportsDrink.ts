import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, sumOf } from "../layouts/parts";
import { input } from "../page";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { temperatures } from "../strollers/words";
import { sideTable, under } from "./words";

/** A sugar and two salts, as a drink for sport has them. */
function drinkOf({ random }: Kit): Dissolved[] {
  const isSugar = ({ particles }: Dissolved) => particles === 1;
  const sugar = choose(random, 1, dissolved.filter(isSugar));
  return [
    ...sugar,
    ...choose(
      random,
      2,
      dissolved.filter((each) => !isSugar(each)),
    ),
  ];
}

const LABELS = [
  ...["Dissolved in the bottle", "Weighed (g)", "One mole weighs (g)", "Each unit gives"],
  ...["Moles", "Moles of particles", "Its part of the effect (%)"],
];

/** The substances across, the quantities down, all of them together at the right end. */
function table(kit: Kit, sheet: CorpusSheet, solutes: readonly Dissolved[], grams: number[]) {
  LABELS.forEach((label, index) => put(sheet, 6 + index, 0, label));
  const across = (row: number, contents: readonly Parameters<typeof put>[3][]) =>
    putRow(sheet, row, 1, contents);
  const names = across(
    6,
    solutes.map(({ en }) => en),
  );
  put(sheet, 6, 4, "together");
  const masses = across(7, grams);
  const molars = across(
    8,
    solutes.map(({ molarMass }) => shown(molarMass, "0.00")),
  );
  const particles = across(
    9,
    solutes.map((each) => each.particles),
  );
  const counted = masses.map((mass, at) =>
    put(sheet, 10, 1 + at, shown(`=${a1(mass)}/${a1(molars[at]!)}`, "0.0000")),
  );
  const moles = counted.map((spot, at) =>
    put(sheet, 11, 1 + at, shown(`=${a1(spot)}*${a1(particles[at]!)}`, "0.0000")),
  );
  sumOf(kit, sheet, { row: 7, column: 4 }, masses);
  const all = sumOf(kit, sheet, { row: 11, column: 4 }, moles, "0.0000");
  const parts = moles.map((spot, at) =>
    put(sheet, 12, 1 + at, shown(`=100*${a1(spot)}/${fixed(all)}`, "0")),
  );
  sumOf(kit, sheet, { row: 12, column: 4 }, parts, "0");
  return { names, grams: masses, molarMasses: molars, particles, counted, moles, all };
}

/** What three groups read as the bottle froze. */
function bottles(kit: Kit, sheet: CorpusSheet, pointC: number): void {
  const read = (by: number) => shown(Number((pointC + by).toFixed(1)), "0.0");
  const lines = [
    ...[
      ["Ada's", "10:05", read(0.1)],
      ["Ben's", "10:20", read(0)],
      ["Cleo's", "10:35", read(-0.1)],
    ],
    ["Dev's", "10:50", read(0)],
  ];
  const heads = sideTable(sheet, [6, 6], ["Table", "Slush seen", "Reads (°C)"], lines);
  temperatures(kit, heads[2]!, under(heads[2]!, lines.length));
}

/** A sports drink in the freezer: three solutes in one bottle. */
function sportsDrink(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Sports drink");
  put(sheet, 0, 0, "Will the bottle freeze in the ice box? Half-term homework, year 11");
  const solutes = drinkOf(kit);
  const waterGrams = random.pick([500, 750, 1000]);
  const grams = solutes.map((each) =>
    Math.max(1, Math.round(gramsOf(random, each, waterGrams) / 2)),
  );
  const label = { label: "Water in the bottle (g)", bare: "Water in the bottle" };
  const water = input(kit, sheet, { row: 2, column: 0 }, { ...label, value: waterGrams });
  const constant = putRow(sheet, 3, 0, ["Kf for water (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const { all, ...cells } = table(kit, sheet, solutes, grams);
  const law = `=${a1(constant)}*${a1(all)}/(${a1(water)}/1000)`;
  const depression = putRow(sheet, 14, 0, ["So it freezes lower by (K)", shown(law, "0.00")])[1]!;
  const point = shown(`=0-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 15, 0, ["That is, at (°C)", point])[1]!;
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const text = `Counted as if the particles did not notice each other: right to about ${gap} K.`;
  const proviso = put(sheet, 17, 0, text);
  marked.solutions.push({ ...cells, water, constant, depression, freezingPoint, proviso });
  const names = ["water", ...solutes.map(({ en }) => en)];
  bottles(kit, sheet, freezesAt(names, [waterGrams, ...grams]));
  note(kit, sheet, 18, 0, "Leave room in the bottle: ice takes more of it than water.");
}

/** Homework of a year 11. */
export const sportsDrinks: readonly Layout[] = [
  { name: "sports drink homework, substances across", language: "en", build: sportsDrink },
];
