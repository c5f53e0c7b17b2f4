import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { freezesAt, markRecipe, problems, say, sumOf, type Problem } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import { readings, soberOnes, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "Allergens to announce",
  honey: "There is honey in it: nobody under 12 months old may have any.",
  alcohol: "There is alcohol in it: adults only, not in pregnancy, not before driving.",
  nuts: "There are whole nuts in it: a choking hazard for children under 5.",
  egg: "There is raw egg yolk in it: heat the mix to 71 °C, or buy pasteurised yolk.",
};

const WEIGHED = ["Flask", "Dissolved", "Solute, g", "Distilled water, g"];
const WORKED = [
  ...["M, g/mol", "i", "n, mol", "b, mol/kg", "ΔT = i·Kf·b, K", "T calc., °C", "T obs., °C"],
  "obs. − calc., K",
];

/** One flask: weighed at the left, worked out at the right of a free column. */
function flask(sheet: CorpusSheet, problem: Problem, index: number, constant: Spot): Spot[] {
  const { solute, waterGrams, grams } = problem;
  const row = 6 + index;
  const left = putRow(sheet, row, 0, ["PQRST"[index], solute.en, grams, waterGrams]);
  const [, , mass, water] = left as [Spot, Spot, Spot, Spot];
  const known = putRow(sheet, row, 5, [shown(solute.molarMass, "0.00"), solute.particles]);
  const [molar, particles] = known as [Spot, Spot];
  const work = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const moles = work(7, `${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = work(8, `1000*${a1(moles)}/${a1(water)}`, "0.000");
  const law = `${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
  const depression = work(9, law, "0.00");
  const point = work(10, `-${a1(depression)}`, "0.00");
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const seen = put(sheet, row, 11, shown(real, "0.0"));
  const gap = work(12, `${a1(seen)}-${a1(point)}`, "0.00");
  return [...left, ...known, moles, molality, depression, point, seen, gap];
}

/** The flasks and what follows of them. */
function practical(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 5);
  put(sheet, 0, 0, "Chemistry, upper sixth. Required practical: five flasks in the freezing bath");
  const constant = putRow(sheet, 2, 5, ["Kf, water", shown(1.86, "0.00"), "K kg/mol"])[1]!;
  putRow(sheet, 4, 0, ["weighed out", ...[, , , ,], "worked out"]);
  putRow(sheet, 5, 0, WEIGHED);
  const heads = putRow(sheet, 5, 5, WORKED);
  const rows = list.map((problem, index) => flask(sheet, problem, index, constant));
  const text = `Taken as ideal. For these five, sum and thermometer differ by ${tolerance} K at the most.`;
  const proviso = put(sheet, 12, 0, text);
  rows.forEach((cells) => {
    const [, name, mass, water, molar, particles, moles, , depression, freezingPoint] = cells;
    kit.marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles!], water: water!, constant, depression: depression!, proviso },
      freezingPoint: freezingPoint!,
    });
  });
  [2, 3, 4, 5, 7].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at + 4), heading: heads[at]! },
      fixed: at === 4 ? [constant] : [],
    }),
  );
  temperatures(kit, heads[6]!, columnOf(rows, 10));
  readings(
    kit,
    sheet,
    { row: 14, column: 5 },
    {
      heads: ["Minutes", "Bath, °C", "topped up"],
      when: ["0", "5", "10", "15", "20"].map((minutes) => `after ${minutes}`),
      tenths: [-121, -96],
      rest: (index) => [index === 2 ? "ice and salt" : undefined],
    },
  );
  note(kit, sheet, 14, 0, "Goggles on. Nothing from the flasks is eaten.");
}

/** What the class eats afterwards, made in the food room. */
function treat(kit: Kit, sheet: CorpusSheet): void {
  const made = called(largestFirst(soberOnes(kit, 1)[0]!), {
    ...{ water: "cold water", sugar: "caster sugar", "lemon juice": "juice of lemons" },
  });
  put(sheet, 0, 0, "Made in the food room, where we do eat");
  put(sheet, 1, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["% m/m", "Component"],
      ...{ cells: (name, grams) => [shown(grams, "0.0"), name], name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.0");
  put(sheet, end, 1, "in all");
  const lines = { names, amounts, amountLabel: heads[0]!, total, unit: "%" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 4, column: 3 }, [
    { label: "ΔT", inCell: "K", states: "depression", as: "formula" },
    { label: "T at which ice appears", inCell: "°C", states: "freezing point", as: "typed" },
    { label: "Water in 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
    { label: "Dissolved in 100 g", inCell: "g", states: "dissolved", as: "formula" },
    {
      ...{ label: "Frozen part of its water at −15 °C", inCell: "%" },
      ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Texture asked for" });
  tellBeside(sheet, recipe, { row: next + 2, column: 3 }, VOICE);
  note(kit, sheet, end + 2, 0, "Discuss: why may the formula not be used for this one?");
}

function flasks(kit: Kit): void {
  practical(kit, addSheet(kit.marked.book, "Practical"));
  treat(kit, addSheet(kit.marked.book, "Food room"));
}

/** A chemistry teacher's practical. */
export const flaskPracticals: readonly Layout[] = [
  { name: "upper sixth practical, five flasks and an ice", language: "en", build: flasks },
];
