import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, markRecipe, problems, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { LADEN } from "./voices";
import { table } from "./words";

const HEADS = [
  ...["Probe", "Stoff", "Stoff (g)", "Wasser (g)", "Teilchen", "Molare Masse (g/mol)"],
  ...["Stoffmenge (mol)", "Molalität (mol/kg)", "Erniedrigung (K)", "gemessen (°C)"],
];

/** Samples of the class by the ideal law, what was measured in the last column. */
function samples(kit: Kit, sheet: CorpusSheet): void {
  const constant = putRow(sheet, 2, 0, ["Kf Wasser (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 4, 0, HEADS);
  const { list, tolerance } = problems(kit, 5);
  const text = `Gerechnet wie für ideale Lösungen, das stimmt bei diesen Proben auf ${tolerance} K.`;
  const proviso = put(sheet, 11, 0, text);
  const rows = list.map(({ solute, waterGrams, grams }, index) => {
    const row = 5 + index;
    const cells = putRow(sheet, row, 0, [
      ...[`P${index + 1}`, solute.de, grams, waterGrams, solute.particles],
      shown(solute.molarMass, "0.00"),
    ]);
    const [, name, mass, water, particles, molar] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
    const mol = put(sheet, row, 6, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
    const perKilo = `=${a1(mol)}/${a1(water)}*1000`;
    const molality = put(sheet, row, 7, shown(perKilo, "0.000"));
    const law = `=${a1(molality)}*${a1(particles)}*${fixed(constant)}`;
    const depression = put(sheet, row, 8, shown(law, "0.00"));
    const real = freezesAt(["water", solute.en], [waterGrams, grams]);
    const measured = put(sheet, row, 9, shown(real, "0.0"));
    kit.marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [mol], water, constant, depression, freezingPoint: null, proviso },
    });
    return [mol, molality, depression, measured];
  });
  [[], [], [constant]].forEach((reads, at) => {
    const column = { spots: columnOf(rows, at), heading: heads[6 + at]!, fixed: reads };
    kit.marked.formulaColumns.push(column);
  });
  const measured = { spots: columnOf(rows, 3), heading: heads[9]!, total: null };
  kit.marked.numberColumns.push({ ...measured, kind: "temperature" });
}

const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt der Masse (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung gegenüber Wasser (K)", states: "depression", as: "formula" },
  { label: "gelöste Stoffe (g)", states: "dissolved", as: "formula", format: "0" },
  {
    label: "bei −12 °C gefroren (% des Wassers)",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

const GROUPS = [
  ["Gruppe", "Platz", "Aufgabe"],
  [1, "Herd links", "abwiegen"],
  [2, "Herd rechts", "erhitzen"],
  [3, "Maschine", "gefrieren"],
];

/** What the trade class makes after the sums. */
function practice(kit: Kit): void {
  const made = kit.make(1)[0]!;
  const sheet = addSheet(kit.marked.book, "Praxis");
  putRow(sheet, 0, 0, ["Praxis:", made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Rohstoff", "Rezept (g)", "gewogen?"],
      cells: (item, grams) => [item, grams, "☐"],
    },
  );
  put(sheet, end, 0, "Gesamtmasse");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cells = { names, amounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ziel" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 0 }, LADEN);
  note(kit, sheet, last + 1, 0, "Haarnetz und saubere Schürze, sonst keine Praxis.");
  table(sheet, { row: 2, column: 4 }, GROUPS);
}

/** A trade class: samples in salt and sugar water, then the ice. */
function fachklasse(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Proben");
  put(sheet, 0, 0, "Fachkunde Speiseeis, 2. Lehrjahr: fünf Proben im Gefrierschrank");
  samples(kit, sheet);
  note(kit, sheet, 13, 0, "Welche zwei Proben gefrieren fast gleich? Begründen.");
  practice(kit);
}

/** A vocational school. */
export const fachklassen: readonly Layout[] = [
  { name: "Berufsschule, fünf Proben und die Praxis", language: "de", build: fachklasse },
];
