import { addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { oneOf } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { say } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { isAlcoholic } from "../strollers/words";
import { markUsual, others, problemsOf, readings, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Allergens on Friday:",
  honey: "Has honey in it, which babies under 12 months must not eat.",
  alcohol: "Has alcohol in it: staff only, nobody pregnant, nobody driving home.",
  nuts: "Whole nuts, children under 5 may choke.",
  egg: "Raw egg yolk: cook to 71 °C or take pasteurised yolk.",
};

const lines = (constant: Spot): Lines => ({
  label: { head: "Flask", cell: (_, __, index) => index + 1 },
  who: { head: "Pair", cell: (_, __, index) => ["AM", "KT", "JD", "RS", "LB", "NO"][index] },
  name: typed("Sweetener", ({ solute }) => solute.en),
  molar: typed("M / g mol⁻¹", molarOf),
  mass: typed("m (sweetener) / g", ({ grams }) => grams),
  water: typed("m (water) / g", ({ waterGrams }) => waterGrams),
  liquid: worked("m (water) / kg", (at) => `${at("water")}/1000`, "0.000"),
  moles: worked("n / mol", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  molality: worked("b / mol kg⁻¹", (at) => `${at("moles")}/${at("liquid")}`, "0.000"),
  particles: typed("i", particlesOf),
  depression: worked(
    "ΔT / K",
    (at) => `${fixed(constant)}*${at("molality")}*${at("particles")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("freezes at / °C", (at) => `0-${at("depression")}`, "0.00"),
  measured: typed("read in the lab / °C", (each) => shown(reading(each), "0.0")),
});

/** What the class freezes once the sums are done. */
function friday(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Friday batch");
  const made = perKilogram(oneOf(kit, (each) => !isAlcoholic(each)));
  put(sheet, 0, 0, "Friday: we churn this");
  put(sheet, 1, 0, made.title);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: 3, column: 0 },
    {
      ...{ heads: ["Weigh", "g"], cells: (name, grams) => [name, grams] },
      ...{ name: 0, amount: 1, unit: "g", total: "In the jug" },
    },
  );
  const ice = { states: "ice of water", temperatureC: -18 } as const;
  const next = say(sheet, recipe, { row: 3, column: 3 }, [
    { label: "Starts to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Below pure water by (K)", states: "depression", as: "formula" },
    { label: "All the water in it (g)", states: "water", as: "typed", decimals: 0 },
    { label: "Water turned to ice at −18 °C (%)", ...ice, as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Meant to be" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  const head = put(sheet, end + 4, 0, "Prep room freezer, 9 am (°C)");
  const values = ["Mon", "Tue", "Wed", "Thu", "Fri"].map(() => -kit.random.whole(17, 20));
  readings(kit, sheet, head, values);
}

/** Sweeteners compared flask by flask, each weighed in grams and worked in moles. */
function sugarPractical(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sweeteners");
  put(
    sheet,
    0,
    0,
    "Year 12 food science, practical 6: which sweetener lowers the freezing point most?",
  );
  const words = { label: "Kf of water / K kg mol⁻¹", bare: "Kf of water", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 0 }, { ...words, format: "0.00" });
  const solutes = [
    ...["sucrose", "glucose monohydrate", "fructose"].map(usual),
    ...[others.xylitol, others.erythritol],
    usual("sodium chloride"),
  ];
  const { list, tolerance } = problemsOf(kit, solutes, [150, 200, 250]);
  const table = grid(kit, sheet, { row: 4, column: 0 }, lines(constant), list);
  const text = `We treat every flask as an ideal solution; that is good to ${tolerance} K at these strengths.`;
  const proviso = put(sheet, table.end + 1, 0, text);
  markUsual(kit, table, list, proviso, { constant });
  putRow(sheet, table.end + 3, 0, ["Pair", "Goggles back"]);
  ["AM", "KT", "JD"].forEach((who) => putRow(sheet, sheet.cells.length, 0, [who, "yes"]));
  note(
    kit,
    sheet,
    sheet.cells.length + 1,
    0,
    "Salt goes in the last flask for comparison; nobody tastes in the lab.",
  );
  friday(kit);
}

/** A food science teacher's practical. */
export const sugarPracticals: readonly Layout[] = [
  {
    name: "food science practical, sweeteners flask by flask",
    language: "en",
    build: sugarPractical,
  },
];
