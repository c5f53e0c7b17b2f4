import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";
import { board } from "./board";
import { beside } from "./words";

const HEADS = [
  ...["Bench", "Solute", "Water weighed (g)", "Solute weighed (g)", "Molar mass (g/mol)", "i"],
  ...["Solute (mol)", "Molality (mol/kg)", "ΔT worked out (K)", "Freezing point worked out (°C)"],
  ...["Thermometer (°C)", "Apart by (K)"],
];

/** What a bench weighed and read. */
const weighed = ({ solute, grams, waterGrams }: Problem, bench: number) => [
  ...[bench + 1, solute.en, waterGrams, grams, shown(solute.molarMass, "0.00"), solute.particles],
];

/** The benches' lines worked out from moles to how far the thermometer is off. */
function workedOut(kit: Kit, rows: readonly Spot[][], heads: readonly Spot[], constant: Spot) {
  const sheet = kit.marked.book.sheets[0]!;
  const [water, mass, molar, particles] = [2, 3, 4, 5].map((at) => columnOf(rows, at));
  const column = (
    at: number,
    format: string,
    content: (index: number) => string,
    fixedCells: readonly Spot[] = [],
  ) =>
    beside(kit, heads[at]!, mass!, {
      ...{ sheet, format, fixed: fixedCells },
      content: (_, index) => content(index),
    });
  const moles = column(6, "0.0000", (at) => `=${a1(mass![at]!)}/${a1(molar![at]!)}`);
  const molal = column(7, "0.000", (at) => `=${a1(moles[at]!)}/(${a1(water![at]!)}/1000)`);
  const law = (at: number) => `=${a1(particles![at]!)}*${fixed(constant)}*${a1(molal[at]!)}`;
  const drop = column(8, "0.00", law, [constant]);
  const point = column(9, "0.00", (at) => `=-${a1(drop[at]!)}`);
  return { moles, drop, point };
}

interface Bench {
  readonly rows: readonly (readonly Spot[])[];
  readonly heads: readonly Spot[];
  readonly worked: ReturnType<typeof workedOut>;
}

/** What the thermometers said, and how far apart that is. */
function measured(kit: Kit, list: readonly Problem[], { heads, worked }: Bench): void {
  const sheet = kit.marked.book.sheets[0]!;
  const read = list.map(({ solute, grams, waterGrams }, index) =>
    put(sheet, 6 + index, 10, freezesAt([solute.en, "water"], [grams, waterGrams])),
  );
  const apart = beside(kit, heads[11]!, read, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}-${a1(worked.point[index]!)}`,
  });
  const column = { spots: read, heading: heads[10]!, total: null, kind: "temperature" } as const;
  kit.marked.numberColumns.push(column);
  putRow(sheet, 13, 10, ["On average (K)", shown(`=AVERAGE(${span(apart)})`, "0.00")]);
}

function markBenches(
  { marked }: Kit,
  { rows, worked }: Bench,
  constant: Spot,
  proviso: Spot,
): void {
  const { moles, drop, point } = worked;
  rows.forEach(([, name, water, mass, molar, particles], index) =>
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles[index]!], water: water!, constant, proviso },
      ...{ depression: drop[index]!, freezingPoint: point[index]! },
    }),
  );
}

/** The class's beakers one a row, what was worked out beside what was read. */
function beakers(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lab 3");
  put(sheet, 0, 0, "Lab 3: freezing points, worked out and measured");
  note(kit, sheet, 1, 0, "Depression = i × Kf × molality. Sugars stay whole, salts fall apart.");
  const constant = putRow(sheet, 3, 0, ["Kf for water", shown(1.86, "0.00"), "K·kg/mol"])[1]!;
  const heads = putRow(sheet, 5, 0, HEADS);
  const { list, tolerance } = problems(kit, 6);
  const rows = list.map((each, index) => putRow(sheet, 6 + index, 0, weighed(each, index)));
  const bench = { rows, heads, worked: workedOut(kit, rows, heads, constant) };
  measured(kit, list, bench);
  const words = `The ideal law holds to ${tolerance} K for solutions as thin as these.`;
  markBenches(kit, bench, constant, put(sheet, 13, 0, words));
  board(kit);
}

/** Sheets of a lab afternoon. */
export const labs: readonly Layout[] = [
  { name: "lab 3, worked out and measured", language: "en", build: beakers },
];
