import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { dissolved, idealGap, tolerated } from "../solution";
import { asked, readings } from "./words";

const HEADS = [
  ...["Glas", "Salz im Glas (g)", "Stoffmenge (mol)", "Teilchen (mol)", "Absenkung (K)"],
  ...["gefriert laut Rechnung (°C)", "gefriert laut Thermometer (°C)"],
];

const LETTERS = ["A", "B", "C", "D", "E", "F"];

interface Given {
  readonly solute: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly water: Spot;
  readonly waterGrams: number;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** What is the same for all glasses, over the table. */
function given(kit: Kit, sheet: CorpusSheet): Given {
  const { de, molarMass, particles } = dissolved[1]!;
  const waterGrams = kit.random.pick([250, 400, 500]);
  const line = (row: number, label: string, content: Content): Spot =>
    putRow(sheet, row, 0, [label, content])[1]!;
  const solute = line(2, "Gelöster Stoff", de);
  const molar = line(3, "Molare Masse M (g/mol)", shown(molarMass, "0.00"));
  const count = line(4, "Teilchen je Formeleinheit", particles);
  const water = asked(kit, sheet, [5, 0], ["Wasser je Glas", "g", waterGrams]);
  const constant = line(6, "Kryoskopische Konstante (K·kg/mol)", shown(1.86, "0.00"));
  const proviso = put(sheet, 16, 0, "");
  return { solute, molar, particles: count, water, waterGrams, constant, proviso };
}

/** A glass in its row. */
function glass(kit: Kit, sheet: CorpusSheet, grams: number, at: number, shared: Given) {
  const { solute, molar, particles, water, waterGrams, constant, proviso } = shared;
  const row = 9 + at;
  const [, mass] = putRow(sheet, row, 0, [LETTERS[at], shown(grams, "0.0")]) as [Spot, Spot];
  const formula = (column: number, content: string, format: string): Spot =>
    put(sheet, row, column, shown(content, format));
  const amount = formula(2, `=${a1(mass)}/${fixed(molar)}`, "0.0000");
  const all = formula(3, `=${a1(amount)}*${fixed(particles)}`, "0.0000");
  const law = `=${fixed(constant)}*${a1(all)}/(${fixed(water)}/1000)`;
  const depression = formula(4, law, "0.00");
  const freezingPoint = formula(5, `=0-${a1(depression)}`, "0.00");
  const real = freezesAt(["water", "sodium chloride"], [waterGrams, grams]);
  const seen = put(sheet, row, 6, shown(real, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [solute], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ counted: [amount], moles: [all], water, constant, depression, freezingPoint, proviso },
  });
  const gap = idealGap([dissolved[1]!], [grams], waterGrams);
  return { cells: [amount, all, depression, freezingPoint], seen, gap };
}

/** Salt in steps, worked out and read. */
function salzreihe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Salzreihe");
  put(sheet, 0, 0, "8b, Salz senkt den Gefrierpunkt: sechs Gläser, immer mehr Salz");
  const shared = given(kit, sheet);
  const heads = putRow(sheet, 8, 0, HEADS);
  const step = (shared.waterGrams / 1000) * kit.random.pick([2, 2.4]);
  const rows = LETTERS.map((_, index) =>
    glass(kit, sheet, Math.round(10 * step * (index + 1)) / 10, index, shared),
  );
  const gap = tolerated(Math.max(...rows.map((each) => each.gap))).replace(".", ",");
  const words = `Die Rechnung nimmt eine ideale Lösung an und trifft hier auf ${gap} K genau.`;
  put(sheet, 16, 0, words);
  const cells = rows.map((each) => each.cells);
  const reads = [[shared.molar], [shared.particles], [shared.constant, shared.water], []];
  reads.forEach((read, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(cells, at), heading: heads[2 + at]!, fixed: read },
    }),
  );
  const seen = rows.map((each) => each.seen);
  readings(kit, heads[6]!, seen);
  note(kit, sheet, 18, 0, "Zeichne beide Spalten in ein Diagramm. Wo laufen sie auseinander?");
}

/** Somebody who teaches at a lower secondary school. */
export const salzreihen: readonly Layout[] = [
  { name: "Realschule, Salz in Stufen mit Thermometer", language: "de", build: salzreihe },
];
