import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Said } from "../layouts/parts";
import { input } from "../page";
import { ofAlcohol } from "../strollers/words";
import { dissolved } from "../solution";
import { costs, freezer, shares } from "./columns";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

const jarLines = (constant: Spot): Lines => ({
  label: { head: "Jar no.", cell: (_, __, index) => index + 1 },
  name: typed("Stirred in", ({ solute }) => solute.en),
  water: typed("Water (g)", ({ waterGrams }) => waterGrams),
  mass: typed("Stirred in (g)", ({ grams }) => grams),
  particles: typed("Splits into (particles)", words.particlesOf),
  molar: typed("Molar mass (g/mol)", words.molarOf),
  molality: worked(
    "mol per kg water",
    (at) => `${at("mass")}/${at("molar")}/(${at("water")}/1000)`,
    "0.000",
  ),
  depression: worked(
    "Drop by the law (K)",
    (at) => `${at("molality")}*${at("particles")}*${fixed(constant)}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Freezes at, by the law (°C)", (at) => `0-${at("depression")}`, "0.00"),
  measured: typed("Freezes at, as read (°C)", (each) => shown(words.reading(each), "0.0")),
  difference: worked(
    "Read minus law (K)",
    (at) => `${at("measured")}-${at("freezingPoint")}`,
    "0.00",
  ),
});

const potSaid = (at: ReturnType<typeof freezer>): readonly Said[] => [
  { label: "Starts to freeze (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Dissolved in it (g)", states: "dissolved", as: "formula", format: "0" },
  {
    label: "Water turned to ice in our freezer (%)",
    ...{ states: "ice of water", as: "formula", ...at, format: "0" },
  },
  {
    label: "Ice in the whole pot in our freezer (%)",
    ...{ states: "ice of mix", as: "formula", ...at, format: "0" },
  },
];

/** The pot that an evening class makes, with what it costs. */
function pot(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "The pot");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, made.title);
  const at = freezer(kit, sheet, { row: 1, column: 0 }, ["Our freezer (°C)", "Our freezer"]);
  words.ice(kit, sheet, made, {
    ...{ row: 3, column: 0, heads: ["Put in", "Weight (g)"], total: "Pot weighs" },
    said: [...potSaid(at), ...ofAlcohol(made, "Pure alcohol in the pot (g)")],
    extra: costs(kit, sheet, made, ["£ per kg", "£"]),
    ...{ target: "Meant to be", lead: "Please note:" },
  });
}

/** A jar in each row, the law beside the thermometer. */
function jars(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Jars");
  const { list, tolerance } = problems(kit, 5);
  put(sheet, 0, 0, "Evening class, week 3: what goes into the jar and when it freezes");
  const label = { label: "Water's constant Kf (K·kg/mol)", bare: "Water's constant Kf" };
  const place = { row: 1, column: 0 };
  const constant = input(kit, sheet, place, { ...label, value: 1.86, format: "0.00" });
  const made = grid(kit, sheet, { row: 3, column: 0 }, jarLines(constant), list);
  const text = `The law is for thin solutions only; in these jars it is right to ${tolerance} K.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, () => ({ constant }));
  note(kit, sheet, made.end + 2, 0, "Jars go back to the kitchen, washed.");
  pot(kit);
}

/** The constants that the pairs look up, right of their results. */
const lookUps = (sheet: CorpusSheet, row: number, column: number): Spot[][] => {
  putRow(sheet, row, column, ["Data", "M / g mol⁻¹", "i"]);
  return dissolved.map(({ en, molarMass, particles }, index) =>
    putRow(sheet, row + 1 + index, column, [en, shown(molarMass, "0.00"), particles]),
  );
};

const pairLines = (
  molar: (at: number) => string,
  ions: (at: number) => string,
  kf: Spot,
): Lines => ({
  who: { head: "Pair", cell: (_, __, index) => `Pair ${index + 1}` },
  mass: typed("m(solute) / g", ({ grams }) => grams),
  name: typed("Solute", ({ solute }) => solute.en),
  water: typed("m(water) / g", ({ waterGrams }) => waterGrams),
  moles: worked("n / mol", (at, index) => `${at("mass")}/${molar(index)}`, "0.0000"),
  molality: worked("b / mol kg⁻¹", (at) => `1000*${at("moles")}/${at("water")}`, "0.000"),
  depression: worked(
    "ΔT = i·Kf·b / K",
    (at, index) => `${fixed(kf)}*${at("molality")}*${ions(index)}`,
    "0.00",
    { fixed: [kf] },
  ),
  measured: typed("T(freeze) found / °C", (each) => shown(words.reading(each), "0.0")),
});

const CLASS_ICE: readonly Said[] = [
  { label: "Freezing point / °C", states: "freezing point", as: "typed" },
  { label: "Depression / K", states: "depression", as: "formula" },
  { label: "Sugars by mass / %", states: "sugar share", as: "typed" },
];

/** Pairs of pupils in rows, who read their constants from a table beside. */
function pairs(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Practical");
  const { list, tolerance } = problems(kit, 6);
  put(sheet, 0, 0, "Colligative properties practical: results of all pairs");
  const table = lookUps(sheet, 2, 9);
  const constant = putRow(sheet, 10, 9, ["Kf(water) / K kg mol⁻¹", shown(1.86, "0.00")])[1]!;
  const row = list.map(({ solute }) => table[dissolved.indexOf(solute)]!);
  const [molar, ions] = [1, 2].map((at) => (index: number) => a1(row[index]![at]!));
  const made = grid(kit, sheet, { row: 2, column: 0 }, pairLines(molar!, ions!, constant), list);
  const text = `Ideal dilute solutions are assumed; error of the model below ${tolerance} K for every pair.`;
  const proviso = put(sheet, made.end + 2, 0, text);
  const shared = (at: number) => ({ molar: row[at]![1]!, particles: row[at]![2]!, constant });
  words.markEach(kit, made, proviso, shared);
  note(kit, sheet, made.end + 3, 0, "Write-up due on Friday.");
  const next = addSheet(kit.marked.book, "Ice cream day");
  const recipe = kit.make(1)[0]!;
  put(next, 0, 0, recipe.title);
  words.ice(kit, next, recipe, {
    ...{ row: 2, column: 0, heads: ["Substance", "m / g"], total: "Sum", amountFirst: true },
    ...{ said: CLASS_ICE, target: "Texture wanted", lead: "Warning: contains" },
    extra: shares(kit, next, 2, "w / %"),
    saidRight: 4,
  });
}

/** Sheets with a sample in each row. */
export const rowSheets: readonly Layout[] = [
  { name: "evening class, a jar in each row", language: "en", build: jars },
  { name: "practical, pairs and a data table beside", language: "en", build: pairs },
];
