import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { heedAt } from "./worte";

/** Lines of a symbol, its number and its unit; gives the cells of the numbers. */
const given = (sheet: CorpusSheet, row: number, lines: readonly (readonly Content[])[]): Spot[] =>
  lines.map((cells, index) => putRow(sheet, row + index, 1, cells)[1]!);

/** One exercise worked out step by step; gives the row for the next. */
function worked(kit: Kit, sheet: CorpusSheet, problem: Problem, at: number, proviso: Spot): number {
  const { solute, waterGrams, grams } = problem;
  const top = 4 + 13 * at;
  put(sheet, top, 0, `${at + 1}.`);
  put(sheet, top, 1, "Gegeben");
  const [name, mass, molar, particles, water, constant] = given(sheet, top + 1, [
    ["Stoff", solute.de],
    ["m", grams, "g"],
    ["M", shown(solute.molarMass, "0.00"), "g/mol"],
    ["i", solute.particles, "Teilchen je Formeleinheit"],
    ["m(Wasser)", waterGrams, "g"],
    ["Kf", shown(1.86, "0.00"), "K·kg/mol"],
  ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
  put(sheet, top + 7, 1, "Rechnung");
  const moles = `=${a1(mass)}/${a1(molar)}`;
  const [amount] = given(sheet, top + 8, [["n = m : M", shown(moles, "0.0000"), "mol"]]);
  const molal = `=${a1(amount!)}*1000/${a1(water)}`;
  const [molality] = given(sheet, top + 9, [
    ["b = n : m(Wasser)", shown(molal, "0.000"), "mol/kg"],
  ]);
  const law = `=${a1(constant)}*${a1(molality!)}*${a1(particles)}`;
  const [depression] = given(sheet, top + 10, [["ΔT = Kf · b · i", shown(law, "0.00"), "K"]]);
  const point = `=0-${a1(depression!)}`;
  const [freezingPoint] = given(sheet, top + 11, [["Gefrierpunkt", shown(point, "0.00"), "°C"]]);
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [amount!], water, constant, depression: depression! },
    ...{ freezingPoint: freezingPoint!, proviso },
  });
  return top + 13;
}

/** What is read off the ice of the class. */
const said = (at: Spot, temperatureC: number): readonly Said[] => [
  {
    label: "Gefrierpunkterniedrigung der Mischung",
    ...{ inCell: "K", states: "depression", as: "typed" },
  },
  { label: "Gefrierpunkt der Mischung", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Zuckeranteil", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Anteil Eis in der Mischung, im Gefrierfach", inCell: "%" },
    ...{ states: "ice of mix", as: "formula", temperature: at, temperatureC, format: "0.0" },
  },
  {
    ...{ label: "Anteil des Wassers, der im Gefrierfach gefriert", inCell: "%" },
    ...{ states: "ice of water", as: "formula", temperature: at, temperatureC, format: "0.0" },
  },
];

/** The ice of the class in shares of the mass, and grams for a box. */
function classIce(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Klasseneis");
  const [first] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(stillMet(perHundred(first!)), { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, made.title);
  const box = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Masse für alle (g)", bare: "Masse für alle", value: 50 * random.whole(16, 40) },
    },
  );
  const temperatureC = -random.whole(15, 19);
  const cold = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "Gefrierfach im Lehrerzimmer (°C)", bare: "Gefrierfach im Lehrerzimmer" },
      value: temperatureC,
    },
  );
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Zutat", "Massenanteil w", "Masse in g"],
      cells: (name, share) => [name, shown(inUnit(share, "fraction"), "0.000")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [box] },
    content: (spot) => `=${a1(spot)}*${fixed(box)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, said(cold, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Beschaffenheit" });
  heedAt(sheet, recipe, { row: next + 1, column: 0 }, "Achtung Allergiker:");
}

/** Three exercises by hand, all their results on a page. */
function byHand(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rechenbeispiele");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Gefrierpunkterniedrigung: vier Beispiele von Hand gerechnet");
  const text = `Gilt nur für verdünnte Lösungen; Abweichung vom Messwert höchstens ${tolerance} K.`;
  const proviso = put(sheet, 1, 0, text);
  list.forEach((each, at) => worked(kit, sheet, each, at, proviso));
  note(kit, sheet, 2, 0, "Zum Abschreiben ins Heft, Einheiten mitnehmen.");
  classIce(kit);
}

/** What the same teacher hands out. */
export const handouts: readonly Layout[] = [
  { name: "Physik, vier Beispiele Schritt für Schritt", language: "de", build: byHand },
];
