import {
  a1,
  addSheet,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { isAlcoholic, madeOf, ofAlcohol, upTo } from "../strollers/words";
import { markSample } from "./words";

const VOICE: Voice = {
  lead: "Allergens in it:",
  honey: "There is honey in it: not for babies under 12 months.",
  alcohol: "There is alcohol in it: adults only; not in pregnancy, not before driving.",
  nuts: "There are whole nuts in it: a choking hazard for under-5s.",
  egg: "There is raw yolk in it: heat to 71 °C or use pasteurised yolk.",
};

/** What is given, symbol first and unit last; gives the cells of the values. */
function known(sheet: CorpusSheet, row: number, column: number, problem: Problem): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const rows: (readonly Content[])[] = [
    [undefined, "substance", solute.en],
    ["m", "how much of it", grams, "g"],
    ["M", "molar mass", shown(solute.molarMass, "0.00"), "g/mol"],
    ["i", "pieces it falls into", solute.particles, "–"],
    ["m(w)", "water", waterGrams, "g"],
    ["Kf", "water's constant", shown(1.86, "0.00"), "K·kg/mol"],
  ];
  return rows.map((cells, index) => putRow(sheet, row + index, column, cells)[2]!);
}

/** A card: what is given, a line, what follows. */
function card(kit: Kit, sheet: CorpusSheet, column: number, problem: Problem, proviso: Spot): void {
  const letter = column === 0 ? "A" : "B";
  put(sheet, 2, column, `Problem ${letter}`);
  const [name, grams, molar, particles, water, constant] = known(sheet, 3, column, problem) as [
    ...[Spot, Spot, Spot, Spot, Spot, Spot],
  ];
  const step = (row: number, symbol: string, words: string, formula: string, unit: string): Spot =>
    putRow(sheet, row, column, [symbol, words, shown(`=${formula}`, "0.000"), unit])[2]!;
  put(sheet, 9, column, "working");
  const moles = step(
    10,
    "n",
    "particles in moles",
    `${a1(grams)}/${a1(molar)}*${a1(particles)}`,
    "mol",
  );
  const perKg = `${a1(moles)}/${a1(water)}*1000`;
  const molality = step(11, "b", "per kilogram of water", perKg, "mol/kg");
  const depression = step(12, "ΔT", "drop", `${a1(molality)}*${a1(constant)}`, "K");
  const freezingPoint = step(13, "Tf", "freezes at", `-${a1(depression)}`, "°C");
  const shared = { name, grams, molar, particles, moles, water, constant };
  markSample(kit, { ...shared, depression, freezingPoint, proviso });
}

const SAID: readonly Said[] = [
  { label: "Tf really", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "ΔT really", inCell: "K", states: "depression", as: "formula" },
  { label: "water, hidden water too", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "dissolved", inCell: "g", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "ice at −12 °C, of the whole mix", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** The ice that the law cannot do, on the same sheet to the right. */
function realIce(kit: Kit, sheet: CorpusSheet): void {
  const words = { sugar: "granulated sugar", water: "tap water", salt: "table salt" };
  const made = called(upTo(madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!, 1000), words);
  put(sheet, 2, 11, `And a real one: ${made.title.toLowerCase()}`);
  const place = { row: 3, column: 11 };
  const { heads, names, amounts, end } = listed(sheet, made, place, {
    heads: ["goes in", "g"],
    cells: (item, grams) => [item, grams],
  });
  put(sheet, end, 11, "all");
  const total = sumOf(kit, sheet, { row: end, column: 12 }, amounts);
  const cells = { names, amounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const said = [...SAID, ...ofAlcohol(made, "pure alcohol in it", "g")];
  const next = say(sheet, recipe, { row: end + 2, column: 11 }, said);
  nameTarget(sheet, recipe, { row: next, column: 11, label: "wanted" });
  tellIn(sheet, recipe, { row: next + 1, column: 11 }, VOICE);
}

/** Two worked problems beside each other, and an ice that is past the law. */
function problemCards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cards");
  put(sheet, 0, 0, "Freezing lower: two problems to copy, one to argue about");
  const { list, tolerance } = problems(kit, 2);
  const text = `A and B are weak enough for the simple law, good to ${tolerance} K here.`;
  const proviso = put(sheet, 15, 0, text);
  list.forEach((problem, index) => card(kit, sheet, 5 * index, problem, proviso));
  note(kit, sheet, 16, 0, "Cut along the blank column.");
  realIce(kit, sheet);
}

/** Cards to cut out. */
export const problemCardSheets: readonly Layout[] = [
  { name: "problem cards A and B with a real ice beside", language: "en", build: problemCards },
];
