import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import type { Problem } from "../layouts/parts";
import { input } from "../page";
import { dissolved, idealGap, tolerated, type Dissolved } from "../solution";
import { asFormulas, asTemperatures, readOff, rowsAt, withComma } from "./words";

const HEADS = [
  ...["Glas", "m(Stoff) [g]", "n [mmol]", "b [mol/kg]", "Δϑ gerechnet [K]"],
  ...["ϑ gerechnet [°C]", "ϑ abgelesen [°C]", "Unterschied [K]"],
];

interface Series {
  readonly name: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly water: Spot;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** What all glasses of the series share, at the right of the table. */
function shared(kit: Kit, sheet: CorpusSheet, solute: Dissolved, waterGrams: number) {
  const at = (row: number) => ({ row, column: 9 });
  const given = (row: number, label: string, bare: string, value: number, format?: string) =>
    input(kit, sheet, at(row), { label, bare, value, ...(format !== undefined && { format }) });
  put(sheet, 3, 9, "Für alle Gläser gleich");
  const name = putRow(sheet, 4, 9, ["Stoff", solute.de])[1]!;
  const molar = putRow(sheet, 5, 9, ["M [g/mol]", shown(solute.molarMass, "0.00")])[1]!;
  const particles = putRow(sheet, 6, 9, ["Teilchen je Formeleinheit", solute.particles])[1]!;
  const water = given(7, "Wasser je Glas [g]", "Wasser je Glas", waterGrams);
  const constant = given(8, "Kf Wasser [K·kg/mol]", "Kf Wasser", 1.86, "0.00");
  return { name, molar, particles, water, constant };
}

/** One glass of the series: its formulas, the reading and what lies between. */
function glass(kit: Kit, sheet: CorpusSheet, problem: Problem, row: number, of: Series): Spot[] {
  const { name, molar, particles, water, constant, proviso } = of;
  const [, mass] = putRow(sheet, row, 0, [row - 3, problem.grams]) as [Spot, Spot];
  const at = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const moles = at(2, `1000*${a1(mass)}/${fixed(molar)}`, "0.0");
  const molality = at(3, `${a1(moles)}/${fixed(water)}`, "0.000");
  const law = `${fixed(constant)}*${fixed(particles)}*${a1(molality)}`;
  const depression = at(4, law, "0.00");
  const freezingPoint = at(5, `-${a1(depression)}`, "0.00");
  const read = put(sheet, row, 6, readOff(problem));
  const between = at(7, `${a1(read)}-${a1(freezingPoint)}`, "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, molality, depression, freezingPoint, read, between];
}

/** The freezer and the thermometers before the lesson. */
function check(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 12, 0, "Thermometer vor der Stunde im Eiswasser geprüft");
  const heads = putRow(sheet, 13, 0, ["Nr.", "zeigt [°C]", "Gruppe"]);
  const rows = rowsAt(
    sheet,
    { row: 14, column: 0 },
    ["Fenster", "Tür", "Tafel", "Mitte"].map((group, index) => [
      ...[index + 1, shown(kit.random.whole(-1, 1) / 10, "0.0"), group],
    ]),
  );
  asTemperatures(kit, heads[1]!, columnOf(rows, 1));
}

/** Rising amounts of one substance in the same water. */
function series(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Messreihe");
  put(sheet, 0, 0, "Q1 Grundkurs Chemie: Verdoppelt sich die Erniedrigung mit der Stoffmenge?");
  const solute = random.pick(dissolved);
  const waterGrams = random.pick([500, 1000]);
  const step = Math.max(1, Math.floor((solute.gramsPerKg[1] * waterGrams) / 1000 / 5));
  const list = [1, 2, 3, 4, 5].map((times) => ({ solute, waterGrams, grams: times * step }));
  const heads = putRow(sheet, 3, 0, HEADS);
  const gaps = list.map(({ grams }) => idealGap([solute], [grams], waterGrams));
  const gap = withComma(tolerated(Math.max(...gaps)));
  const words = `Ideal gerechnet; bis Glas 5 trifft das auf ${gap} K genau.`;
  const of = {
    ...shared(kit, sheet, solute, waterGrams),
    proviso: put(sheet, 10, 0, words),
  };
  const rows = list.map((each, index) => glass(kit, sheet, each, 4 + index, of));
  const reads = [[of.molar], [of.water], [of.constant, of.particles], []];
  reads.forEach((cells, index) => {
    asFormulas(kit, heads[2 + index]!, columnOf(rows, index), cells);
  });
  asTemperatures(kit, heads[6]!, columnOf(rows, 4));
  asFormulas(kit, heads[7]!, columnOf(rows, 5));
  check(kit, sheet);
  note(kit, sheet, 19, 0, "Diagramm: b waagrecht, Δϑ senkrecht, Ursprungsgerade einzeichnen.");
}

/** A series of measurements in an upper school. */
export const messreihen: readonly Layout[] = [
  { name: "Grundkurs, Messreihe mit einem Stoff", language: "de", build: series },
];
