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
import { freezesAt } from "../layouts/parts";
import { input } from "../page";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { down, readings } from "./own";

const ROWS = [
  ...["Gelöster Stoff", "Einwaage m in g", "Molare Masse M in g/mol", "Stoffmenge n in mol"],
  ...["Teilchen je Formeleinheit i", "Teilchenmenge n mal i in mol"],
];

interface Column {
  readonly name: Spot;
  readonly mass: Spot;
  readonly molar: Spot;
  readonly counted: Spot;
  readonly particles: Spot;
  readonly moles: Spot;
}

/** One substance down its column. */
function substance(sheet: CorpusSheet, solute: Dissolved, grams: number, column: number): Column {
  const { de, molarMass, particles: count } = solute;
  const [name, mass, molar] = down(sheet, { row: 5, column }, [
    ...[de, grams, shown(molarMass, "0.00")],
  ]) as [Spot, Spot, Spot];
  const counted = put(sheet, 8, column, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const particles = put(sheet, 9, column, count);
  const moles = put(sheet, 10, column, shown(`=${a1(counted)}*${a1(particles)}`, "0.0000"));
  return { name, mass, molar, counted, particles, moles };
}

/** The three answers under the columns. */
function law(sheet: CorpusSheet, columns: readonly Column[], water: Spot, constant: Spot) {
  const all = columns.map(({ moles }) => moles);
  const line = (row: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row, 0, [label, shown(formula, format)])[1]!;
  const perKilo = `=SUM(${span(all)})/(${a1(water)}/1000)`;
  const molality = line(12, "Teilchen je kg Wasser in mol/kg", perKilo, "0.000");
  const drop = `=${fixed(constant)}*${a1(molality)}`;
  const depression = line(13, "Gefrierpunktserniedrigung in K", drop, "0.00");
  const freezingPoint = line(14, "Gefrierpunkt in °C", `=-${a1(depression)}`, "0.00");
  return { depression, freezingPoint };
}

/** The display of the test bench, every ten minutes. */
function bench(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 4, 6, ["Minute", "Verdampfer in °C", "Kühlraum in °C"]);
  down(sheet, { row: 5, column: 6 }, [0, 10, 20, 30, 40, 50]);
  readings(kit, sheet, heads[1]!, [6, -14, -10]);
  readings(kit, sheet, heads[2]!, [6, -5, -1]);
}

/** A vocational class of refrigeration fitters: a bath of three substances. */
function kaelte(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Solebad");
  put(sheet, 0, 0, "Kälteanlagenbau, 2. Lehrjahr: Was macht das Solebad frostsicher?");
  const waterGrams = random.pick([1000, 1500, 2000]);
  const bare = "Wasser im Bad";
  const words = { label: `${bare} in g`, bare, value: waterGrams };
  const water = input(kit, sheet, { row: 2, column: 0 }, words);
  const kf = ["Kryoskopische Konstante Kf in K·kg/mol", shown(1.86, "0.00")];
  const constant = putRow(sheet, 3, 0, kf)[1]!;
  down(sheet, { row: 5, column: 0 }, ROWS);
  const solutes = choose(random, 3, dissolved);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  const columns = solutes.map((each, index) => substance(sheet, each, grams[index]!, 1 + index));
  const { depression, freezingPoint } = law(sheet, columns, water, constant);
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const text = `Ideal gerechnet, für dünne Lösungen; hier auf ${gap} K genau.`;
  const proviso = put(sheet, 17, 0, text);
  const list = (of: (column: Column) => Spot): Spot[] => columns.map(of);
  marked.solutions.push({
    ...{ names: list(({ name }) => name), grams: list(({ mass }) => mass) },
    ...{ molarMasses: list(({ molar }) => molar), particles: list((each) => each.particles) },
    ...{ moles: list(({ moles }) => moles), counted: list(({ counted }) => counted) },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
  ([list(({ counted }) => counted), list(({ moles }) => moles)] as const).forEach((spots, at) =>
    marked.formulaColumns.push({
      ...{ spots, heading: { sheet: sheet.name, row: 8 + 2 * at, column: 0 }, fixed: [] },
    }),
  );
  const real = freezesAt(["Wasser", ...solutes.map(({ de }) => de)], [waterGrams, ...grams]);
  putRow(sheet, 15, 0, ["Gemessen am Fühler in °C", shown(real, "0.0")]);
  bench(kit, sheet);
  note(kit, sheet, 19, 0, "Sicherheit: Brille auf, Sole nicht in den Ausguss.");
}

export const kaelteklassen: readonly Layout[] = [
  { name: "Kälteanlagenbau, Solebad mit drei Stoffen", language: "de", build: kaelte },
];
