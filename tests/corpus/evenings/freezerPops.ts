import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { markSamples } from "../benches/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import { columnOf } from "../kitchens/hand";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { dissolved } from "../solution";
import { ofAlcohol } from "../strollers/words";
import { VOICES } from "./voices";
import { ALCOHOLS, iceOn, kiloPrice, lesson, readings } from "./words";

/** A tube in each row; water in grams, as the balance says it, then in kilograms. */
const lines = (constant: Spot): Lines => ({
  water: typed("water g", ({ waterGrams }) => waterGrams),
  given: worked("kg of water", (at) => `${at("water")}/1000`, "0.000"),
  mass: typed("solute g", ({ grams }) => grams),
  name: typed("what was dissolved", ({ solute }) => solute.en),
  molar: typed("MM g/mol", molarOf),
  particles: typed("i", particlesOf),
  counted: worked("mol", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  moles: worked("mol of particles", (at) => `${at("counted")}*${at("particles")}`, "0.0000"),
  depression: worked(
    "ΔT in K",
    (at) => `${fixed(constant)}*${at("moles")}/${at("given")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("freezes at, °C", (at) => `-${at("depression")}`, "0.00"),
});

/** Spirits that went into trial pops, their ethanol by mass. */
function spirits(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "spirits");
  put(
    sheet,
    0,
    0,
    "What the bottles bring (alcohol: 21 and over, not when pregnant or driving; wine: sulphites)",
  );
  const heads = putRow(sheet, 2, 0, ["bottle", "g used", "% ABV", "g ethanol"]);
  const rows = ["white rum", "orange liqueur", "rosé wine"].map((bottle, index) => {
    const strength = shown([40, 35, 12.5][index]!, "0.0");
    const used = 5 * random.whole(5, 14);
    const [, grams, abv] = putRow(sheet, 3 + index, 0, [bottle, used, strength]);
    const formula = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(formula, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return [alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[3]!, fixed: [] });
  note(kit, sheet, 7, 0, "Bottles go back to the instructor's locker.");
}

const SAID: readonly Said[] = [
  { label: "freezing pt, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "depression, K", states: "depression", as: "formula", format: "0.00" },
  { label: "water frozen at −16 °C, %", states: "ice of water", as: "typed", temperatureC: -16 },
  { label: "water, g", states: "water", as: "typed", decimals: 0 },
];

/** A community college's tubes, then the pops of the same evening. */
function freezerPops(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "tubes");
  put(sheet, 0, 0, "Food chem 101, evening section: antifreeze or dessert?");
  const solutes = [...ALCOHOLS, dissolved[0]!, dissolved[1]!];
  const { list, tolerance } = lesson(kit, solutes, [50, 75, 100]);
  const words = { label: "Kf water, K kg/mol", bare: "Kf water", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 1, column: 8 }, words);
  const made = grid(kit, sheet, { row: 3, column: 0 }, lines(constant), list);
  const text = `Ideal-solution estimate; measured tubes lie within ${tolerance} K of it.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  note(
    kit,
    sheet,
    made.end + 2,
    0,
    "Ethylene glycol is poisonous: gloves, labeled waste, no food here.",
  );
  const shelf = putRow(sheet, made.end + 4, 0, ["shelf", "thermometer, °C"]);
  ["top", "middle", "door"].forEach((at, index) => put(sheet, made.end + 5 + index, 0, at));
  readings(kit, sheet, shelf[1]!, { count: 3, from: -19, to: -14 });
  const page = addSheet(kit.marked.book, "pops");
  const mix = called(kit.make(1)[0]!, { sugar: "white sugar", salt: "sea salt" });
  put(page, 0, 0, `${mix.title}, poured into 3 oz molds`);
  iceOn(kit, page, mix, {
    ...{ row: 2, column: 0, columns: ["amount", "unit", "name", "price", "cost"], unit: "g" },
    ...{ headings: { amount: "weigh", name: "item", price: "$ per kg", cost: "$" } },
    ...{ total: "all molds", gap: 1, said: [...SAID, ...ofAlcohol(mix, "ethanol, g")] },
    ...{ priceOf: (_: Spot, index: number) => kiloPrice(kit, mix, index) },
    ...{ target: "wanted", voice: VOICES.evening },
  });
  spirits(kit);
}

/** Sheets of a community college. */
export const freezerPopSheets: readonly Layout[] = [
  { name: "evening food chemistry, alcohol tubes and pops", language: "en", build: freezerPops },
];
