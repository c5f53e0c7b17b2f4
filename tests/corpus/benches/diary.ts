import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { grid, type Lines } from "../scholars/grid";
import { reading, typed, worked, molarOf, particlesOf } from "../scholars/words";
import { readings } from "../wanderers/worte";
import { markSamples, mix, samples, small, solutes, toleranceOf } from "./words";

const VOICE: Voice = {
  lead: "Mum says write what people could be allergic to:",
  honey: "It has honey so not for babies under 12 months.",
  alcohol: "It has alcohol so only grown ups, and not when pregnant or driving.",
  nuts: "It has whole nuts so not for under 5s, they could choke.",
  egg: "It has raw egg yolk, so Mum heats it to 71 °C.",
};

/** One jar a column, what was done and worked out down the page. */
const lines = (constant: Spot): Lines => ({
  label: { head: "Jam jar", unit: "in", cell: (_, __, index) => `no. ${index + 1}` },
  name: typed("I dissolved", ({ solute }) => solute.en, "–"),
  mass: typed("How much of it", ({ grams }) => grams, "g"),
  water: typed("In how much water", ({ waterGrams }) => waterGrams, "g"),
  molar: typed("One mole is", molarOf, "g/mol"),
  moles: worked("So I had", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  given: worked("Water in kilos", (at) => `${at("water")}/1000`, "0.000", { unit: "kg" }),
  molality: worked("Molality", (at) => `${at("moles")}/${at("given")}`, "0.000", {
    unit: "mol/kg",
  }),
  particles: typed("Makes this many particles", particlesOf, "–"),
  depression: worked(
    "Should freeze lower by",
    (at) => `${at("molality")}*${at("particles")}*${fixed(constant)}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("Should start to freeze at", (at) => `-${at("depression")}`, "0.00", {
    unit: "°C",
  }),
  measured: typed("Really started at", (each) => shown(reading(each), "0.0"), "°C"),
});

/** The jars, then what the fridge's freezer did. */
function jars(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "My science fair project: which sugar is the best antifreeze?");
  put(sheet, 1, 0, "K for water (from the textbook)");
  const [constant] = putRow(sheet, 1, 1, [shown(1.86, "0.00"), "K kg/mol"]) as [Spot, Spot];
  const list = samples(
    kit,
    solutes("sucrose", "fructose", "glucose monohydrate", "erythritol", "sodium chloride"),
    [200],
  );
  const made = grid(kit, sheet, { row: 3, column: 0, across: true }, lines(constant), list);
  const text = `The formula is for ideal solutions. For my jars it can be ${toleranceOf(kit, list)} K wrong.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  const row = made.end + 3;
  note(kit, sheet, row, 0, "Salt needs the fewest grams but nobody wants to eat it.");
  const [, heading] = putRow(sheet, row + 2, 0, ["Day", "Our freezer (°C)"]) as [Spot, Spot];
  small(
    sheet,
    { row: row + 3, column: 0 },
    ["Sat", "Sun", "Mon", "Tue", "Wed", "Thu"].map((day) => [day]),
  );
  readings(kit, sheet, heading, { count: 6, tenths: [-195, -165] });
}

const SAID: readonly Said[] = [
  { label: "starts to freeze (°C)", states: "freezing point", as: "formula" },
  { label: "lower than water by (K)", states: "depression", as: "formula" },
  { label: "water in the bowl (g)", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "water that is ice at −18 °C (%)", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
];

/** The ice for the stand at the fair. */
function stand(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar" });
  put(sheet, 0, 0, "Free samples for the judges");
  put(sheet, 1, 0, made.title);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{
      row: 3,
      column: 0,
      heads: [undefined, "grams", "Ingredient", "done?"],
      name: 2,
      amount: 1,
    },
    cells: (item, grams, index) => [index + 1, grams, item, kit.random.pick(["yes", undefined])],
    total: "in the bowl",
  });
  strip(sheet, recipe, { row: end + 1, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: end + 4, column: 2, label: "I want it to be" });
  const next = tellIn(sheet, recipe, { row: end + 6, column: 2 }, VOICE);
  small(sheet, { row: next + 1, column: 2 }, [
    ["Still to buy", "how many"],
    ["paper cups", 60],
    ["wooden spoons", 60],
    ["poster board", 1],
  ]);
}

/** A pupil's project. */
export const diaries: readonly Layout[] = [
  {
    ...{ name: "science fair project, five jam jars", language: "en" },
    build: (kit) => {
      jars(kit, addSheet(kit.marked.book, "Jam jars"));
      stand(kit, addSheet(kit.marked.book, "Samples"));
    },
  },
];
