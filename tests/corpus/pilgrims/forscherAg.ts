import { a1, addSheet, calledFrom, fixed, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { freezesAt, markRecipe, problems, say, sumOf, type Problem } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { input } from "../page";
import { isAlcoholic, madeOf } from "../strollers/words";
import { formulaColumn, readings, warnAt } from "./words";

const HEADS = [
  ...["Nr.", "Stoff", "Wasser (g)", "Stoff (g)", "M (g/mol)", "zerfällt in Teilchen"],
  ...["n (mol)", "Teilchen (mol)", "Teilchen je kg Wasser (mol/kg)", "ΔT (K)"],
  ...["gefriert bei (°C)", "abgelesen (°C)"],
];

/** The substances with their molar masses, on a sheet of their own. */
function substances(kit: Kit, list: readonly Problem[]): Spot[] {
  const sheet = addSheet(kit.marked.book, "Stoffe");
  putRow(sheet, 0, 0, ["Stoff", "molare Masse (g/mol)", "steht im"]);
  return list.map(({ solute }, index) => {
    const where = solute.particles > 1 ? "Salzschrank" : "Küchenregal";
    const cells = [solute.de, shown(solute.molarMass, "0.00"), where];
    return putRow(sheet, 1 + index, 0, cells)[1]!;
  });
}

interface Bench {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One solution in its row, its molar mass from the other sheet. */
function solution(kit: Kit, given: Problem, row: number, mass: Spot, bench: Bench): Spot[] {
  const { solute, grams, waterGrams } = given;
  const { constant, proviso } = bench;
  const sheet = kit.marked.book.sheets[0]!;
  const [, name, water, weighed] = putRow(sheet, row, 0, [
    ...[row - 4, solute.de, waterGrams, grams],
  ]) as [Spot, Spot, Spot, Spot];
  const at = (column: number, content: string | number, format: string): Spot =>
    put(sheet, row, column, shown(content, format));
  const molar = at(4, `=${calledFrom(name, mass)}`, "0.00");
  const particles = put(sheet, row, 5, solute.particles);
  const moles = at(6, `=${a1(weighed)}/${a1(molar)}`, "0.0000");
  const counted = at(7, `=${a1(moles)}*${a1(particles)}`, "0.0000");
  const perKg = at(8, `=${a1(counted)}/(${a1(water)}/1000)`, "0.000");
  const depression = at(9, `=${a1(perKg)}*${fixed(constant)}`, "0.00");
  const freezingPoint = at(10, `=-${a1(depression)}`, "0.00");
  const read = at(11, freezesAt(["water", solute.en], [waterGrams, grams]), "0.0");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [weighed], molarMasses: [mass], particles: [particles] },
    ...{ moles: [counted], counted: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [molar, moles, counted, perKg, depression, freezingPoint, read];
}

/** What the groups weighed, worked out and read. */
function measured(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Messung");
  put(sheet, 0, 0, "Forscher-AG: Was macht Eis weich?");
  const words = { label: "Kf für Wasser (K·kg/mol)", bare: "Kf für Wasser" };
  const place = { row: 2, column: 0 };
  const constant = input(kit, sheet, place, { ...words, value: 1.86, format: "0.00" });
  const { list, tolerance } = problems(kit, 5);
  const masses = substances(kit, list);
  const heads = putRow(sheet, 4, 0, HEADS);
  const text = `Formel für ideale Lösungen, sie trifft hier auf ${tolerance} K genau.`;
  const proviso = put(sheet, 11, 0, text);
  const rows = list.map((given, index) =>
    solution(kit, given, 5 + index, masses[index]!, { constant, proviso }),
  );
  [1, 2, 3, 5].forEach((at) => formulaColumn(kit, heads[4 + at]!, rows, at));
  formulaColumn(kit, heads[9]!, rows, 4, [constant]);
  readings(kit, heads[11]!, rows, 6);
  note(kit, sheet, 12, 0, "Rührstab nicht stehen lassen, sonst friert er an.");
}

/** The ice that everyone gets at the end. */
function reward(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zum Schluss");
  const made = madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!;
  put(sheet, 0, 0, `Zum Schluss gibt es ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: 1, column: 0 },
    { heads: ["Wir brauchen", "Masse (g)"], cells: (name, grams) => [name, grams] },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 0, "alles in der Schüssel");
  const lines = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [
    { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Gelöst sind (g)", states: "dissolved", as: "typed", decimals: 0 },
    { label: "Wasser in allem zusammen (g)", states: "water", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Wir essen es" });
  warnAt(sheet, recipe, { row: next + 1, column: 0 }, "Allergien beachten, enthält:");
}

/** A science club at school. */
function club(kit: Kit): void {
  measured(kit);
  reward(kit);
}

/** Sheets of a science club. */
export const forscherAgs: readonly Layout[] = [
  { name: "Forscher-AG, Stoffe auf eigenem Blatt", language: "de", build: club },
];
