import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { asked, readings } from "./words";

const HEADS = [
  ...["Pair", "Solute", "Mass / g", "Molar mass / g mol⁻¹", "Amount / mol", "Molality / mol kg⁻¹"],
  ...["Ions or molecules per unit", "ΔT / K", "Freezing point / °C", "Thermometer / °C"],
  "Difference / K",
];

const PAIRS = ["Ada and Li", "Noor and Tom", "Eve and Sam", "Ruth and Max", "Kit and Joy"];

interface Bench {
  readonly waterGrams: number;
  readonly water: Spot;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** The formulas along a pair's row. */
function worked(sheet: CorpusSheet, cells: readonly Spot[], bench: Bench): Spot[] {
  const [, , mass, molar] = cells as [Spot, Spot, Spot, Spot];
  const { row } = mass;
  const formula = (column: number, content: string, format: string) =>
    put(sheet, row, column, shown(content, format));
  const amount = formula(4, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = formula(5, `=1000*${a1(amount)}/${fixed(bench.water)}`, "0.000");
  const law = `=${fixed(bench.constant)}*${a1(molality)}*${a1({ ...mass, column: 6 })}`;
  const depression = formula(7, law, "0.00");
  const point = formula(8, `=-${a1(depression)}`, "0.00");
  const off = formula(10, `=${a1(point)}-${a1({ ...mass, column: 9 })}`, "0.00");
  return [amount, molality, depression, point, off];
}

/** One pair's row. */
function pairRow(kit: Kit, sheet: CorpusSheet, solute: Dissolved, at: number, bench: Bench) {
  const row = 7 + at;
  const { en, molarMass, particles: count } = solute;
  const grams = gramsOf(kit.random, solute, bench.waterGrams);
  const cells = putRow(sheet, row, 0, [PAIRS[at], en, grams, shown(molarMass, "0.00")]);
  const particles = put(sheet, row, 6, count);
  const seen = freezesAt(["water", en], [bench.waterGrams, grams]);
  const read = put(sheet, row, 9, shown(seen, "0.0"));
  const formulas = worked(sheet, cells, bench);
  const [moles, , depression, freezingPoint] = formulas as [Spot, Spot, Spot, Spot];
  const { water, constant, proviso } = bench;
  kit.marked.solutions.push({
    ...{ names: [cells[1]!], grams: [cells[2]!], molarMasses: [cells[3]!], moles: [moles] },
    ...{ particles: [particles], water, constant, depression, freezingPoint, proviso },
  });
  const gap = idealGap([solute], [grams], bench.waterGrams);
  return { formulas, read, gap };
}

/** What all pairs share, over the table. */
function bench(kit: Kit, sheet: CorpusSheet): Bench {
  const waterGrams = kit.random.pick([150, 200, 300]);
  const water = asked(kit, sheet, [2, 0], ["Water in every beaker", "g", waterGrams]);
  const constant = putRow(sheet, 3, 0, ["Kf of water / K kg mol⁻¹", shown(1.86, "0.00")])[1]!;
  return { waterGrams, water, constant, proviso: put(sheet, 4, 0, "") };
}

/** Five pairs, a solute each, their thermometers at the right. */
function practical(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freezing practical");
  put(sheet, 0, 0, "Sixth form practical 12: colligative properties, results of all pairs");
  const shared = bench(kit, sheet);
  const heads = putRow(sheet, 6, 0, HEADS);
  const rows = choose(kit.random, 5).map((each, index) => pairRow(kit, sheet, each, index, shared));
  const gap = tolerated(Math.max(...rows.map((each) => each.gap)));
  put(sheet, 4, 0, `Treated as ideal solutions, which is right to within ${gap} K here.`);
  const reads: readonly (readonly Spot[])[] = [[], [shared.water], [shared.constant], [], []];
  const formulas = rows.map((each) => each.formulas);
  reads.forEach((cells, at) => {
    const heading = heads[[4, 5, 7, 8, 10][at]!]!;
    kit.marked.formulaColumns.push({ spots: columnOf(formulas, at), heading, fixed: cells });
  });
  readings(
    kit,
    heads[9]!,
    rows.map((each) => each.read),
  );
  note(kit, sheet, 13, 0, "Write two sentences: why do the salts do more than the sugars?");
}

/** Somebody who teaches a sixth form. */
export const slashUnits: readonly Layout[] = [
  { name: "sixth form practical, a pair a row", language: "en", build: practical },
];
