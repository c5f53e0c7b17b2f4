import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import {
  ice,
  markEach,
  molarOf,
  particlesOf,
  reading,
  shortMix,
  typed,
  worked,
} from "../scholars/words";
import { temperatures } from "../strollers/words";

const PAIRS = ["Ada + Finn", "Joel + Priya", "Maya + Tom", "Lena + Sam", "Ravi + Zoe"];

/** What a pair weighs, works out and reads. */
const lines = (constant: Spot): Lines => ({
  who: { head: "Pair", cell: (_, __, index) => PAIRS[index] },
  water: typed("Water / g", ({ waterGrams }) => waterGrams),
  name: typed("Solute", ({ solute }) => solute.en),
  mass: typed("Solute / g", ({ grams }) => grams),
  molar: typed("M / g mol⁻¹", molarOf),
  molality: worked(
    "b / mol kg⁻¹",
    (at) => `(${at("mass")}/${at("molar")})/(${at("water")}/1000)`,
    "0.000",
  ),
  particles: typed("i", particlesOf),
  depression: worked(
    "ΔT / K",
    (at) => `${at("particles")}*${fixed(constant)}*${at("molality")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Tf predicted / °C", (at) => `-${at("depression")}`, "0.00"),
  measured: typed("Tf measured / °C", (each) => shown(reading(each), "0.0")),
});

const LOLLY: readonly Said[] = [
  { label: "first crystals, °C", states: "freezing point", as: "formula" },
  { label: "i.e. lower than pure water by, K", states: "depression", as: "typed" },
  { label: "dissolved, g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "water frozen at −18 °C, %", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** The school freezer through the lesson. */
function freezer(kit: Kit, sheet: CorpusSheet, row: number): void {
  const [, heading] = putRow(sheet, row, 5, ["Minutes", "Salt-ice bath / °C"]);
  const rows = [0, 5, 10, 15, 20].map((minutes, index) =>
    putRow(sheet, row + 1 + index, 5, [minutes, -8 - 2 * index - kit.random.whole(0, 1)]),
  );
  temperatures(kit, heading!, columnOf(rows, 1));
}

/** Five pairs of pupils, a line each; at the end everyone gets a lolly. */
function lesson(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Results 12B");
  const { list, tolerance } = problems(kit, PAIRS.length);
  put(sheet, 0, 0, "12B practical: does the particle count matter?");
  note(kit, sheet, 1, 0, "Goggles on, tie back hair, thermometer never used as a stirrer.");
  const label = { label: "Kf(water) / K kg mol⁻¹", bare: "Kf(water)", value: 1.86 };
  const constant = input(kit, sheet, { row: 3, column: 0 }, { ...label, format: "0.00" });
  const made = grid(kit, sheet, { row: 5, column: 0 }, lines(constant), list);
  const text = `Tf predicted assumes ideal dilute solutions; at our strengths this is out by no more than ${tolerance} K.`;
  markEach(kit, made, put(sheet, made.end, 0, text), () => ({ constant }));
  const row = made.end + 3;
  put(sheet, row - 1, 0, "Lolly from the food room, for the clear-up crew");
  ice(kit, sheet, shortMix(kit, "water", ["Lolly", "Lutscher"]), {
    ...{ row, column: 0, heads: ["Ingredient", "Mass / g"], total: "Sum" },
    ...{ said: LOLLY, target: "Aim", lead: "Allergens:" },
  });
  freezer(kit, sheet, row);
}

/** A practical in pairs. */
export const pairsOfPupils: readonly Layout[] = [
  { name: "year 12 practical, pairs in rows", language: "en", build: lesson },
];
