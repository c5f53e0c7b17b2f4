import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, problems, say, type Problem, type Said } from "../layouts/parts";
import { desk, down, linesOn } from "./desk";

/** What is given in a task. */
function givenCells(sheet: CorpusSheet, top: number, { solute, grams, waterGrams }: Problem) {
  let row = top;
  const line = (label: string, content: string | number, format?: string): Spot =>
    putRow(sheet, row++, 0, [label, format === undefined ? content : shown(content, format)])[1]!;
  return {
    name: line("Gelöster Stoff", solute.de),
    mass: line("eingewogen, in g", grams),
    water: line("in Wasser, in g", waterGrams),
    molar: line("molare Masse, in g/mol", solute.molarMass, "0.00"),
    particles: line("Teilchen je Formeleinheit", solute.particles),
  };
}

/** One task: what is given at the left, what is asked at the right. */
function task(kit: Kit, sheet: CorpusSheet, top: number, given: Problem, around: readonly Spot[]) {
  const [constant, proviso] = around as [Spot, Spot];
  const { name, mass, water, molar, particles } = givenCells(sheet, top, given);
  let row = top;
  const right = (label: string, content: string, format: string): Spot =>
    putRow(sheet, row++, 3, [label, shown(content, format)])[1]!;
  const moles = right("a) Stoffmenge, in mol", `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const perKg = `=${a1(moles)}*1000/${a1(water)}*${a1(particles)}`;
  const molality = right("b) Teilchen je kg Wasser, in mol/kg", perKg, "0.000");
  const law = `=${fixed(constant)}*${a1(molality)}`;
  const depression = right("c) Gefrierpunktserniedrigung, in K", law, "0.00");
  const freezingPoint = right("d) Gefrierpunkt, in °C", `=-${a1(depression)}`, "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
  });
}

/** A sheet of tasks with their answers, for the teacher. */
function tasks(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lösungsblatt");
  put(sheet, 0, 0, "Berufskolleg Ernährung, Lernfeld 7: Lösungsblatt für die Lehrkraft");
  const constant = putRow(sheet, 1, 0, [
    ...["kryoskopische Konstante, in K·kg/mol", shown(1.86, "0.00")],
  ])[1]!;
  const { list, tolerance } = problems(kit, 3);
  const words = `Gerechnet als ideale Lösung; zur Wirklichkeit fehlen höchstens ${tolerance} K.`;
  const proviso = put(sheet, 24, 0, words);
  list.forEach((problem, index) => {
    const top = 3 + 7 * index;
    putRow(sheet, top, 0, [`Aufgabe ${index + 1}: gegeben`, undefined, undefined, "gesucht"]);
    task(kit, sheet, top + 1, problem, [constant, proviso]);
  });
  note(kit, sheet, 25, 0, "Rechenweg mit Einheiten verlangen, zwei Punkte je Teil.");
}

const KNOWN: readonly Said[] = [
  { label: "Gefrierpunkt der Masse, in °C", states: "freezing point", as: "formula" },
  { label: "Erniedrigung gegenüber Wasser, in K", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser aus allen Zutaten, in g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Zucker auf 100 g Wasser, in g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "Anteil Eis an der Masse bei −16 °C, in %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** The ice that the class makes with it. */
function practice(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Praxis");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Fachpraxis: ${made.title}`);
  const groups = putRow(sheet, 1, 0, ["Zahl der Gruppen", random.whole(4, 7)])[1]!;
  const list = desk(kit, sheet, made, {
    ...{ row: 3, column: 0 },
    heads: ["eine Gruppe, in Gramm", "Lebensmittel", "Warenkorb, in Gramm"],
    cells: (index) => [made.grams[index], made.names[index]],
    ...{ name: 1, amount: 0, sum: "Gesamtmasse" },
  });
  const { heads, amounts, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, end, format: "0", fixed: [groups] },
    formula: (cell) => `=${cell}*${fixed(groups)}`,
  });
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" });
  const next = say(sheet, recipe, { row: 3, column: 4 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "angestrebt" });
  tell(kit, sheet, recipe, { row: end + 2, column: 0, as: "pair" });
}

function lesson(kit: Kit): void {
  tasks(kit);
  practice(kit);
}

/** Sheets of a vocational teacher. */
export const kollegs: readonly Layout[] = [
  { name: "Berufskolleg, gegeben und gesucht", language: "de", build: lesson },
];
