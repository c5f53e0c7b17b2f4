import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { reading, typed, worked } from "../scholars/words";
import { readings } from "../wanderers/worte";
import { about, markSamples, mix, series, small, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "Check the allergy list first, this one has",
  honey: "Honey in it, so nobody under 12 months.",
  alcohol: "Contains alcohol: staff tasting only, not for students or if pregnant.",
  nuts: "Whole nuts, choking risk for small children under 5.",
  egg: "Raw egg yolk: hold the mix at 71 °C first or use pasteurised.",
};

interface Known {
  readonly molar: Spot;
  readonly particles: Spot;
  readonly constant: Spot;
}

/** What is the same for all cups. */
function known(kit: Kit, sheet: CorpusSheet): Known {
  const [molar, particles] = [
    putRow(sheet, 2, 0, ["M(sucrose), g/mol", shown(342.3, "0.00")])[1]!,
    putRow(sheet, 3, 0, ["i", 1])[1]!,
  ];
  const words = { label: "K_f, K kg mol⁻¹", bare: "K_f", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 4, column: 0 }, words);
  return { molar, particles, constant };
}

const lines = ({ molar, particles, constant }: Known): Lines => ({
  label: { head: "Cup", cell: (_, __, index) => index + 1 },
  name: typed("Solute", ({ solute }) => solute.en),
  water: typed("Water / g", ({ waterGrams }) => waterGrams),
  mass: typed("Solute / g", ({ grams }) => grams),
  moles: worked("n / mol", (at) => `${at("mass")}/${fixed(molar)}`, "0.0000", { fixed: [molar] }),
  molality: worked("m / mol kg⁻¹", (at) => `${at("moles")}/(${at("water")}/1000)`, "0.000"),
  depression: worked(
    "ΔT / K",
    (at) => `${fixed(constant)}*${at("molality")}*${fixed(particles)}`,
    "0.00",
    { fixed: [constant, particles] },
  ),
  freezingPoint: worked("Predicted f.p. / °C", (at) => `0-${at("depression")}`, "0.00"),
  measured: typed("Observed f.p. / °C", (each) => shown(reading(each), "0.0")),
});

const SAID: readonly Said[] = [
  { label: "f.p. of the mix", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "ΔT of the mix", inCell: "K", states: "depression", as: "formula" },
  { label: "water in the mix", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "solids dissolved", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "of the water frozen at −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** Twice the sugar, twice the depression? Then the ice of the last lesson before the holidays. */
function cups(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cups");
  put(sheet, 0, 0, "12B practical 7: doubling the sugar");
  const same = known(kit, sheet);
  const list = series(solutes("sucrose")[0]!, 200, [40, 60, 80, 100, 120, 140]);
  const made = grid(kit, sheet, { row: 6, column: 0 }, lines(same), list);
  const text = `Ideal solution assumed; for these cups that is good to ${toleranceOf(kit, list)} K.`;
  markSamples(kit, made, list, put(sheet, made.end, 0, text), { ...same });
  note(kit, sheet, made.end + 2, 0, "Plot ΔT against m and take the gradient.");
  treat(kit, addSheet(kit.marked.book, "End of term"));
}

/** The freezer in the prep room, looked at before school. */
function freezer(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Prep room freezer", "8 am, °C"]);
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri"];
  small(
    sheet,
    { row: row + 1, column: 0 },
    days.map((day) => [day]),
  );
  readings(kit, sheet, heads[1]!, { count: 5, tenths: [-212, -176] });
}

function treat(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar" });
  put(sheet, 0, 0, `${made.title}, made in the food room (never in the lab)`);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{ row: 2, column: 0, heads: ["what", "how much"], name: 0, amount: 1, unitColumn: 2 },
    ...{ cells: (item, grams) => [item, grams, "g"], total: "all of it" },
  });
  about(sheet, recipe, { row: 2, column: 4 }, { said: SAID, target: "should be", voice: VOICE });
  freezer(kit, sheet, Math.max(end, 11) + 2);
}

/** Sheets of a sixth form's chemistry teacher. */
export const sugarCups: readonly Layout[] = [
  { name: "12B practical, six cups of sugar water", language: "en", build: cups },
];
