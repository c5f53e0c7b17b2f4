import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, problems, say, type Problem, type Said } from "../layouts/parts";
import { columnOf, perKilogram } from "../kitchens/hand";
import { lineRows, summed } from "./shared";

const STEPS = [
  ["Gelöster Stoff", undefined],
  ["Masse des Stoffs in g", "m"],
  ["Masse des Wassers in g", "m(Wasser)"],
  ["Molare Masse in g/mol", "M"],
  ["Teilchen je Formeleinheit", "i"],
  ["Kryoskopische Konstante in K·kg/mol", "Kf"],
  ["Stoffmenge in mol", "n = m : M"],
  ["Teilchen in mol", "n · i"],
  ["Molalität der Teilchen in mol/kg", "b = n · i : m(Wasser)"],
  ["Gefrierpunktserniedrigung in K", "ΔT = Kf · b"],
  ["Gefrierpunkt in °C", "0 − ΔT"],
] as const;

/** One beaker down its column; gives its cells from the solute to the freezing point. */
function beaker(sheet: CorpusSheet, column: number, problem: Problem): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const given = [
    ...[solute.de, grams, waterGrams, shown(solute.molarMass, "0.00"), solute.particles],
    shown(1.86, "0.00"),
  ];
  const cells = given.map((content, step) => put(sheet, 3 + step, column, content));
  const [, mass, water, molar, particles, constant] = cells.map(a1);
  const next = (formula: string, format: string): string => {
    cells.push(put(sheet, 3 + cells.length, column, shown(formula, format)));
    return a1(cells.at(-1)!);
  };
  const moles = next(`=${mass!}/${molar!}`, "0.0000");
  const all = next(`=${moles}*${particles!}`, "0.0000");
  const molality = next(`=${all}/(${water!}/1000)`, "0.000");
  const depression = next(`=${constant!}*${molality}`, "0.00");
  next(`=-${depression}`, "0.00");
  return cells;
}

/** Three beakers beside each other, the formula of every step between words and numbers. */
function beakers(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Arbeitsblatt");
  put(sheet, 0, 0, "Arbeitsblatt 8: Warum gefriert Zuckerwasser später?");
  putRow(sheet, 2, 0, ["Größe", "Formel", "Becherglas 1", "Becherglas 2", "Becherglas 3"]);
  STEPS.forEach((step, index) => putRow(sheet, 3 + index, 0, step));
  const { list, tolerance } = problems(kit, 3);
  const text = `Gilt für dünne Lösungen; diese hier stimmen auf ${tolerance} K.`;
  const proviso = put(sheet, 15, 0, text);
  list.forEach((problem, index) => {
    const cells = beaker(sheet, 2 + index, problem);
    const [name, mass, water, molar, particles, constant, , moles] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles!], water: water!, constant: constant!, proviso },
      ...{ depression: cells[9]!, freezingPoint: cells[10]! },
    });
  });
  note(kit, sheet, 16, 0, "Erst schätzen, dann rechnen, dann messen!");
}

/** Sugar waters of rising strength, both ways of saying how strong. */
function sugarWaters({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Zuckerwasser");
  put(sheet, 0, 0, "Anteil an der Lösung oder auf das Wasser bezogen?");
  const heads = putRow(sheet, 2, 0, [
    ...["Probe", "Zucker (g)", "Wasser (g)", "Massenanteil (%)", "g Zucker auf 100 g Wasser"],
  ]);
  const rows = ["A", "B", "C", "D"].map((probe, index) => {
    const amounts = [30 + 40 * index + 5 * random.whole(0, 5), 10 * random.whole(15, 25)];
    const [, sugar, water] = putRow(sheet, 3 + index, 0, [probe, ...amounts]) as [Spot, Spot, Spot];
    const [top, below] = [a1(sugar), a1(water)];
    const share = put(sheet, 3 + index, 3, shown(`=${top}/(${top}+${below})*100`, "0.0"));
    const perWater = put(sheet, 3 + index, 4, shown(`=${top}/${below}*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt unserer Masse (°C)", states: "freezing point", as: "typed" },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "typed" },
  { label: "gelöste Stoffe (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "bei −18 °C gefrorenes Wasser (% des Wassers)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The ice that the class makes afterwards. */
function afterwards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis für alle");
  const made = perKilogram(kit.make(1)[0]!);
  put(sheet, 0, 0, `Zum Schluss machen wir ${made.title}`);
  const heads = putRow(sheet, 2, 0, ["Wir brauchen", "Gramm"]);
  const rows = lineRows(sheet, { row: 3, column: 0 }, made, (index) => [
    ...[made.names[index], made.grams[index]],
  ]);
  const list = summed(kit, sheet, rows, { name: 0, amount: 1, heads, word: "zusammen" });
  const recipe = markRecipe(kit, made, { ...list, unit: "g" });
  const next = say(sheet, recipe, { row: list.total.row + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Wir wollen" });
  tell(kit, sheet, recipe, { row: next + 2, column: 0, as: "sentence" });
}

/** Class sheets in German by the ideal law. */
export const worksheets: readonly Layout[] = [
  {
    ...{ name: "Arbeitsblatt mit Formelspalte und Eis für alle", language: "de" },
    build: (kit) => {
      beakers(kit);
      sugarWaters(kit);
      afterwards(kit);
    },
  },
];
