import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, problems } from "./parts";

const HINTS = [
  "Hint: grams to moles first.",
  "Watch out: count particles, not molecules.",
  "Per kilogram of water, not of solution!",
  "Compare with the problem before.",
];

/** Worked problems, one a row, with a hint under each; the units in a row of their own. */
function acrossWithHints(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Homework 2");
  put(sheet, 0, 0, "Homework 2: when does it begin to freeze?");
  const [, constant] = putRow(sheet, 1, 0, ["Kf of water", shown(1.86, "0.00"), "K·kg/mol"]);
  const heads = putRow(sheet, 3, 0, [
    ...["Problem", "Solute", "Solute mass", "Water mass", "Molar mass", "Particles i"],
    ...["Molality", "Depression", "Freezing point"],
  ]);
  putRow(sheet, 4, 2, ["g", "g", "g/mol", undefined, "mol/kg", "K", "°C"]);
  const { list, tolerance } = problems(kit, 4);
  const lines = list.map(({ solute, grams, waterGrams }, index) => {
    const row = 5 + 2 * index;
    const [, name, mass, water, molar, particles] = putRow(sheet, row, 0, [
      ...[`${"abcd"[index]})`, solute.en, grams, waterGrams, shown(solute.molarMass, "0.00")],
      solute.particles,
    ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
    const molal = `=${a1(mass)}/${a1(molar)}/(${a1(water)}/1000)`;
    const molality = put(sheet, row, 6, shown(molal, "0.000"));
    const law = `=${a1(particles)}*${fixed(constant!)}*${a1(molality)}`;
    const depression = put(sheet, row, 7, shown(law, "0.00"));
    const freezingPoint = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
    note(kit, sheet, row + 1, 1, HINTS[index]!);
    return { name, mass, water, molar, particles, molality, depression, freezingPoint };
  });
  const proviso = put(
    sheet,
    14,
    0,
    `Worked by the ideal law, which is within ${tolerance} K here.`,
  );
  for (const { name, mass, molar, particles, molality, ...rest } of lines) {
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [molality], constant: constant!, proviso, ...rest },
    });
  }
  (["molality", "depression", "freezingPoint"] as const).forEach((key, index) => {
    const spots = lines.map((each) => each[key]);
    const reads = key === "depression" ? [constant!] : [];
    marked.formulaColumns.push({ spots, heading: heads[6 + index]!, fixed: reads });
  });
}

const ROWS = [
  ...["Beaker", "Dissolved", "Mass dissolved (g)", "Water (g)", "Molar mass (g/mol)"],
  ...["Particles i", "Molality (mol/kg)", "ΔT by the ideal law (K)", "Freezing point (°C)"],
  "Measured (°C)",
];

/** Several solutions beside each other, and what the class measured. */
function beakers(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Bench");
  put(sheet, 0, 1, "Four beakers in the ice-salt bath");
  const [, constant] = putRow(sheet, 2, 1, ["Kf (K·kg/mol)", shown(1.86, "0.00")]);
  ROWS.forEach((label, index) => put(sheet, 4 + index, 1, label));
  const { list, tolerance } = problems(kit, 4);
  const proviso = put(sheet, 15, 1, `Ideal law: tolerance ${tolerance} K. Thermometer to 0.1 K.`);
  list.forEach(({ solute, grams, waterGrams }, index) => {
    const column = 2 + index;
    const at = (row: number, content: string | number, format?: string): Spot =>
      put(sheet, row, column, format === undefined ? content : shown(content, format));
    at(4, "ABCD"[index]!);
    const [name, mass, water] = [at(5, solute.en), at(6, grams), at(7, waterGrams)];
    const [molar, particles] = [at(8, solute.molarMass, "0.00"), at(9, solute.particles)];
    const molality = at(10, `=${a1(mass)}/${a1(molar)}/${a1(water)}*1000`, "0.000");
    const law = `=${a1(particles)}*${fixed(constant!)}*${a1(molality)}`;
    const depression = at(11, law, "0.00");
    const freezingPoint = at(12, `=-${a1(depression)}`, "0.00");
    at(13, freezesAt(["water", solute.en], [waterGrams, grams]), "0.0");
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [molality], water, constant: constant!, depression, freezingPoint, proviso },
    });
  });
  note(kit, sheet, 16, 1, "Stir for two minutes before reading.");
}

/** Sheets of a lesson in English. */
export const lessons: readonly Layout[] = [
  { name: "homework across, hints between", language: "en", build: acrossWithHints },
  { name: "four beakers beside each other", language: "en", build: beakers },
];
