import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { rowsAt } from "./words";

const READ = "Messwerte";

interface Raw {
  readonly group: Spot;
  readonly name: Spot;
  readonly mass: Spot;
  readonly water: Spot;
  readonly readings: readonly Spot[];
}

/** What the groups wrote down, the thermometer read twice. */
function raw(kit: Kit, list: readonly Problem[]): Raw[] {
  const sheet = addSheet(kit.marked.book, READ);
  put(sheet, 0, 0, "Protokoll Kältebad, 2. Stunde, Raum C 12");
  const heads = putRow(sheet, 2, 0, [
    ...["Gruppe", "Schüler", "1. Ablesung (°C)", "2. Ablesung (°C)", undefined],
    ...["gelöster Stoff", "davon (g)", "dest. Wasser (g)"],
  ]);
  const pupils = ["Ayla, Finn", "Ben, Mara", "Jo, Timur", "Kira, Paul", "Lea, Sven"];
  const raws = list.map(({ solute, grams, waterGrams }, index) => {
    const real = freezesAt(["water", solute.en], [waterGrams, grams]);
    const readings = [real, real + kit.random.pick([-0.1, 0, 0.1])].map((degrees) =>
      shown(Number(degrees.toFixed(1)), "0.0"),
    );
    const cells = putRow(sheet, 3 + index, 0, [
      ...[`G${index + 1}`, pupils[index], ...readings, undefined],
      ...[solute.de, grams, waterGrams],
    ]);
    const [group, , one, two, , name, mass, water] = cells as [
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
    ];
    return { group, name, mass, water, readings: [one, two] };
  });
  [0, 1].forEach((at) => {
    const spots = raws.map(({ readings }) => readings[at]!);
    const column = { spots, heading: heads[2 + at]!, total: null };
    kit.marked.numberColumns.push({ ...column, kind: "temperature" });
  });
  rowsAt(sheet, { row: 10, column: 0 }, [
    ["Kältebad", "Eis mit Salz, dreimal nachgefüllt"],
    ["fehlt", "Nils (krank)"],
  ]);
  note(kit, sheet, 13, 0, "Gruppe 3 hat zu kräftig gerührt, Thermometer tauschen.");
  return raws;
}

const HEADS = [
  "Gruppe",
  "M (g/mol)",
  "Teilchen",
  "b (mol/kg)",
  "ΔT (K)",
  "T gefr. (°C)",
  "Mittel gemessen (°C)",
];

/** One group worked out; gives the cells of its formulas. */
function worked(
  kit: Kit,
  sheet: CorpusSheet,
  [each, { solute }]: readonly [Raw, Problem],
  [constant, proviso]: readonly [Spot, Spot],
): Spot[] {
  const { row } = each.group;
  const from = (spot: Spot): string => `${READ}!${a1(spot)}`;
  const [, molar, particles] = putRow(sheet, row, 0, [
    ...[`=${from(each.group)}`, shown(solute.molarMass, "0.00"), solute.particles],
  ]) as [Spot, Spot, Spot];
  const molal = `=${from(each.mass)}/${a1(molar)}/(${from(each.water)}/1000)`;
  const molality = put(sheet, row, 3, shown(molal, "0.000"));
  const law = `=${fixed(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = put(sheet, row, 4, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 5, shown(`=-${a1(depression)}`, "0.00"));
  const [one, two] = each.readings as [Spot, Spot];
  const mean = put(sheet, row, 6, shown(`=AVERAGE(${from(one)}:${a1(two)})`, "0.00"));
  kit.marked.solutions.push({
    ...{ names: [each.name], grams: [each.mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], water: each.water, constant, depression, freezingPoint, proviso },
  });
  return [molality, depression, freezingPoint, mean];
}

/** Readings on one sheet, what follows from them on the next. */
function messwerte(kit: Kit): void {
  const { list, tolerance } = problems(kit, 5);
  const raws = raw(kit, list);
  const sheet = addSheet(kit.marked.book, "Auswertung");
  const constant = putRow(sheet, 0, 0, ["K_f Wasser (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 2, 0, HEADS);
  const text = `Formel gilt für ideale Lösungen; unsere Werte lagen höchstens ${tolerance} K daneben.`;
  const proviso = put(sheet, 9, 0, text);
  const rows = raws.map((each, index) =>
    worked(kit, sheet, [each, list[index]!], [constant, proviso]),
  );
  [[], [constant], [], []].forEach((cells, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: cells },
    }),
  );
  note(kit, sheet, 11, 0, "Bis Donnerstag: Fehlerbetrachtung, eine halbe Seite");
}

/** A chemistry teacher's record. */
export const messwertBlaetter: readonly Layout[] = [
  { name: "Kältebad, Messwerte und Auswertung getrennt", language: "de", build: messwerte },
];
