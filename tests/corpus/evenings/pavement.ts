import { addSheet, put, putRow, shown } from "../book";
import { markSamples } from "../benches/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { plainOf } from "../lodgers/swaps";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { below, iceOn, lesson, readings, SALTS } from "./words";

/** What each group writes down its own column. */
const lines: Lines = {
  label: { head: "Group", cell: (_, __, index) => ["Red", "Blue", "Green", "Gold"][index] },
  name: typed("Our de-icer", ({ solute }) => solute.en),
  mass: typed("We dissolved", ({ grams }) => grams, "g"),
  water: typed("in water", ({ waterGrams }) => waterGrams, "g"),
  given: worked("which is water", (at) => `${at("water")}/1000`, "0.000", { unit: "kg" }),
  molar: typed("1 mol of it weighs", molarOf, "g/mol"),
  particles: typed("Ions per formula, i", particlesOf),
  constant: typed("Kf, from the data sheet", () => shown(1.86, "0.00"), "K·kg/mol"),
  moles: worked("Amount", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  molality: worked("Molality", (at) => `${at("moles")}/${at("given")}`, "0.000", {
    unit: "mol/kg",
  }),
  depression: worked(
    "Freezing point goes down by",
    (at) => `${at("constant")}*${at("particles")}*${at("molality")}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("so it is", (at) => `0-${at("depression")}`, "0.00", { unit: "°C" }),
  measured: typed("We measured", (each) => shown(reading(each), "0.0"), "°C"),
};

const SAID: readonly Said[] = [
  { label: "Freezing point (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in it (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Sugars per 100 g water (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
];

const METHOD = [
  "Fill the big bag with ice, then a cup of road grit salt.",
  "Pour the mix into the small bag and press the air out.",
  "Small bag into big bag, gloves on, shake for ten minutes.",
];

/** Salts by group, the pavement's temperatures, and the ice that the class shakes. */
function pavement(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "De-icers");
  const { list, tolerance } = lesson(kit, SALTS, [100, 200, 250]);
  put(sheet, 0, 0, "Year 9 science: what melts the ice on the school path?");
  const made = grid(kit, sheet, { row: 2, column: 0, across: true }, lines, list);
  const text = `Simple law only. Weak solutions like ours keep to it within ${tolerance} K.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), {});
  const heads = putRow(sheet, 2, 7, ["8 a.m.", "Path outside the gym (°C)"]);
  below(sheet, { row: 3, column: 7 }, ["Mon", "Tue", "Wed", "Thu", "Fri"]);
  readings(kit, sheet, heads[1]!, { count: 5, from: -6, to: -0.5 });
  const mix = called(plainOf(kit), { sugar: "granulated sugar", salt: "table salt" });
  const row = made.end + 4;
  put(sheet, row - 1, 0, `Friday treat: ${mix.title.toLowerCase()} in a bag`);
  const { end } = iceOn(kit, sheet, mix, {
    ...{ row, column: 0, columns: ["name", "amount", "unit"], unit: "g" },
    ...{ headings: { name: "You need", amount: "Amount" } },
    ...{ said: SAID, target: "Ready when it is", voice: "pair" },
  });
  METHOD.forEach((step, index) => put(sheet, row + index, 7, `${index + 1}. ${step}`));
  note(kit, sheet, end + 1, 0, "Tell the office before we borrow the kitchen freezer.");
}

/** A sheet of a science class. */
export const pavements: readonly Layout[] = [
  { name: "year 9 science, de-icers by group and ice in a bag", language: "en", build: pavement },
];
