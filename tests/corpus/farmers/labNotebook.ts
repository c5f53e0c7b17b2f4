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
import { called, columnOf, perKilogram } from "../kitchens/hand";
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

const VOICE: Voice = {
  lead: "Allergens present:",
  honey: "Honey: never to infants under 12 months.",
  alcohol: "Ethanol: no children, no expectant mothers, no drivers.",
  nuts: "Whole nuts: choking hazard, children under 5.",
  egg: "Raw egg yolk: 71 °C or pasteurised.",
};

/** What is known of each run: symbol, words, unit, and where the number comes from. */
const KNOWN: readonly (readonly [Content, string, Content, (run: Problem) => string | number])[] = [
  [undefined, "solute", undefined, ({ solute }) => solute.en],
  ["m₂", "mass of solute", "g", ({ grams }) => grams],
  ["m₁", "mass of distilled water", "g", ({ waterGrams }) => waterGrams],
  ["M", "molar mass", "g/mol", ({ solute }) => solute.molarMass],
  ["i", "particles per formula unit", undefined, ({ solute }) => solute.particles],
];

type Cells = Readonly<Record<"mass" | "water" | "molar" | "particles" | "constant", Spot>>;

/** The sums, each from the one above and what is known. */
const WORKED: readonly (readonly [
  string,
  string,
  string,
  (at: Cells, above: Spot) => string,
  string,
])[] = [
  ["n", "amount of solute", "mol", ({ mass, molar }) => `=${a1(mass)}/${a1(molar)}`, "0.0000"],
  ["b", "molality", "mol/kg", ({ water }, above) => `=1000*${a1(above)}/${a1(water)}`, "0.000"],
  [
    ...(["ΔT", "lowering"] as const),
    "K",
    ({ constant, particles }, above) => `=${fixed(constant)}*${a1(particles)}*${a1(above)}`,
    "0.00",
  ],
  ["T", "freezing point", "°C", (_, above) => `=-${a1(above)}`, "0.00"],
];

const TOP = 5;

/** One run down its column; gives its sums. */
function run(kit: Kit, sheet: CorpusSheet, problem: Problem, index: number, law: readonly Spot[]) {
  const [constant, proviso] = law as [Spot, Spot];
  const column = 3 + index;
  put(sheet, TOP - 1, column, `run ${index + 1}`);
  const known = KNOWN.map(([, , , of], at) => put(sheet, TOP + at, column, of(problem)));
  const [name, mass, water, molar, particles] = known as [Spot, Spot, Spot, Spot, Spot];
  const cells = { mass, water, molar, particles, constant };
  const sums: Spot[] = [];
  WORKED.forEach(([, , , formula, format], at) => {
    const content = formula(cells, sums.at(-1) ?? molar);
    sums.push(put(sheet, TOP + KNOWN.length + at, column, shown(content, format)));
  });
  const [moles, , depression, freezingPoint] = sums as [Spot, Spot, Spot, Spot];
  const { solute, grams, waterGrams } = problem;
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const read = put(sheet, TOP + KNOWN.length + WORKED.length, column, shown(real, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [...sums, read];
}

/** Four runs side by side, symbols and units at the left. */
function runs(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Why the sorbet won't set: cryoscopy on the kitchen bench");
  const [, , constant] = putRow(sheet, 2, 0, ["Kf", "water, K·kg/mol", shown(1.86, "0.00")]);
  putRow(sheet, TOP - 1, 0, ["symbol", "quantity", "unit"]);
  const heads = [...KNOWN, ...WORKED].map(
    ([symbol, words, unit], at) => putRow(sheet, TOP + at, 0, [symbol, words, unit])[1]!,
  );
  const end = TOP + heads.length;
  const [, measured] = putRow(sheet, end, 0, [undefined, "read on the thermometer", "°C"]);
  const text = `Dilute, so taken as ideal; thermometer and sum agree to ${tolerance} K.`;
  const proviso = put(sheet, end + 2, 0, text);
  const law = [constant!, proviso];
  const columns = list.map((each, index) => run(kit, sheet, each, index, law));
  WORKED.forEach(([symbol], at) => {
    const heading = heads[KNOWN.length + at]!;
    const reads = symbol === "ΔT" ? [constant!] : [];
    kit.marked.formulaColumns.push({ spots: columnOf(columns, at), heading, fixed: reads });
  });
  temperatures(kit, measured!, columnOf(columns, WORKED.length));
}

const SYRUPS = [
  ["light", 0.3],
  ["medium", 0.6],
  ["heavy", 1],
] as const;

/** Syrups by weight, their strength both ways. */
function syrups(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, [
    ...["Syrup", "sucrose, g", "water, g", "g sucrose per 100 g water", "sucrose, % m/m"],
  ]);
  SYRUPS.forEach(([word, times], index) => {
    const waterGrams = 50 * kit.random.whole(4, 10);
    const grams = Math.round(times * waterGrams);
    const perWater = Number(((100 * grams) / waterGrams).toFixed(1));
    const share = Number(((100 * grams) / (grams + waterGrams)).toFixed(1));
    const strengths = [shown(perWater, "0.0"), shown(share, "0.0")];
    const cells = putRow(sheet, row + 1 + index, 0, [word, grams, waterGrams, ...strengths]);
    const [, sugar, water, ...both] = cells as [Spot, Spot, Spot, Spot, Spot];
    kit.marked.strengths.push({ sugar, water, perWater: both[0], share: both[1] });
  });
}

const SAID: readonly Said[] = [
  { label: "lowering (not ideal)", inCell: "K", states: "depression", as: "formula" },
  { label: "freezing point", inCell: "°C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "water in the kilo", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "water frozen at −18 °C", inCell: "%", format: "0" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The ice that it was all about, for a kilogram. */
function ice(kit: Kit, sheet: CorpusSheet): void {
  const made = called(perKilogram(kit.make(1)[0]!), { water: "distilled water" });
  put(sheet, 0, 0, `${made.title}, 1 kg`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      ...{
        heads: ["component", "m", "tare"],
        cells: (name, grams) => [name, shown(grams, "0"), "zeroed"],
      },
    },
  );
  put(sheet, 1, 1, "g");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 0, "Σ");
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    total,
    unit: "g",
    amountLabel: heads[1]!,
  });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "required" });
  const row = tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  syrups(kit, sheet, row + 2);
  note(kit, sheet, row + 7, 0, "Balance drifts when the fridge kicks in; weigh between cycles.");
}

/** Someone retired from a laboratory. */
function labNotebook(kit: Kit): void {
  runs(kit, addSheet(kit.marked.book, "cryoscopy"));
  ice(kit, addSheet(kit.marked.book, "the ice"));
}

/** A notebook of someone who worked in a laboratory. */
export const labNotebooks: readonly Layout[] = [
  {
    name: "retired lab technician in Dunedin, kitchen cryoscopy",
    language: "en",
    build: labNotebook,
  },
];
