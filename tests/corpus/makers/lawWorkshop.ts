import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import {
  freezesAt,
  markRecipe,
  problems,
  say,
  sumOf,
  type Problem,
  type Said,
} from "../layouts/parts";
import { listed } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import { log, OURS } from "./words";

const HEADS = ["Glass", "Water", "Stirred in", "m", "M", "i", "n", "b", "ΔT", "Freezes at", "Read"];
const UNITS = [undefined, "g", undefined, "g", "g/mol", "–", "mol", "mol/kg", "K", "°C", "°C"];
const FIRST = 6;

/** One glass in its row: what is known, what follows, what was read. */
function glass(kit: Kit, sheet: CorpusSheet, given: Problem, row: number, constant: Spot): Spot[] {
  const { solute, grams, waterGrams } = given;
  const known = putRow(sheet, row, 0, [
    ...["PQRST"[row - FIRST], waterGrams, solute.en, grams],
    ...[shown(solute.molarMass, "0.00"), solute.particles],
  ]);
  const [, water, , mass, molar, particles] = known as [Spot, Spot, Spot, Spot, Spot, Spot];
  const line = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const moles = line(6, `${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = line(7, `${a1(moles)}/${a1(water)}*1000`, "0.000");
  const law = `${fixed(constant)}*${a1(particles)}*${a1(molality)}`;
  const depression = line(8, law, "0.00");
  const freezingPoint = line(9, `-${a1(depression)}`, "0.00");
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const read = put(sheet, row, 10, shown(real, "0.0"));
  return [...known, moles, molality, depression, freezingPoint, read];
}

/** Five glasses in rows, symbols and units in two rows over them. */
function glasses(kit: Kit, sheet: CorpusSheet): void {
  const { marked } = kit;
  put(sheet, 0, 0, "Trainees, morning 2: what does a solute do to ice?");
  const [label, constant] = putRow(sheet, 2, 0, ["Kf, water (K·kg/mol)", shown(1.86, "0.00")]);
  marked.inputs.push({ label: label!, value: constant!, bare: "Kf, water" });
  const heads = putRow(sheet, FIRST - 2, 0, HEADS);
  putRow(sheet, FIRST - 1, 0, UNITS);
  const { list, tolerance } = problems(kit, 5);
  const rows = list.map((each, at) => glass(kit, sheet, each, FIRST + at, constant!));
  const text = `ΔT = Kf·i·b is an ideal law; these glasses keep to it within ${tolerance} K.`;
  const proviso = put(sheet, FIRST + 6, 0, text);
  for (const cells of rows) {
    const [, water, name, mass, molar, count, moles, , depression, freezingPoint] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [count!] },
      ...{ moles: [moles!], water: water!, constant: constant!, depression: depression! },
      ...{ freezingPoint: freezingPoint!, proviso },
    });
  }
  [6, 7, 8, 9].forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]! },
      fixed: at === 8 ? [constant!] : [],
    }),
  );
  temperatures(kit, heads[10]!, columnOf(rows, 10));
  note(kit, sheet, FIRST + 8, 0, "Coffee at half past ten, glasses stay in the bath.");
}

const SAID: readonly Said[] = [
  { label: "ΔT of the mix (K)", states: "depression", as: "formula" },
  { label: "so freezing begins at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "water in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  {
    label: "water frozen at −10 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  },
];

/** The mix that the trainees take home. */
function afternoon(kit: Kit, sheet: CorpusSheet): void {
  const own = { sugar: "beet sugar", "lemon juice": "fresh lemon juice" };
  const made = called(largestFirst(kit.make(1)[0]!), own);
  put(sheet, 0, 0, `Afternoon: ${made.title} from the same law`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      ...{ heads: ["g in 100 g", "Component"], name: 1, amount: 0 },
      cells: (name, grams) => [shown(grams, "0.0"), name],
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.0");
  put(sheet, end, 1, "all");
  const cells = { names, amounts, unit: "g", amountLabel: heads[0]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: 3, column: 3 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "how it should eat" });
  tellIn(sheet, recipe, { row: next + 2, column: 3 }, OURS);
  log(
    kit,
    sheet,
    { row: end + 3, column: 0 },
    {
      ...{ heads: ["bench", "mix out of the machine (°C)"], when: ["left", "right", "window"] },
      ranges: [[-8, -5]],
    },
  );
}

/** A day for trainees: glasses in the morning, a mix in the afternoon. */
function lawWorkshop(kit: Kit): void {
  glasses(kit, addSheet(kit.marked.book, "Morning"));
  afternoon(kit, addSheet(kit.marked.book, "Afternoon"));
}

/** A developer who teaches trainees. */
export const lawWorkshops: readonly Layout[] = [
  {
    name: "trainee day, glasses by symbols and a mix after lunch",
    language: "en",
    build: lawWorkshop,
  },
];
