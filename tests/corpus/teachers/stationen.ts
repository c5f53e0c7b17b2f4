import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import { reading } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { inColumn, markSample, under, worked } from "./words";

const TOP = 4;
const LOW = 12;
const PEOPLE = ["Fr. Ahrens", "Hr. Benz", "Fr. Ahrens", "Hr. Benz", "Fr. Cordes"];

/** What is ready at each station, the figures of its substance beside it. */
function bereit(sheet: CorpusSheet, list: readonly Problem[]): Spot[][] {
  putRow(sheet, TOP - 1, 0, ["Station", "Stoff", "Einwaage/g", "Wasser/g", "Aufsicht"]);
  putRow(sheet, TOP - 1, 6, ["molare Masse/(g/mol)", "i"]);
  return list.map(({ solute, grams, waterGrams }, index) => {
    const row = TOP + index;
    const cells = putRow(sheet, row, 0, [`S${index + 1}`, solute.de, grams, waterGrams]);
    put(sheet, row, 4, PEOPLE[index]);
    return [
      ...cells,
      ...putRow(sheet, row, 6, [shown(solute.molarMass, "0.00"), solute.particles]),
    ];
  });
}

const HEADS = [
  ...["Station", "n(Teilchen)/mol", "b(Teilchen)/(mol/kg)", "ΔT/K", "berechnet/°C"],
  ...["abgelesen/°C", "Unterschied/K"],
];

/** What follows from it, below, a line for each station. */
function auswertung(kit: Kit, sheet: CorpusSheet, list: readonly Problem[], constant: Spot) {
  const heads = putRow(sheet, LOW - 1, 0, HEADS);
  const rows = list.map((_, index) => LOW + index);
  const above = (column: number) => (row: number) => inColumn(column)(row - LOW + TOP);
  const [grams, water, molar, count] = [2, 3, 6, 7].map(above);
  const [amount, molal, drop, point, read] = [1, 2, 3, 4, 5].map(inColumn);
  list.forEach((problem, index) => {
    put(sheet, LOW + index, 0, `S${index + 1}`);
    put(sheet, LOW + index, 5, shown(reading(problem), "0.0"));
  });
  temperatures(kit, heads[5]!, under(heads[5]!, rows.length));
  const column = (
    at: number,
    format: string,
    formula: (row: number) => string,
    cells: Spot[] = [],
  ) => worked(kit, sheet, heads[at]!, rows, { formula, format, fixed: cells });
  const moles = column(1, "0.0000", (row) => `${grams!(row)}/${molar!(row)}*${count!(row)}`);
  column(2, "0.000", (row) => `${amount!(row)}/${water!(row)}*1000`);
  const drops = column(3, "0.00", (row) => `${fixed(constant)}*${molal!(row)}`, [constant]);
  const points = column(4, "0.00", (row) => `-${drop!(row)}`);
  column(6, "0.0", (row) => `${read!(row)}-${point!(row)}`);
  return { moles, drops, points };
}

/** Five stations: what is there above, what comes out below. */
function stationen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lernzirkel");
  put(sheet, 0, 0, "Lernzirkel Kältemischung und Lösung, 10c, Raum 214");
  const { list, tolerance } = problems(kit, 5);
  const cells = bereit(sheet, list);
  const constant = putRow(sheet, LOW - 2, 6, ["Kf/(K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const { moles, drops, points } = auswertung(kit, sheet, list, constant);
  put(sheet, LOW + 6, 0, "größte Erniedrigung/K");
  const range = `${a1(drops[0]!)}:${a1(drops.at(-1)!)}`;
  put(sheet, LOW + 6, 3, shown(`=MAX(${range})`, "0.00"));
  const text = `Ideales Gesetz; die wirklichen Lösungen weichen davon um höchstens ${tolerance} K ab.`;
  const proviso = put(sheet, LOW + 8, 0, text);
  cells.forEach(([, name, grams, water, molar, particles], index) => {
    const given = {
      name: name!,
      grams: grams!,
      water: water!,
      molar: molar!,
      particles: particles!,
    };
    const answers = { depression: drops[index]!, freezingPoint: points[index]! };
    markSample(kit, { ...given, ...answers, moles: moles[index]!, constant, proviso });
  });
  note(kit, sheet, LOW + 9, 0, "Wechsel alle 12 Minuten, Thermometer abspülen!");
}

/** A round of learning stations. */
export const stationenSheets: readonly Layout[] = [
  { name: "Lernzirkel mit fünf Stationen", language: "de", build: stationen },
];
