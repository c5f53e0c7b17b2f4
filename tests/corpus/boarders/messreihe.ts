import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt } from "../layouts/parts";
import { dissolved, idealGap, tolerated, type Dissolved } from "../solution";
import { columnsOf } from "./worte";

interface Series {
  readonly solute: Dissolved;
  readonly grams: readonly number[];
  readonly water: number;
}

/** Rising amounts of one thing in the same water, all of them weak. */
function seriesOf({ random }: Kit): Series {
  const solute = random.pick(dissolved);
  const water = random.pick([400, 500, 750]);
  const most = (solute.gramsPerKg[1] * water) / 1000;
  const grams = [1, 2, 3, 4, 5].map((step) => Math.max(step, Math.round((most * step) / 5)));
  return { solute, grams, water };
}

/** What was weighed and read, a trial a row; gives the cells. */
function measured(kit: Kit, sheet: CorpusSheet, { solute, grams, water }: Series): Spot[][] {
  put(sheet, 0, 0, "Projektarbeit Chemie: Wann gefriert eine Lösung?");
  put(sheet, 1, 0, "1. Messreihe");
  const heads = putRow(sheet, 3, 0, [
    ...["Probe", "gelöster Stoff", "m(Stoff) in g", "m(Wasser) in g", "gemessen in °C"],
    "Bemerkung",
  ]);
  const seen = ["klar", "erste Nadeln am Rand", "milchig", "wie Schnee"];
  const rows = grams.map((mass, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[index + 1, solute.de, mass, water],
      shown(freezesAt(["water", solute.en], [water, mass]), "0.0"),
      kit.random.pick(seen),
    ]),
  );
  const columns = columnsOf(rows, 1, 2, 3, 4);
  const heading = heads[4]!;
  kit.marked.numberColumns.push({ spots: columns[3]!, heading, total: null, kind: "temperature" });
  return columns;
}

interface Row {
  readonly mass: Spot;
  readonly water: Spot;
  readonly read: Spot;
  readonly constant: Spot;
}

/** What one trial should give; gives the cells from the molar mass to the difference. */
function worked(sheet: CorpusSheet, row: number, solute: Dissolved, given: Row): Spot[] {
  const home = put(sheet, row, 0, row - 4);
  const from = (spot: Spot): string => calledFrom(home, spot);
  const molar = put(sheet, row, 1, shown(solute.molarMass, "0.00"));
  const particles = put(sheet, row, 2, solute.particles);
  const moles = put(sheet, row, 3, shown(`=${from(given.mass)}/${a1(molar)}`, "0.0000"));
  const kilos = `(${from(given.water)}/1000)`;
  const molality = put(sheet, row, 4, shown(`=${a1(moles)}/${kilos}`, "0.000"));
  const law = `=${fixed(given.constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = put(sheet, row, 5, shown(law, "0.00"));
  const point = put(sheet, row, 6, shown(`=-${a1(depression)}`, "0.00"));
  const gap = put(sheet, row, 7, shown(`=${from(given.read)}-${a1(point)}`, "0.00"));
  return [molar, particles, moles, molality, depression, point, gap];
}

const HEADS = [
  ...["Probe", "M in g/mol", "Teilchen", "n in mol", "b in mol/kg", "ΔT in K"],
  ...["Gefrierpunkt in °C", "gemessen minus berechnet in K"],
];

/** The calculation on a sheet of its own. */
function calculation(kit: Kit, { solute, grams, water }: Series, columns: readonly Spot[][]): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Rechnung");
  put(sheet, 0, 0, "2. Rechnung zur Messreihe");
  const constant = putRow(sheet, 2, 0, ["Kf (Wasser) in K·kg/mol", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 4, 0, HEADS);
  const gaps = grams.map((mass) => idealGap([solute], [mass], water));
  const words = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Fehlerbetrachtung: Rechnung und Wirklichkeit liegen höchstens ${words} K auseinander.`;
  const proviso = put(sheet, 12, 0, text);
  const [names, masses, waters, readings] = columns as [Spot[], Spot[], Spot[], Spot[]];
  const rows = names.map((name, index) => {
    const given = { mass: masses[index]!, water: waters[index]!, read: readings[index]!, constant };
    const cells = worked(sheet, 5 + index, solute, given) as [Spot, Spot, Spot, ...Spot[]];
    const [molar, particles, counted, moles, depression, freezingPoint] = cells;
    marked.solutions.push({
      ...{ names: [name], grams: [given.mass], water: given.water, constant, proviso },
      ...{ molarMasses: [molar], particles: [particles], moles: [moles!], counted: [counted] },
      ...{ depression: depression!, freezingPoint: freezingPoint! },
    });
    return cells;
  });
  [2, 3, 4, 5, 6].forEach((at) => {
    const reads = at === 4 ? [constant] : [];
    const spots = columnsOf(rows, at)[0]!;
    marked.formulaColumns.push({ spots, heading: heads[1 + at]!, fixed: reads });
  });
}

/** A pupil's trials, and what they should have given. */
function project(kit: Kit): void {
  const series = seriesOf(kit);
  const sheet = addSheet(kit.marked.book, "Messreihe");
  const columns = measured(kit, sheet, series);
  note(kit, sheet, 10, 0, "Thermometer vorher in Eiswasser geprüft, zeigt 0,0 °C.");
  calculation(kit, series, columns);
}

/** A pupil's project. */
export const messreihen: readonly Layout[] = [
  { name: "Schülerin, Projektarbeit mit Messreihe und Rechnung", language: "de", build: project },
];
