import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { input } from "../page";

const ROWS = [
  ...["solute", "mass of solute / g", "mass of water / g", "molar mass / g mol⁻¹"],
  ...["particles per formula unit", "moles of solute / mol", "molality / mol kg⁻¹"],
  ...[
    "ΔT, calculated / K",
    "freezing temperature, calculated / °C",
    "freezing temperature, read / °C",
  ],
];

const TOP = 5;

/** One tube down its column, from what was weighed to what was read. */
function tube(sheet: CorpusSheet, column: number, constant: Spot, given: Problem): Spot[] {
  const { solute, grams, waterGrams } = given;
  const at = (step: number, content: string | number, format?: string): Spot =>
    put(sheet, TOP + step, column, format === undefined ? content : shown(content, format));
  const [name, mass, water] = [at(1, solute.en), at(2, grams), at(3, waterGrams)];
  const [molar, particles] = [at(4, solute.molarMass, "0.00"), at(5, solute.particles)];
  const moles = at(6, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = at(7, `=1000*${a1(moles)}/${a1(water)}`, "0.000");
  const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
  const depression = at(8, law, "0.00");
  const point = at(9, `=0-${a1(depression)}`, "0.00");
  const read = at(10, freezesAt(["water", solute.en], [waterGrams, grams]), "0.0");
  return [name, mass, water, molar, particles, moles, molality, depression, point, read];
}

/** Five tubes beside each other. */
function tubes(kit: Kit, sheet: CorpusSheet): void {
  const { marked } = kit;
  const words = { label: "Kf of water / K kg mol⁻¹", bare: "Kf of water" };
  const place = { row: 2, column: 0 };
  const constant = input(kit, sheet, place, { ...words, value: 1.86, format: "0.00" });
  const { list, tolerance } = problems(kit, 5);
  putRow(sheet, TOP, 0, ["Tube", ...list.map((_, index) => `T${index + 1}`)]);
  const labels = ROWS.map((label, index) => put(sheet, TOP + 1 + index, 0, label));
  const text = `We treat every tube as an ideal solution; the readings differ by ${tolerance} K at most.`;
  const proviso = put(sheet, TOP + 12, 0, text);
  const columns = list.map((given, index) => tube(sheet, 1 + index, constant, given));
  for (const cells of columns) {
    const [name, mass, water, molar, particles, moles, , depression, freezingPoint] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles!], water: water!, constant, depression: depression! },
      ...{ freezingPoint: freezingPoint!, proviso },
    });
  }
  [5, 6, 7, 8].forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(columns, at), heading: labels[at]! },
      fixed: at === 7 ? [constant] : [],
    }),
  );
  const spots = columnOf(columns, 9);
  marked.numberColumns.push({ spots, heading: labels[9]!, total: null, kind: "temperature" });
}

/** How strong a syrup is, said in two ways. */
function strengths({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Starter");
  put(sheet, 0, 0, "Starter: two ways to say how strong a syrup is");
  const heads = putRow(sheet, 2, 0, [
    ...["Syrup", "g sucrose", "g water", "g sucrose per 100 g solution (%)"],
    "g sucrose per 100 g water",
  ]);
  const rows = ["A", "B", "C", "D", "E"].map((name, index) => {
    const weighed = [name, 15 * (index + 1) + random.whole(5, 12), 10 * random.whole(8, 14)];
    const [, sugar, water] = putRow(sheet, 3 + index, 0, weighed) as [Spot, Spot, Spot];
    const mass = `(${a1(sugar)}+${a1(water)})`;
    const share = put(sheet, 3 + index, 3, shown(`=${a1(sugar)}/${mass}*100`, "0.0"));
    const over = `=${a1(sugar)}/${a1(water)}*100`;
    const perWater = put(sheet, 3 + index, 4, shown(over, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** A chemistry practical, the tubes in columns. */
function sixthForm(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Practical");
  put(sheet, 0, 0, "Sixth form chemistry: why does sorbet stay soft? Results for the class");
  tubes(kit, sheet);
  strengths(kit);
  note(kit, sheet, TOP + 13, 0, "Stir until the first crystals show, then read the plateau.");
}

/** A chemistry teacher. */
export const sixthForms: readonly Layout[] = [
  { name: "sixth form practical, tubes in columns", language: "en", build: sixthForm },
];
