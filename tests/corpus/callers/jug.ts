import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { trueValue } from "../marks";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { desk, down, linesOn, tellBehind } from "./desk";

interface Jug {
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

/** Half as much of each as alone. */
function filled({ random }: Kit): Jug {
  const solutes = choose(random, 4);
  const waterGrams = random.pick([500, 800, 1000]);
  const grams = solutes.map((each) => Math.ceil(gramsOf(random, each, waterGrams) / 2));
  return { solutes, grams, waterGrams };
}

/** What is dissolved, a line each; gives the cells. */
function dissolving(kit: Kit, sheet: CorpusSheet, { solutes, grams }: Jug) {
  const heads = putRow(sheet, 2, 0, ["i", "Substance", "M in g/mol", "m in g", "i·m/M in mol"]);
  const rows = solutes.map((each, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[each.particles, each.en, shown(each.molarMass, "0.00"), grams[index]],
    ]),
  );
  const [particles, names, molarMasses, masses] = [0, 1, 2, 3].map((at) => columnOf(rows, at)) as [
    ...[Spot[], Spot[], Spot[], Spot[]],
  ];
  const moles = down(kit, sheet, masses, {
    ...{ heading: heads[4]!, format: "0.0000" },
    formula: (cell, at) => `=${cell}/${a1(molarMasses[at]!)}*${a1(particles[at]!)}`,
  });
  const row = 3 + rows.length;
  put(sheet, row, 1, "together");
  const sum = sumOf(kit, sheet, { row, column: 4 }, moles, "0.0000");
  return { sum, cells: { names, grams: masses, molarMasses, particles, moles } };
}

/** What a thermometer would read, the true depression to a tenth. */
function reading({ solutes, grams, waterGrams }: Jug): number {
  const names = ["water", ...solutes.map(({ en }) => en)];
  const value = trueValue({ names, grams: [waterGrams, ...grams] }, "freezing point", null);
  return Number((value ?? 0).toFixed(1));
}

/** From the particles to the freezing point, right of them. */
function law(sheet: CorpusSheet, given: Jug, sum: Spot) {
  const line = (row: number, label: string, content: string | number, format = "0"): Spot =>
    putRow(sheet, row, 6, [label, shown(content, format)])[1]!;
  const water = line(2, "Water in the jug (g)", given.waterGrams);
  const kilograms = line(3, "the same in kg", `=${a1(water)}/1000`, "0.000");
  const constant = line(4, "Cryoscopic constant (K·kg/mol)", 1.86, "0.00");
  const perKg = `=${a1(sum)}/${a1(kilograms)}`;
  const molality = line(5, "Particles (mol per kg of water)", perKg, "0.000");
  const fall = `=${a1(constant)}*${a1(molality)}`;
  const depression = line(6, "ΔT by the ideal law (K)", fall, "0.00");
  const freezingPoint = line(7, "Freezes at, by the law (°C)", `=-1*${a1(depression)}`, "0.00");
  line(8, "Thermometer in the slush (°C)", reading(given), "0.0");
  return { water, constant, depression, freezingPoint };
}

/** Four things in one jug, the law at the right of them. */
function jug(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Jug");
  put(sheet, 0, 0, "Chemistry in the kitchen, part 3: one jug, four things in it");
  const given = filled(kit);
  const { sum, cells } = dissolving(kit, sheet, given);
  const answers = law(sheet, given, sum);
  const gap = tolerated(idealGap(given.solutes, given.grams, given.waterGrams));
  const proviso = put(sheet, 9, 6, `We accept the law here to within ${gap} K.`);
  const { water } = answers;
  marked.inputs.push({ label: { ...water, column: 6 }, value: water, bare: "Water in the jug" });
  marked.solutions.push({ ...cells, ...answers, proviso });
  note(kit, sheet, 9, 0, "Not for tasting: pour the jug away and rinse it.");
}

const SAID: readonly Said[] = [
  { label: "onset of freezing (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "water, from all ingredients (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "sugars per 100 g water (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  { label: "sugars, mass fraction (%)", states: "sugar share", as: "typed" },
  {
    label: "fraction of the water frozen at −10 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -10 },
  },
];

/** The ice that the group makes afterwards, for a kilogram. */
function afterwards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ice afterwards");
  const made = called(perKilogram(kit.make(1)[0]!), { sugar: "granulated sugar" });
  put(sheet, 0, 0, `${made.title} for the group, one kilogram`);
  const list = desk(kit, sheet, made, {
    ...{ row: 2, column: 0 },
    heads: ["mass (g)", "substance as bought", "mass fraction (%)"],
    cells: (index) => [made.grams[index], made.names[index]],
    ...{ name: 1, amount: 0, sum: "mixture" },
  });
  const { heads, amounts, total, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, end, format: "0.0", fixed: [total] },
    formula: (cell) => `=100*${cell}/${fixed(total)}`,
  });
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" });
  const next = say(sheet, recipe, { row: 2, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "texture wanted" });
  tellBehind(sheet, recipe, { row: end + 2, column: 0 }, "Allergens in it:");
}

function lesson(kit: Kit): void {
  jug(kit);
  afterwards(kit);
}

/** Sheets of a chemistry teacher. */
export const jugs: readonly Layout[] = [
  { name: "one jug, four things in it", language: "en", build: lesson },
];
