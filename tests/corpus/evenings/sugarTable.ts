import { addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import type { Said } from "../layouts/parts";
import { markSamples } from "../benches/words";
import { plainOf } from "../lodgers/swaps";
import { called } from "../kitchens/hand";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { VOICES } from "./voices";
import { iceOn, lesson, readings, SUGARS } from "./words";

/** Quantities of the table, a pair of pupils in each row. */
const lines = (constant: Spot): Lines => ({
  label: { head: "Pair", cell: (_, __, index) => index + 1 },
  name: typed("Sugar", ({ solute }) => solute.en),
  molar: typed("Molar mass / g mol⁻¹", molarOf),
  mass: typed("Sugar weighed / g", ({ grams }) => grams),
  water: typed("Distilled water / g", ({ waterGrams }) => waterGrams),
  molality: worked(
    "Molality / mol kg⁻¹",
    (at) => `${at("mass")}/${at("molar")}/(${at("water")}/1000)`,
    "0.000",
  ),
  particles: typed("i", particlesOf),
  depression: worked(
    "ΔTf / K",
    (at) => `${at("particles")}*${fixed(constant)}*${at("molality")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Tf expected / °C", (at) => `-${at("depression")}`, "0.00"),
  measured: typed("Tf found / °C", (each) => shown(reading(each), "0.0")),
  difference: worked(
    "Found minus expected / K",
    (at) => `${at("measured")}-${at("freezingPoint")}`,
    "0.00",
  ),
});

const SAID: readonly Said[] = [
  { label: "Begins to freeze / °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Freezing point depression / K", states: "depression", as: "formula" },
  { label: "Water, all sources / g", states: "water", as: "formula", format: "0" },
  {
    label: "Water frozen in the school freezer at −18 °C / %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The recipe that the set freezes after the lesson, and the freezer's log. */
function tasting(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tasting");
  const made = called(plainOf(kit), { sugar: "caster sugar", water: "tap water" });
  put(sheet, 0, 0, `End of term: ${made.title.toLowerCase()}, set 12B`);
  const { end } = iceOn(kit, sheet, made, {
    ...{ row: 2, column: 0, columns: ["amount", "name", "number"], unit: "g", right: 4 },
    ...{ headings: { amount: "Mass / g", name: "Ingredient", number: "Order" }, total: "Sum" },
    ...{ said: SAID, target: "Serve", voice: VOICES.set12 },
  });
  const heads = putRow(sheet, end + 2, 0, ["Freezer opened", "Display / °C"]);
  ["period 1", "break", "lunch", "period 6"].forEach((time, index) =>
    put(sheet, end + 3 + index, 0, time),
  );
  readings(kit, sheet, heads[1]!, { count: 4, from: -20, to: -16 });
  note(kit, sheet, end + 8, 0, "Bring a spoon. Goggles off only after the benches are wiped.");
}

/** Sugars in a table, then something to eat. */
function sugarTable(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sugars");
  const { list, tolerance } = lesson(kit, SUGARS, [100, 150, 200]);
  put(sheet, 0, 0, "Colligative properties: five sugars, five beakers of crushed ice");
  const words = { label: "Kf(water) / K kg mol⁻¹", bare: "Kf(water)", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 0 }, { ...words, format: "0.00" });
  const made = grid(kit, sheet, { row: 4, column: 0 }, lines(constant), list);
  const text = `We assume ideal solutions; for these five the law is out by ${tolerance} K at most.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  const question = "Q: which of the sugars have the same ΔTf for the same mass, and why?";
  note(kit, sheet, made.end + 2, 0, question);
  tasting(kit);
}

/** A sheet of a chemistry set. */
export const sugarTables: readonly Layout[] = [
  { name: "year 12 chemistry, five sugars and the tasting", language: "en", build: sugarTable },
];
