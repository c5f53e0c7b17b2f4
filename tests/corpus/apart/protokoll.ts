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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { freezesAt, markRecipe, problems, say, sumOf, type Problem } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import { readings, soberOnes } from "./words";

const VOICE: Voice = {
  lead: "Vor dem Verkosten ansagen: enthält",
  honey: "Honig ist drin, daher nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol ist drin, daher nicht für Kinder, Schwangere oder vor dem Autofahren.",
  nuts: "Ganze Nüsse sind drin, Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb ist drin: Masse auf 71 °C erhitzen, sonst nur pasteurisiertes.",
};

/** A quantity of all samples: its label, its unit, what stands in each sample. */
function quantity(
  sheet: CorpusSheet,
  row: number,
  [label, unit]: readonly [string, string?],
  contents: readonly Content[],
): Spot[] {
  putRow(sheet, row, 0, [label, unit]);
  return putRow(sheet, row, 2, contents);
}

/** A quantity that is worked out, marked as such. */
function worked(
  { marked }: Kit,
  cells: readonly Spot[],
  heading: Spot,
  reads: readonly Spot[] = [],
): readonly Spot[] {
  marked.formulaColumns.push({ spots: cells, heading, fixed: reads });
  return cells;
}

const TOP = 5;

/** What was weighed. */
function weighed(sheet: CorpusSheet, list: readonly Problem[]) {
  quantity(
    sheet,
    TOP,
    ["Probe"],
    list.map((_, index) => `Nr. ${index + 1}`),
  );
  const at = (row: number, words: readonly [string, string?], of: (each: Problem) => Content) =>
    quantity(sheet, TOP + row, words, list.map(of));
  return {
    names: at(1, ["gelöster Stoff"], ({ solute }) => solute.de),
    molar: at(2, ["Molare Masse", "g/mol"], ({ solute }) => shown(solute.molarMass, "0.00")),
    particles: at(3, ["Teilchen je Formeleinheit", "–"], ({ solute }) => solute.particles),
    mass: at(4, ["Einwaage Stoff", "g"], ({ grams }) => grams),
    water: at(5, ["Einwaage Wasser (entmineralisiert)", "g"], ({ waterGrams }) => waterGrams),
  };
}

/** What follows, and what both halves of the group read. */
function protocol(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 4);
  const [, , constant] = putRow(sheet, 3, 0, [
    ...["Kryoskopische Konstante des Wassers", "K·kg/mol", shown(1.86, "0.00")],
  ]) as [Spot, Spot, Spot];
  const { names, molar, particles, mass, water } = weighed(sheet, list);
  const row = (
    step: number,
    words: readonly [string, string],
    of: (index: number) => string,
    format: string,
  ) => {
    const contents = list.map((_, index) => shown(`=${of(index)}`, format));
    return quantity(sheet, TOP + step, words, contents);
  };
  const head = (cells: readonly Spot[]): Spot => ({ ...cells[0]!, column: 0 });
  const moles = row(
    6,
    ["Stoffmenge", "mol"],
    (at) => `${a1(mass[at]!)}/${a1(molar[at]!)}`,
    "0.0000",
  );
  const molal = (at: number) => `${a1(moles[at]!)}*1000/${a1(water[at]!)}`;
  const molality = row(7, ["Molalität", "mol/kg"], molal, "0.000");
  const law = (at: number) => `${fixed(constant)}*${a1(molality[at]!)}*${a1(particles[at]!)}`;
  const depression = row(8, ["Erniedrigung, berechnet", "K"], law, "0.00");
  const point = row(
    9,
    ["Gefrierpunkt, berechnet", "°C"],
    (at) => `-${a1(depression[at]!)}`,
    "0.00",
  );
  worked(kit, moles, head(moles));
  worked(kit, molality, head(molality));
  worked(kit, depression, head(depression), [constant]);
  worked(kit, point, head(point));
  const read = ["Halbgruppe A", "Halbgruppe B"].map((group, index) => {
    const seen = list.map(({ solute, waterGrams, grams }) => {
      const real = freezesAt(["water", solute.en], [waterGrams, grams]);
      const off = index * kit.random.pick([-0.1, 0, 0, 0.1]);
      return shown(Number((real + off).toFixed(1)), "0.0");
    });
    return quantity(sheet, TOP + 11 + index, [`Gefrierpunkt, ${group}`, "°C"], seen);
  });
  read.forEach((cells) => temperatures(kit, head(cells), cells));
  const mean = (at: number) => `AVERAGE(${a1(read[0]![at]!)}:${a1(read[1]![at]!)})`;
  const means = row(13, ["Gefrierpunkt, Mittel", "°C"], mean, "0.00");
  worked(kit, means, head(means));
  const text = `Verdünnt genug für das ideale Gesetz: Rechnung und Mittel weichen höchstens ${tolerance} K voneinander ab.`;
  const proviso = put(sheet, TOP + 15, 0, text);
  names.forEach((name, at) => {
    kit.marked.solutions.push({
      ...{ names: [name], grams: [mass[at]!], molarMasses: [molar[at]!], proviso, constant },
      ...{ particles: [particles[at]!], moles: [moles[at]!], water: water[at]! },
      ...{ depression: depression[at]!, freezingPoint: point[at]! },
    });
  });
}

/** The mix that the course freezes at the end. */
function mix(kit: Kit, sheet: CorpusSheet): void {
  const made = called(largestFirst(soberOnes(kit, 1)[0]!), {
    ...{ Zucker: "Haushaltszucker", Wasser: "Trinkwasser", Heidelbeeren: "Blaubeeren" },
    ...{ "Dextrose-Monohydrat": "Traubenzucker (Monohydrat)", Salz: "Speisesalz" },
  });
  put(sheet, 0, 0, `Anwendung: ${made.title}, im Eis-Salz-Bad gerührt`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Komponente", "Massenanteil in %"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
    },
  );
  put(sheet, end, 0, "Summe der Anteile");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  const lines = { names, amounts, amountLabel: heads[1]!, total, unit: "%" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 3, column: 3 }, [
    { label: "Gefrierbeginn in °C", states: "freezing point", as: "formula" },
    { label: "Erniedrigung in K", states: "depression", as: "typed" },
    { label: "Wasser in g je 100 g Masse", states: "water", as: "typed", decimals: 1 },
    { label: "gelöst in g je 100 g Masse", states: "dissolved", as: "formula", format: "0.0" },
    {
      ...{ label: "ausgefroren vom Wasser bei −16 °C in %", decimals: 0 },
      ...{ states: "ice of water", as: "typed", temperatureC: -16 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "gewünscht" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  readings(
    kit,
    sheet,
    { row: end + 4, column: 0 },
    {
      heads: ["Rührzeit", "Bad in °C", "Rührwerk"],
      when: ["10 min", "20 min", "30 min", "40 min"],
      tenths: [-148, -117],
      rest: (index) => [index < 3 ? "läuft leicht" : "läuft schwer"],
    },
  );
}

function protokoll(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Protokoll V4");
  put(sheet, 0, 0, "Praktikum Lebensmittelchemie, Versuch 4: Kryoskopie");
  put(sheet, 1, 0, "Gruppe 3, Nachmittag");
  protocol(kit, sheet);
  note(kit, sheet, TOP + 17, 0, "Thermometer vor Nr. 1 im Eiswasser geprüft.");
  mix(kit, addSheet(kit.marked.book, "Anwendung"));
}

/** The record of a laboratory course. */
export const protokolle: readonly Layout[] = [
  {
    name: "Praktikum, Protokoll zur Kryoskopie mit Proben nebeneinander",
    language: "de",
    build: protokoll,
  },
];
