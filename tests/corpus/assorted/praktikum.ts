import {
  a1,
  addSheet,
  calledFrom,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { aside, asTemperatures, readings } from "./words";

interface Weighed {
  readonly rows: readonly (readonly Spot[])[];
  readonly water: Spot;
  readonly constant: Spot;
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

/** The first page: what was weighed, and what the tables say. */
function weighed(kit: Kit, sheet: CorpusSheet): Weighed {
  const { random, marked } = kit;
  putRow(sheet, 0, 0, ["Versuch 3.2", "Kryoskopie an einer Modell-Eismasse", "Gruppe", "Do-4"]);
  const solutes = choose(random, 3);
  const waterGrams = random.pick([400, 500, 800]);
  const grams = solutes.map((each) =>
    Math.max(1, Math.round(gramsOf(random, each, waterGrams) / 2)),
  );
  const [label, water] = putRow(sheet, 2, 0, ["Vorlage Wasser / g", waterGrams]) as [Spot, Spot];
  marked.inputs.push({ label, value: water, bare: "Vorlage Wasser" });
  const constant = putRow(sheet, 3, 0, ["Kf(Wasser) / (K kg/mol)", shown(1.86, "0.00")])[1]!;
  putRow(sheet, 5, 0, ["Substanz", "M / (g/mol)", "ν", "m / g", "Charge der Flasche"]);
  const rows = solutes.map((each, index) =>
    putRow(sheet, 6 + index, 0, [
      ...[each.de, shown(each.molarMass, "0.00"), each.particles, grams[index]],
      `${random.pick(["K", "R", "S"])}${random.whole(1000, 9999)}`,
    ]),
  );
  note(kit, sheet, 10, 0, "ν: Zahl der Teilchen, in die eine Formeleinheit zerfällt");
  aside(
    sheet,
    { row: 12, column: 0 },
    ["Gerät", "Inventar-Nr."],
    [
      ...[
        ["Waage", "W-17"],
        ["Kryostat", "KR-2"],
        ["Thermometer", "T-105"],
      ],
    ],
  );
  return { rows, water, constant, solutes, grams, waterGrams };
}

/** The moles on the second page, and the particles counted in a column of their own. */
function counted(kit: Kit, sheet: CorpusSheet, { rows }: Weighed) {
  const heads = putRow(sheet, 5, 0, ["Substanz", "n / mol", "ν · n / mol"]);
  const lines = rows.map(([name, molar, particles, mass], index) => {
    const row = 6 + index;
    const from = { sheet: sheet.name, row, column: 0 };
    const call = (spot: Spot | undefined) => calledFrom(from, spot!);
    put(sheet, row, 0, `=${call(name)}`);
    const moles = put(sheet, row, 1, shown(`=${call(mass)}/${call(molar)}`, "0.0000"));
    const all = put(sheet, row, 2, shown(`=${a1(moles)}*${call(particles)}`, "0.0000"));
    return [moles, all];
  });
  [0, 1].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(lines, at), heading: heads[1 + at]!, fixed: [] },
    }),
  );
  return { moles: columnOf(lines, 0), particles: columnOf(lines, 1) };
}

/** The second page: the sum, and the law over it. */
function evaluated(kit: Kit, sheet: CorpusSheet, given: Weighed): void {
  put(sheet, 0, 0, "Auswertung");
  putRow(sheet, 2, 0, ["Protokoll", "Do-4"]);
  putRow(sheet, 3, 0, ["gerechnet mit", "Einwaagen der ersten Seite"]);
  const { rows, water, constant, solutes, grams, waterGrams } = given;
  const { moles, particles } = counted(kit, sheet, given);
  put(sheet, 9, 0, "Summe Teilchen / mol");
  const sum = put(sheet, 9, 2, shown(`=SUM(${span(particles)})`, "0.0000"));
  kit.marked.sums.push({ spot: sum, parts: particles });
  const call = (spot: Spot): string => calledFrom(sum, spot);
  const law = `=${call(constant)}*${a1(sum)}/(${call(water)}/1000)`;
  const depression = putRow(sheet, 11, 0, ["ΔT berechnet / K", shown(law, "0.00")])[1]!;
  const below = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 12, 0, ["Gefrierpunkt berechnet / °C", below])[1]!;
  const real = freezesAt(["water", ...solutes.map(({ en }) => en)], [waterGrams, ...grams]);
  putRow(sheet, 13, 0, ["Gefrierpunkt gemessen / °C", shown(real, "0.0")]);
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const words = `Näherung der ideal verdünnten Lösung, Unsicherheit ${gap} K`;
  const proviso = put(sheet, 15, 0, words);
  kit.marked.solutions.push({
    ...{ names: columnOf(rows, 0), molarMasses: columnOf(rows, 1), particles: columnOf(rows, 2) },
    ...{ grams: columnOf(rows, 3), moles: particles, counted: moles },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}

const SUGARS: readonly (readonly [string, number, number])[] = [
  ["I", 50, 450],
  ["II", 90, 410],
  ["III", 120, 380],
  ["IV", 160, 340],
];

/** The third page: sugar solutions for the refractometer. */
function refractometer(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Vergleichslösungen für das Refraktometer");
  const heads = putRow(sheet, 2, 0, [
    ...["Lösung", "m(Saccharose) / g", "m(Wasser) / g", "Saccharose je 100 g Wasser / g"],
    ...["Massenanteil Saccharose / %", "Gefrierpunkt / °C"],
  ]);
  const rows = SUGARS.map(([word, about, waterGrams], index) => {
    const grams = about + kit.random.whole(-8, 8);
    const [to, part] = [(100 * grams) / waterGrams, (100 * grams) / (grams + waterGrams)];
    const [, sugar, water, perWater, share, point] = putRow(sheet, 3 + index, 0, [
      ...[word, grams, waterGrams, shown(Number(to.toFixed(1)), "0.0")],
      shown(Number(part.toFixed(1)), "0.0"),
      shown(freezesAt(["sucrose", "water"], [grams, waterGrams]), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
    kit.marked.strengths.push({ sugar, water, perWater, share });
    return [point];
  });
  asTemperatures(kit, heads[5]!, columnOf(rows, 0));
  aside(sheet, { row: 9, column: 0 }, ["Zeit / min"], [[0], [2], [4], [6], [8], [10]]);
  const bath = put(sheet, 9, 1, "Bad / °C");
  readings(kit, sheet, bath, { count: 6, from: -13, to: -11 });
}

/** A protocol on three pages. */
function protokoll(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Einwaagen");
  const given = weighed(kit, first);
  evaluated(kit, addSheet(kit.marked.book, "Auswertung"), given);
  refractometer(kit, addSheet(kit.marked.book, "Refraktometer"));
}

/** A practical course for food technologists. */
export const praktika: readonly Layout[] = [
  {
    name: "Praktikum Lebensmitteltechnik, Einwaagen und Auswertung",
    language: "de",
    build: protokoll,
  },
];
