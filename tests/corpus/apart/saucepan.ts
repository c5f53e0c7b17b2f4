import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { hundredth, rowsOf, soberOnes, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "Tell the class: contains",
  honey: "Honey is not for babies in their first year (under 12 months).",
  alcohol: "Alcohol in it: not for children, nor in pregnancy, nor before driving.",
  nuts: "Whole nuts can choke children under 5.",
  egg: "Raw egg yolk: take the mix to 71 °C or use pasteurised.",
};

interface Stirred {
  readonly name: Spot;
  readonly mass: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly count: Spot;
}

/** Step 2: everything that is stirred in, a row each, with the particles it brings. */
function stirIn(
  sheet: CorpusSheet,
  row: number,
  solutes: readonly Dissolved[],
  grams: readonly number[],
) {
  const heads = putRow(sheet, row, 1, [
    ...["Stirred in", "g", "g for one mole", "pieces it falls into", "moles of pieces"],
  ]);
  const list = solutes.map((each, index): Stirred => {
    const at = row + 1 + index;
    const cells = [each.en, grams[index], shown(each.molarMass, "0.00"), each.particles];
    const [name, mass, molar, particles] = putRow(sheet, at, 1, cells) as [Spot, Spot, Spot, Spot];
    const formula = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
    return { name, mass, molar, particles, count: put(sheet, at, 5, shown(formula, "0.0000")) };
  });
  return { heading: heads[4]!, list };
}

/** The law, one step a row, its reason beside it. */
function steps(kit: Kit, sheet: CorpusSheet): number {
  const { random, marked } = kit;
  const solutes = choose(random, 3, dissolved);
  const waterGrams = random.pick([400, 500, 750, 1000]);
  const grams = solutes.map((each) =>
    Math.max(1, Math.round(gramsOf(random, each, waterGrams) / 2)),
  );
  const [label, water] = putRow(sheet, 2, 1, ["Step 1. Water in the saucepan (g)", waterGrams]);
  marked.inputs.push({ label: label!, value: water!, bare: "Step 1. Water in the saucepan" });
  put(sheet, 3, 1, "Step 2. Stir in, off the heat, until it is clear");
  const { heading, list } = stirIn(sheet, 4, solutes, grams);
  const counts = list.map(({ count }) => count);
  marked.formulaColumns.push({ spots: counts, heading, fixed: [] });
  put(sheet, 8, 4, "all pieces");
  const all = sumOf(kit, sheet, { row: 8, column: 5 }, counts, "0.0000");
  const molal = `=${a1(all)}/${a1(water!)}*1000`;
  const [molality, constant] = rowsOf(sheet, { row: 10, column: 1 }, [
    ["Step 3. Moles of pieces in 1 kg of water", shown(molal, "0.000"), "mol/kg"],
    ["Step 4. Each of those moles lowers water by", shown(1.86, "0.00"), "K kg/mol"],
  ]) as [Spot, Spot];
  const [depression] = rowsOf(sheet, { row: 12, column: 1 }, [
    ["Step 5. Together they lower it by", shown(`=${a1(constant)}*${a1(molality)}`, "0.00"), "K"],
  ]) as [Spot];
  const [freezingPoint] = rowsOf(sheet, { row: 13, column: 1 }, [
    ["Step 6. It freezes at", shown(`=0-${a1(depression)}`, "0.00"), "°C"],
  ]) as [Spot];
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const text = `Only a thin syrup obeys so simple a rule; ours does so within ${gap} K.`;
  const proviso = put(sheet, 15, 1, text);
  marked.solutions.push({
    names: list.map(({ name }) => name),
    grams: list.map(({ mass }) => mass),
    molarMasses: list.map(({ molar }) => molar),
    particles: list.map(({ particles }) => particles),
    ...{ moles: counts, water: water!, constant, depression, freezingPoint, proviso },
  });
  return 17;
}

/** What each table boiled: sugar and water, and both ways of saying how strong it is. */
function syrups(kit: Kit, sheet: CorpusSheet, row: number): number {
  const { random, marked } = kit;
  put(sheet, row, 1, "Syrups for the lolly moulds, by table");
  putRow(sheet, row + 1, 1, [
    ...["Table", "Sucrose (g)", "Water (g)", "g sucrose per 100 g water", "% sucrose by mass"],
  ]);
  ["Window", "Door", "Sink", "Cupboard"].forEach((table, index) => {
    const [grams, waterGrams] = [10 * random.whole(6, 15), 10 * random.whole(30, 45)];
    const [, sugar, water] = putRow(sheet, row + 2 + index, 1, [table, grams, waterGrams]);
    const [to, share] = [(100 * grams) / waterGrams, (100 * grams) / (grams + waterGrams)];
    const typed = [to, share].map((value) => shown(Number(value.toFixed(1)), "0.0"));
    const [perWater, part] = putRow(sheet, row + 2 + index, 4, typed);
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: part! });
  });
  return row + 7;
}

/** The recipe that the class ends with, at the right of the steps. */
function pudding(kit: Kit, sheet: CorpusSheet): void {
  const made = called(perKilogram(soberOnes(kit, 1)[0]!), {
    water: "tap water",
    salt: "table salt",
  });
  put(sheet, 0, 8, `Pudding for Friday: ${made.title}`);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 8 },
    {
      heads: ["Shopping", "Weigh", undefined, "Who brings it"],
      cells: (name, grams, index) => [name, grams, "g", `Table ${(index % 4) + 1}`],
    },
  );
  put(sheet, end, 8, "makes");
  const total = sumOf(kit, sheet, { row: end, column: 9 }, amounts);
  const unitCells = columnOf(rows, 2);
  const lines = { names, amounts, unitCells, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 8 }, [
    { label: "first ice at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "lowered by", inCell: "K", states: "depression", as: "formula" },
    { label: "all the water in it", inCell: "g", states: "water", as: "typed", decimals: 0 },
    { label: "sugars to 100 g water", inCell: "g", states: "sugar per 100 g water", as: "formula" },
    {
      ...{ label: "ice in the whole pudding at −18 °C", inCell: "%" },
      ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 8, label: "should come out" });
  tellBeside(sheet, recipe, { row: next + 1, column: 8 }, VOICE);
}

function saucepan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lesson 6");
  put(sheet, 0, 1, "Year 9 food technology: why a lolly is softer than an ice cube");
  const row = syrups(kit, sheet, steps(kit, sheet));
  pudding(kit, sheet);
  hundredth(
    kit,
    sheet,
    { row, column: 1 },
    {
      heads: ["How the lesson is marked", "%"],
      ...{ items: ["The sum", "The lolly", "Tidy table", "Homework"], total: "full marks" },
    },
  );
  note(kit, sheet, row + 7, 1, "Moulds go back to the office before lunch.");
}

/** A food technology teacher's lesson in steps. */
export const saucepans: readonly Layout[] = [
  { name: "year 9 lesson in six steps, pudding at the right", language: "en", build: saucepan },
];
