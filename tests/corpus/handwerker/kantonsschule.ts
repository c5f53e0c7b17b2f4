import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { freezesAt, markRecipe, problems, say, sumOf, type Problem } from "../layouts/parts";
import { given } from "../lodgers/words";
import { listed } from "../newcomers/words";
import { perHundred } from "../recipes";
import { temperatures } from "../strollers/words";
import { SWISS, VOICE_OF_THE_ALPS, swissTitle } from "./words";

const ROWS = [
  ...[["Gelöster Stoff"], ["Masse Stoff", "g"], ["Masse Wasser", "g"], ["Molare Masse", "g/mol"]],
  ...[
    ["Teilchen pro Formeleinheit", "–"],
    ["Stoffmenge", "mol"],
    ["Molalität", "mol/kg"],
  ],
  ...[
    ["Gefrierpunktserniedrigung", "K"],
    ["Gefrierpunkt berechnet", "°C"],
  ],
  ["Gefrierpunkt gemessen", "°C"],
];

const TOP = 5;

/** A group's column; gives its cells from top to bottom. */
function group(sheet: CorpusSheet, problem: Problem, column: number, constant: Spot): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const at = (index: number): string => a1({ sheet: "", row: TOP + index, column });
  const measured = freezesAt(["water", solute.en], [waterGrams, grams]);
  const contents = [
    ...[solute.de, grams, waterGrams, shown(solute.molarMass, "0.00"), solute.particles],
    shown(`=${at(1)}/${at(3)}`, "0.0000"),
    shown(`=${at(5)}/${at(2)}*1000`, "0.000"),
    shown(`=${fixed(constant)}*${at(6)}*${at(4)}`, "0.00"),
    shown(`=-${at(7)}`, "0.00"),
    shown(measured, "0.0"),
  ];
  return contents.map((content, index) => put(sheet, TOP + index, column, content));
}

/** Groups side by side: what they weighed, what follows, what they read. */
function groups(kit: Kit, sheet: CorpusSheet): void {
  const { marked } = kit;
  put(sheet, 0, 0, "Praktikum Chemie, Klasse 2b: Salz, Zucker und der Gefrierpunkt");
  const constant = given(kit, sheet, [2, 0], ["Kf von Wasser", "K·kg/mol", 1.86, "0.00"]);
  const { list, tolerance } = problems(kit, 4);
  const heads = ROWS.map(([label, unit], index) => {
    put(sheet, TOP + index, 1, unit);
    return put(sheet, TOP + index, 0, label);
  });
  const text = `Ideal gerechnet; die Messung weicht um höchstens ${tolerance} K ab.`;
  const proviso = put(sheet, TOP + ROWS.length + 1, 0, text);
  const columns = list.map((problem, index) => {
    put(sheet, TOP - 1, 2 + index, `Gruppe ${index + 1}`);
    return group(sheet, problem, 2 + index, constant);
  });
  for (const cells of columns) {
    const [name, mass, water, molar, particles, moles, , depression, point] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles!], water: water!, constant, depression: depression! },
      ...{ freezingPoint: point!, proviso },
    });
  }
  const along = (row: number): Spot[] => columns.map((cells) => cells[row]!);
  [5, 6, 7, 8].forEach((row) =>
    marked.formulaColumns.push({
      ...{ spots: along(row), heading: heads[row]! },
      fixed: row === 7 ? [constant] : [],
    }),
  );
  temperatures(kit, heads[9]!, along(9));
  note(kit, sheet, TOP + ROWS.length + 2, 0, "Pro Gruppe ein Protokoll, Abgabe am Freitag.");
}

/** What the class eats at the end, in per cent. */
function glace(kit: Kit, sheet: CorpusSheet): void {
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), SWISS);
  put(sheet, 0, 0, `Zum Schluss: ${swissTitle(made.title)}`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    { heads: ["Zutat", "Massenanteil in %"], cells: (name, share) => [name, shown(share, "0.0")] },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Total");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  const lines = { names, amounts, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "%" });
  const next = say(sheet, recipe, { row: 3, column: 3 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Erniedrigung", inCell: "K", states: "depression", as: "typed" },
    {
      ...{ label: "Eis im Wasser bei −18 °C", inCell: "%", decimals: 0 },
      ...{ states: "ice of water", as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "gedacht als" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE_OF_THE_ALPS);
}

/** The practical and the ice after it. */
function praktikum(kit: Kit): void {
  groups(kit, addSheet(kit.marked.book, "Messwerte"));
  glace(kit, addSheet(kit.marked.book, "Glace"));
}

/** A Swiss grammar school. */
export const kantonsschulen: readonly Layout[] = [
  { name: "Kantonsschule, vier Gruppen nebeneinander", language: "de", build: praktikum },
];
