import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { DEUTSCH, single } from "./words";

const GIVEN = ["Nr.", "Stoff", "m (g)", "M (g/mol)", "z", "Wasser (g)", "Punkte"];
const SOLVED = ["Nr.", "n (mol)", "b (mol/kg)", "ΔT (K)", "Erstarrungspunkt (°C)"];

/** The exercises as they are handed out. */
function exercises(kit: Kit, sheet: CorpusSheet) {
  const { list, tolerance } = problems(kit, 5);
  put(sheet, 0, 0, "Übungsblatt 4, Chemie Q1: Gefrierpunktserniedrigung");
  putRow(sheet, 1, 0, ["z ist die Zahl der Teilchen, in die eine Formeleinheit zerfällt."]);
  const heads = putRow(sheet, 3, 0, GIVEN);
  const rows = list.map(({ solute, grams, waterGrams }, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[`${index + 1}.`, solute.de, grams, shown(solute.molarMass, "0.00")],
      ...[solute.particles, waterGrams, kit.random.whole(3, 6)],
    ]),
  );
  put(sheet, 9, 5, "zusammen");
  sumOf(kit, sheet, { row: 9, column: 6 }, columnOf(rows, 6));
  const constant = putRow(sheet, 11, 0, [
    "Kf(H2O) in K·kg/mol",
    undefined,
    shown(1.86, "0.00"),
  ])[2]!;
  return { rows, heads, constant, tolerance };
}

/** The solutions on a sheet that is not handed out. */
function solved(kit: Kit, sheet: CorpusSheet, given: ReturnType<typeof exercises>): void {
  const { rows, constant, tolerance } = given;
  put(sheet, 0, 0, "Nur für die Lehrkraft");
  const heads = putRow(sheet, 2, 0, SOLVED);
  const constantCell = calledFrom(heads[0]!, constant).replace(a1(constant), fixed(constant));
  const answers = rows.map((cells, index) => {
    const row = 3 + index;
    const [, , mass, molar, particles, water] = cells.map((spot) => calledFrom(heads[0]!, spot));
    const at = (column: number) => a1({ sheet: sheet.name, row, column });
    return putRow(sheet, row, 0, [
      `${index + 1}.`,
      shown(`=${mass}/${molar}`, "0.0000"),
      shown(`=1000*${at(1)}/${water}`, "0.000"),
      shown(`=${particles}*${constantCell}*${at(2)}`, "0.00"),
      shown(`=-${at(3)}`, "0.00"),
    ]);
  });
  [1, 2, 3, 4].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(answers, at), heading: heads[at]! },
      fixed: at === 3 ? [constant] : [],
    }),
  );
  const text = `Ideal gerechnet; die Abweichung von der Wirklichkeit beträgt hier höchstens ${tolerance} K.`;
  const proviso = put(sheet, 9, 0, text);
  rows.forEach((cells, index) => {
    const [, name, grams, molar, particles, water] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
    const [, moles, , depression, freezingPoint] = answers[index]! as [
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
    ];
    const rest = { water, constant, depression, freezingPoint, proviso };
    kit.marked.solutions.push(single({ name, grams, molar, particles, moles }, rest));
  });
  note(kit, sheet, 11, 0, "Nr. 3 hat letztes Jahr kaum jemand geschafft.");
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse in °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Das sind K unter reinem Wasser", states: "depression", as: "typed", decimals: 1 },
  {
    label: "Wasser, das im Gefrierschrank bei -18 °C Eis ist (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "gelöste Stoffe je kg Masse (g)", states: "dissolved", as: "formula", format: "0" },
];

/** What the course makes when the exercises are done. */
function project(kit: Kit, sheet: CorpusSheet): void {
  const own = { Wasser: "Leitungswasser", Zucker: "Haushaltszucker", Salz: "Kochsalz" };
  const made = called(perKilogram(kit.make(1)[0]!), own);
  putRow(sheet, 0, 0, ["Projekttag", made.title]);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Gramm für 1 kg"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    total,
    amountLabel: heads[1]!,
    unit: "g",
  });
  const next = say(sheet, recipe, { row: 2, column: 3 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "soll werden" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, DEUTSCH);
  note(
    kit,
    sheet,
    end + 4,
    0,
    "Aufgabe: Rechnet das Eis wie auf Blatt 4. Warum passt die Formel hier schlechter?",
  );
}

/** Exercises, their solutions elsewhere, and a project. */
function aufgabenblatt(kit: Kit): void {
  const { book } = kit.marked;
  const given = exercises(kit, addSheet(book, "Blatt 4"));
  solved(kit, addSheet(book, "Lösungen"), given);
  project(kit, addSheet(book, "Projekttag"));
}

/** A chemistry teacher's exercises. */
export const aufgabenblaetter: readonly Layout[] = [
  {
    name: "Chemie Q1, Übungsblatt mit Lösungen auf eigenem Blatt",
    language: "de",
    build: aufgabenblatt,
  },
];
