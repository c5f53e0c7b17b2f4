import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { oneOf } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { say, type Problem } from "../layouts/parts";
import { isAlcoholic } from "../strollers/words";
import { problemsOf, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Contains",
  honey: "Honey in this one: keep from infants under 12 months.",
  alcohol: "Alcohol in this one: over 18s only, not in pregnancy, not if driving.",
  nuts: "Whole nuts: not for under 5s, choking.",
  egg: "Raw yolk: take the custard to 71 °C, or use pasteurised.",
};

/** Lines of quantity, symbol, value and unit; gives the cells of the values. */
const quantities = (
  sheet: CorpusSheet,
  row: number,
  rows: readonly (readonly (string | number | ReturnType<typeof shown>)[])[],
): Spot[] => rows.map((cells, index) => putRow(sheet, row + index, 1, cells)[2]!);

/** One question worked down the page; gives the next free row. */
function question(kit: Kit, sheet: CorpusSheet, top: number, problem: Problem, tolerance: string) {
  const { solute, grams, waterGrams } = problem;
  const name = putRow(sheet, top, 0, ["Dissolve", undefined, undefined, solute.en])[3]!;
  const [mass, water, molar, particles, constant] = quantities(sheet, top + 1, [
    ["mass dissolved", "m", grams, "g"],
    ["mass of water", "w", waterGrams, "g"],
    ["molar mass", "M", shown(solute.molarMass, "0.00"), "g/mol"],
    ["van 't Hoff factor", "i", solute.particles, "–"],
    ["cryoscopic constant, water", "Kf", shown(1.86, "0.00"), "K kg/mol"],
  ]) as [Spot, Spot, Spot, Spot, Spot];
  put(sheet, top + 1, 0, "Known");
  put(sheet, top + 6, 0, "Work out");
  const kilos = { ...water, row: top + 6 };
  const [moles, molality, depression] = [7, 8, 9].map((step) => ({ ...water, row: top + step }));
  quantities(sheet, top + 6, [
    ["water in kilograms", "w / 1000", shown(`=${a1(water)}/1000`, "0.000"), "kg"],
    ["amount", "n = m / M", shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"), "mol"],
    ["molality", "b = n / w", shown(`=${a1(moles!)}/${a1(kilos)}`, "0.000"), "mol/kg"],
    [
      ...["lowering", "ΔT = i Kf b"],
      shown(`=${a1(particles)}*${a1(constant)}*${a1(molality!)}`, "0.00"),
      "K",
    ],
    ["freezing point", "0 − ΔT", shown(`=-${a1(depression!)}`, "0.00"), "°C"],
  ]);
  const text = `Check: tables of real solutions are within ${tolerance} K of this answer.`;
  const proviso = put(sheet, top + 11, 1, text);
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles], water },
    ...{ moles: [moles!], constant, depression: depression!, proviso },
    freezingPoint: { ...water, row: top + 10 },
  });
  return top + 13;
}

/** The mix of the tasting at the end of term, kilograms with the unit behind. */
function endOfTerm(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "End of term");
  const made = oneOf(kit, (each) => !isAlcoholic(each));
  put(sheet, 0, 0, `End of term treat: ${made.title.toLowerCase()}`);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: 2, column: 1 },
    {
      heads: ["Amount", "Unit", "What", "Who brings it"],
      cells: (name, grams, index) => [grams, "g", name, ["Mia", "Tom", "Zoe", "lab"][index % 4]],
      ...{ name: 2, amount: 0, unit: "g", units: 1, total: "all together" },
    },
  );
  put(sheet, end, 2, "g");
  const next = say(sheet, recipe, { row: end + 2, column: 3 }, [
    { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Lowering", inCell: "K", states: "depression", as: "typed" },
    { label: "Dissolved", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
    {
      ...{ label: "Frozen part of the whole mix at −16 °C", inCell: "%", states: "ice of mix" },
      ...{ as: "typed", temperatureC: -16, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Served as" });
  tellIn(sheet, recipe, { row: next + 2, column: 1 }, VOICE);
  note(kit, sheet, next + 4, 1, "Ask the canteen for the big bowl by Wednesday.");
}

/** A sixth former's working, a page for each solution. */
function pageOfWorking(kit: Kit): void {
  const solutes = ["sodium chloride", "sucrose", "potassium chloride"].map(usual);
  const { list, tolerance } = problemsOf(kit, solutes, [100, 250, 400, 500]);
  list.forEach((problem, index) => {
    const sheet = addSheet(kit.marked.book, `Sheet ${"ABC"[index]}`);
    put(sheet, 0, 0, `Colligative properties ${"ABC"[index]}, full working`);
    const next = question(kit, sheet, 2, problem, tolerance);
    note(kit, sheet, next, 1, "Show the units in every line or lose the mark.");
  });
  endOfTerm(kit);
}

/** Working shown in full. */
export const pagesOfWorking: readonly Layout[] = [
  {
    name: "sixth form, full working on a page for each solution",
    language: "en",
    build: pageOfWorking,
  },
];
