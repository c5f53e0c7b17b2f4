import { a1, fixed, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

const STEPS = ["Stoff", "m (g)", "M (g/mol)", "i", "i · m : M (mol)"];

/** One dissolved substance down its column. */
const substance = (
  sheet: CorpusSheet,
  row: number,
  column: number,
  of: Dissolved,
  grams: number,
) => {
  const [name, mass, molar, particles] = [
    ...[of.de, grams, shown(of.molarMass, "0.00"), of.particles],
  ].map((content, index) => put(sheet, row + index, column, content)) as [Spot, Spot, Spot, Spot];
  const content = `=${a1(particles)}*${a1(mass)}/${a1(molar)}`;
  const moles = put(sheet, row + 4, column, shown(content, "0.0000"));
  return { name, mass, molar, particles, moles };
};

/** The second exercise: a salted sugar water by the law, its substances side by side. */
export function law(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random, marked } = kit;
  put(sheet, top, 1, "2. Drei Stoffe in einem Gefäß mit Wasser");
  const waterGrams = random.pick([400, 500, 750]);
  const solutes = [...dissolved.slice(0, 2), ...choose(random, 1, dissolved.slice(2, 5))];
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  STEPS.forEach((label, index) => put(sheet, top + 1 + index, 1, label));
  const cells = solutes.map((each, at) => substance(sheet, top + 1, 2 + at, each, grams[at]!));
  const [label, water] = putRow(sheet, top + 7, 1, ["Wasser (g)", waterGrams]) as [Spot, Spot];
  const constant = putRow(sheet, top + 8, 1, ["Kf (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const moles = cells.map((each) => each.moles);
  const sum = `=${fixed(constant)}*SUM(${span(moles)})*1000/${fixed(water)}`;
  const depression = putRow(sheet, top + 9, 1, ["ΔT (K)", shown(sum, "0.00")])[1]!;
  const point = shown(`=0-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, top + 10, 1, ["Gefrierpunkt (°C)", point])[1]!;
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const proviso = put(sheet, top + 11, 1, `Ideale Lösung, Fehler unter ${gap} K; 6 Punkte.`);
  marked.inputs.push({ label, value: water, bare: "Wasser" });
  marked.solutions.push({
    ...{ names: cells.map(({ name }) => name), grams: cells.map(({ mass }) => mass), moles },
    molarMasses: cells.map(({ molar }) => molar),
    particles: cells.map(({ particles }) => particles),
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}
