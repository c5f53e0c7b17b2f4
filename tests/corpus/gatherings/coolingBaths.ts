import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { say } from "../layouts/parts";
import { inUnit } from "../list";
import { down } from "../lodgers/words";
import { input } from "../page";
import { makeRecipe } from "../recipes";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { line } from "../stock";
import { itemsOf } from "../strollers/words";
import { markUsual, others, problemsOf, readings, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Put on the label:",
  honey: "Made with honey. Not for babies under 12 months.",
  alcohol: "Alcohol inside. Adults only; not for pregnant women or drivers.",
  nuts: "Whole nuts inside. Choking risk below 5 years.",
  egg: "Raw egg yolk inside. Heat the mix to 71 °C, or use pasteurised yolk.",
};

const FORMULAS: Readonly<Record<string, string>> = {
  "sodium chloride": "NaCl",
  "potassium chloride": "KCl",
  "sodium bicarbonate": "NaHCO₃",
  "calcium chloride dihydrate": "CaCl₂·2H₂O",
  "magnesium chloride hexahydrate": "MgCl₂·6H₂O",
};

const lines = (constant: Spot): Lines => ({
  name: typed("Salt", ({ solute }) => solute.en),
  given: typed("As on the jar", ({ solute }) => FORMULAS[solute.en]),
  mass: typed("Salt weighed (g)", ({ grams }) => grams),
  molar: typed("Molar mass, crystal water included (g/mol)", molarOf),
  water: typed("Water (g)", ({ waterGrams }) => waterGrams),
  particles: typed("Ions per formula", particlesOf),
  moles: worked(
    "Moles of ions",
    (at) => `${at("mass")}/${at("molar")}*${at("particles")}`,
    "0.0000",
  ),
  molality: worked(
    "Ions, mol per kg of water",
    (at) => `${at("moles")}/${at("water")}*1000`,
    "0.000",
  ),
  depression: worked("Lowered by (K)", (at) => `${fixed(constant)}*${at("molality")}`, "0.00", {
    fixed: [constant],
  }),
  freezingPoint: worked("Ice appears at (°C)", (at) => `-${at("depression")}`, "0.00"),
});

/** Weak brines by the ideal law, before the strong ones are mixed. */
function weak(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Weak brines");
  put(sheet, 0, 0, "Before we mix the baths: what a pinch of each salt does");
  const salts = ["sodium chloride", "potassium chloride", "sodium bicarbonate"].map(usual);
  const { list, tolerance } = problemsOf(
    kit,
    [...salts, others.calcium, others.magnesium],
    [500, 1000],
  );
  const kf = { label: "Kf, water (K·kg/mol)", bare: "Kf, water", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 1, column: 0 }, kf);
  const table = grid(kit, sheet, { row: 3, column: 0 }, lines(constant), list);
  const text = `Ideal law. For brines as weak as these it is right within ${tolerance} K; the baths are not weak.`;
  const proviso = put(sheet, table.end + 1, 0, text);
  markUsual(kit, table, list, proviso, { constant });
  note(
    kit,
    sheet,
    table.end + 2,
    0,
    "The crystal water of the last two goes to the water; at these amounts it does not show.",
  );
}

const BATH_FACTS: readonly Fact[] = [
  ["Slush begins at (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["That is below zero by (K)", { states: "depression", as: "typed", decimals: 1 }],
];

/** The strong baths beside each other, kilograms. */
function strong(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  put(sheet, 0, 0, "Baths for the pop moulds (not food, gloves on)");
  const { en, de } = others.calcium;
  const salts = [line("salt", "Salz", 480), line("salt", "Salz", 840), line(en, de, 1000)];
  const mades = salts.map((salt, index) =>
    makeRecipe(random, "en", {
      ...{ en: `Tub ${index + 1}`, de: `Wanne ${index + 1}` },
      lines: [line("water", "Wasser", 4000), salt],
    }),
  );
  const amountLabel = put(sheet, 2, 0, "kg in each tub");
  const items = down(sheet, [3, 0], itemsOf(mades));
  put(sheet, 6, 0, "Brine altogether");
  mades.forEach((made, index) => {
    const column = 1 + index;
    put(sheet, 2, column, made.title);
    const plan = { items, left: 1, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, BATH_FACTS, { row: 8, column, labels: 0, items });
  });
  const per = put(sheet, 7, 0, "Salt, g to 100 g of water");
  const spots = mades.map((_, index) => {
    const [wet, salt, other] = items.map((spot) => a1({ ...spot, column: 1 + index }));
    return put(sheet, 7, 1 + index, shown(`=100*(${salt}+${other})/${wet}`, "0.0"));
  });
  kit.marked.formulaColumns.push({ spots, heading: per, fixed: [] });
}

/** Baths, and the pops that are frozen in them. */
function coolingBaths(kit: Kit): void {
  weak(kit);
  const sheet = addSheet(kit.marked.book, "Baths and pops");
  strong(kit, sheet);
  const made = kit.make(1)[0]!;
  put(sheet, 12, 0, `Into the moulds: ${made.title}`);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: 13, column: 0 },
    {
      heads: ["Pop mix", "kg"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), "0.000")],
      ...{ name: 0, amount: 1, unit: "kg", total: "Pop mix, all", format: "0.000" },
    },
  );
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, [
    {
      label: "Pop mix begins to freeze at (°C)",
      states: "freezing point",
      as: "typed",
      decimals: 1,
    },
    { label: "Dissolved in the pop mix (g)", states: "dissolved", as: "typed", decimals: 0 },
    {
      ...{ label: "Water of the pop frozen at −15 °C (%)", states: "ice of water" },
      ...{ as: "typed", temperatureC: -15, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Bite" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  putRow(sheet, 12, 5, ["Minutes in tub 2", "Core of the pop (°C)"]);
  [10, 20, 30, 40].forEach((minutes, index) => put(sheet, 13 + index, 5, minutes));
  const core = [-1, -2.5, -5, -9].map((value) => value - kit.random.whole(0, 1) / 2);
  readings(kit, sheet, { sheet: sheet.name, row: 12, column: 6 }, core);
}

/** A lab technician's baths. */
export const coolingBathSheets: readonly Layout[] = [
  {
    name: "cooling baths by hand, salts as on the jar, then pops",
    language: "en",
    build: coolingBaths,
  },
];
