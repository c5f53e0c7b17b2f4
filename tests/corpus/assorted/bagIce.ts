import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { dissolved } from "../solution";
import { isAlcoholic, madeOf } from "../strollers/words";
import { asTemperatures, tolerance } from "./words";

const SALT = dissolved[1]!;

const TEAMS = ["Penguins", "Walruses", "Terns", "Seals", "Narwhals"];

const HEADS = [
  ...["Team", "NaCl (g)", "Water (g)", "n(NaCl) / mol", "b(NaCl) in mol per kg water"],
  ...["ΔTf (K)", "Tf predicted (°C)", "Tf read (°C)", "Read by"],
];

const VOICE: Voice = {
  lead: "Tell the class before tasting: contains",
  honey: "Honey in it, so nothing for babies under 12 months.",
  alcohol: "Alcohol in it: staff only, not for children, in pregnancy or before driving.",
  nuts: "Whole nuts in it: choking hazard for children under 5.",
  egg: "Raw egg yolk in it: take it to 71 °C, or use pasteurised yolk.",
};

interface Known {
  readonly name: Spot;
  readonly molarMass: Spot;
  readonly particles: Spot;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** What holds for every team, the words over the numbers. */
function known(sheet: CorpusSheet, gap: string): Known {
  const labels = ["Solute", "M (g/mol)", "Ions per formula unit", "Kf of water (K·kg/mol)"];
  putRow(sheet, 2, 0, labels);
  const [name, molarMass, particles, constant] = putRow(sheet, 3, 0, [
    ...[SALT.en, shown(SALT.molarMass, "0.00"), SALT.particles, shown(1.86, "0.00")],
  ]) as [Spot, Spot, Spot, Spot];
  const words = `Treated as an ideal solution. Real brine this weak is no more than ${gap} K away.`;
  return { name, molarMass, particles, constant, proviso: put(sheet, 4, 0, words) };
}

/** One team's brine in its row; gives the formulas and the reading. */
function team(kit: Kit, sheet: CorpusSheet, row: number, cells: readonly Spot[], all: Known) {
  const [grams, water] = cells as [Spot, Spot];
  const worked = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const moles = worked(3, `=${a1(grams)}/${fixed(all.molarMass)}`, "0.0000");
  const molality = worked(4, `=${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const law = `=${fixed(all.particles)}*${fixed(all.constant)}*${a1(molality)}`;
  const depression = worked(5, law, "0.00");
  const freezingPoint = worked(6, `=0-${a1(depression)}`, "0.00");
  const { name, constant, proviso } = all;
  kit.marked.solutions.push({
    ...{ names: [name], grams: [grams], molarMasses: [all.molarMass] },
    ...{ particles: [all.particles], moles: [moles], water, constant, proviso },
    ...{ depression, freezingPoint },
  });
  return [moles, molality, depression, freezingPoint];
}

/** The brines from weak to strong, all in the same water. */
function ladder(kit: Kit, sheet: CorpusSheet): void {
  const waterGrams = kit.random.pick([200, 250, 400]);
  const glasses = [6, 8, 10, 12, 15].map((perKg) => ({
    ...{ solute: SALT, waterGrams, grams: Number(((perKg * waterGrams) / 1000).toFixed(1)) },
  }));
  const all = known(sheet, tolerance(kit, glasses));
  const heads = putRow(sheet, 6, 0, HEADS);
  const rows = glasses.map(({ grams }, index) => {
    const row = 7 + index;
    const cells = putRow(sheet, row, 1, [shown(grams, "0.0"), waterGrams]);
    put(sheet, row, 0, TEAMS[index]);
    const read = shown(freezesAt(["water", SALT.en], [waterGrams, grams]), "0.0");
    const [reading] = putRow(sheet, row, 7, [read, kit.random.pick(["Ada", "Tom", "Mina"])]);
    return [...team(kit, sheet, row, cells, all), reading!];
  });
  const fixedCells = [[all.molarMass], [], [all.particles, all.constant], []];
  fixedCells.forEach((reads, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: reads },
    }),
  );
  asTemperatures(kit, heads[7]!, columnOf(rows, 4));
  note(kit, sheet, 13, 0, "Gloves on! The strong brine for the bags is mixed by the teacher.");
}

const SAID: readonly Said[] = [
  { label: "Mix starts to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "that is below pure water by (K)", states: "depression", as: "formula" },
  { label: "Water, wherever it comes from (g)", states: "water", as: "typed", decimals: 0 },
];

/** Salt and water around the bag, the mix inside it. */
function bagIce(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bag lab");
  put(sheet, 0, 0, "Ice cream in a bag, lab 4: more salt, lower freezing point?");
  ladder(kit, sheet);
  const made = called(madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!, {
    sugar: "granulated sugar",
    water: "tap water",
  });
  put(sheet, 15, 0, `Inside the bags: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 16, column: 0 },
    { heads: ["What", "g for the class"], cells: (item, grams) => [item, grams] },
  );
  put(sheet, end, 0, "in all");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "g",
    amountLabel: heads[1]!,
    total,
  });
  const next = say(sheet, recipe, { row: 16, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "we want it" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
}

/** A science teacher's ice in a bag. */
export const bagIces: readonly Layout[] = [
  { name: "ice cream in a bag, five brines and the mix", language: "en", build: bagIce },
];
