import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { formulas } from "./marking";
import { syrups } from "./syrups";

interface Sample {
  readonly solute: Dissolved;
  readonly grams: number;
  readonly water: number;
}

const samples = ({ random }: Kit, count: number, water?: number): Sample[] =>
  choose(random, count).map((solute) => {
    const waterGrams = water ?? random.pick([200, 250, 400, 500]);
    return { solute, grams: gramsOf(random, solute, waterGrams), water: waterGrams };
  });

/** How near the ideal law comes for all of them. */
const toleranceOf = (list: readonly Sample[]): string =>
  tolerated(Math.max(...list.map((each) => idealGap([each.solute], [each.grams], each.water))));

/** Exercises one below the other, each quantity in a row with its unit. */
function exercises(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Aufgaben");
  put(sheet, 0, 0, "Gefrierpunkt von Lösungen: Übungsaufgaben mit Lösung");
  const row = [1.86, "K·kg/mol"];
  const [, constant] = putRow(sheet, 2, 0, ["Kryoskopische Konstante von Wasser", ...row]);
  const list = samples(kit, 3);
  const bottom = 4 + list.length * 11;
  const gap = toleranceOf(list).replace(".", ",");
  const proviso = put(sheet, bottom, 0, `Rechne ideal; das Ergebnis stimmt auf ±${gap} K.`);
  list.forEach(({ solute, grams, water }, index) => {
    const top = 4 + index * 11;
    put(sheet, top, 0, `Aufgabe ${index + 1}`);
    const at = (step: number, label: string, content: string | number, unit?: string): Spot =>
      putRow(sheet, top + step, 0, [label, content, unit])[1]!;
    const name = at(1, "Gelöster Stoff", solute.de);
    const mass = at(2, "Masse des Stoffs", grams, "g");
    const molar = at(3, "Molare Masse", solute.molarMass, "g/mol");
    const particles = at(4, "Teilchen je Formeleinheit", solute.particles);
    const solvent = at(5, "Masse des Wassers", water, "g");
    const moles = at(6, "Stoffmenge", `=${a1(mass)}/${a1(molar)}`, "mol");
    const molality = at(7, "Molalität", `=${a1(moles)}/(${a1(solvent)}/1000)`, "mol/kg");
    const law = `=${a1(particles)}*${fixed(constant!)}*${a1(molality)}`;
    const depression = at(8, "Gefrierpunktserniedrigung", law, "K");
    const freezingPoint = at(9, "Gefrierpunkt der Lösung", `=-${a1(depression)}`, "°C");
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      // Here the moles have a cell of their own before the molality.
      ...{ moles: [moles], water: solvent, constant: constant!, depression, freezingPoint },
      proviso,
    });
  });
  note(kit, sheet, bottom + 2, 0, "Taschenrechner erlaubt.");
}

/** Solutions side by side, their quantities down the rows, the constant at the foot. */
function sideBySide(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Four beakers");
  const labels = [
    ...["Beaker", "Dissolved", "Mass of solute (g)", "Molar mass (g/mol)"],
    ...["van 't Hoff factor i", "Water (g)", "Molality (mol/kg)"],
    ...["Freezing-point depression (K)", "Freezing point (°C)"],
  ];
  labels.forEach((label, index) => put(sheet, index, 0, label));
  const words = ["Kf of water (K·kg/mol)", shown(1.86, "0.00")];
  const [, constant] = putRow(sheet, 11, 0, words) as [Spot, Spot];
  const list = samples(kit, 4);
  const gap = toleranceOf(list);
  const proviso = put(sheet, 12, 0, `Ideal solutions assumed, tolerance ${gap} K.`);
  list.forEach(({ solute, grams, water }, index) => {
    const column = index + 1;
    put(sheet, 0, column, "ABCD"[index]);
    const down = [solute.en, grams, shown(solute.molarMass, "0.00"), solute.particles, water];
    const spots = down.map((content, step) => put(sheet, step + 1, column, content));
    const [name, mass, molar, particles, solvent] = spots as [Spot, Spot, Spot, Spot, Spot];
    const perKilo = `=${a1(mass)}/${a1(molar)}/(${a1(solvent)}/1000)`;
    const molality = put(sheet, 6, column, shown(perKilo, "0.000"));
    const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
    const depression = put(sheet, 7, column, shown(law, "0.00"));
    const freezingPoint = put(sheet, 8, column, shown(`=-${a1(depression)}`, "0.00"));
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [molality], water: solvent, constant, depression, freezingPoint, proviso },
    });
  });
  note(kit, sheet, 14, 0, "Rinse the thermometer between beakers.");
}

/** A laboratory sheet for 100 g of water, then syrups. */
function perHundredWater(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Lab");
  const label = { label: "Water in every flask (g)", bare: "Water in every flask", value: 100 };
  const water = input(kit, sheet, { row: 0, column: 0 }, label);
  const [, constant] = putRow(sheet, 1, 0, ["Kf (K kg/mol)", shown(1.86, "0.00")]) as [Spot, Spot];
  const heads = putRow(sheet, 3, 0, [
    ...["Solute", "M (g/mol)", "i", "Weighed in (g)", "n (mol)", "Depression (K)"],
    "Freezing point (°C)",
  ]);
  const list = samples(kit, 5, 100);
  const lines = list.map(({ solute, grams }, index) => {
    const first = [solute.en, shown(solute.molarMass, "0.00"), solute.particles, grams];
    return putRow(sheet, 4 + index, 0, first) as [Spot, Spot, Spot, Spot];
  });
  const amounts = lines.map(([, molar, , mass]) => shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const moles = formulas(kit, heads[4]!, amounts, { sheet, at: [4, 4] });
  const laws = lines.map(([, , particles], index) => {
    const count = `${a1(particles)}*${a1(moles[index]!)}`;
    return shown(`=${count}*${fixed(constant)}/(${fixed(water)}/1000)`, "0.00");
  });
  const fixedCells = { sheet, at: [4, 5], fixed: [constant, water] } as const;
  const depressions = formulas(kit, heads[5]!, laws, fixedCells);
  const points = depressions.map((spot) => shown(`=-${a1(spot)}`, "0.00"));
  const freezing = formulas(kit, heads[6]!, points, { sheet, at: [4, 6] });
  const proviso = put(sheet, 10, 0, `Ideal law; good to ${toleranceOf(list)} K.`);
  lines.forEach(([name, molar, particles, mass], index) =>
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [moles[index]!], water, constant, depression: depressions[index]! },
      ...{ freezingPoint: freezing[index]!, proviso },
    }),
  );
  syrups(kit, sheet, 12);
  note(kit, sheet, 18, 0, "Balance reads to 0.01 g.");
}

/** Solutions in a laboratory and in a class. */
export const lab: readonly Layout[] = [
  { name: "Übungsaufgaben untereinander", language: "de", build: exercises },
  { name: "four beakers side by side", language: "en", build: sideBySide },
  { name: "lab sheet for 100 g of water", language: "en", build: perHundredWater },
];
