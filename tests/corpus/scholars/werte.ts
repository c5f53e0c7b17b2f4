import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem, type Said } from "../layouts/parts";
import { freezer } from "./columns";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

const FORMULAS: Readonly<Record<string, string>> = {
  sucrose: "C12H22O11",
  "sodium chloride": "NaCl",
  fructose: "C6H12O6",
  "glucose monohydrate": "C6H12O6 · H2O",
  "potassium chloride": "KCl",
  "sodium bicarbonate": "NaHCO3",
};

/** The sheet of constants; gives the cells of Kf and of each substance. */
function constants(kit: Kit, list: readonly Problem[]) {
  const sheet = addSheet(kit.marked.book, "Werte");
  put(sheet, 0, 0, "Stoffwerte aus dem Tafelwerk");
  const constant = putRow(sheet, 1, 0, ["Kf von Wasser in K·kg/mol", shown(1.86, "0.00")])[1]!;
  putRow(sheet, 4, 0, ["Stoff", "Formel", "M in g/mol", "Teilchen je Formeleinheit"]);
  const rows = list.map(({ solute: { en, de, molarMass, particles } }, index) =>
    putRow(sheet, 5 + index, 0, [de, FORMULAS[en], shown(molarMass, "0.00"), particles]),
  );
  putRow(sheet, 5 + rows.length, 0, ["Harnstoff", "CH4N2O", shown(60.06, "0.00"), 1]);
  return { constant, rows };
}

const lines = (kf: Spot): Lines => ({
  name: typed("Lösung von", ({ solute }) => solute.de),
  mass: typed("m in g", ({ grams }) => grams),
  molar: worked("M in g/mol", (_, index) => `Werte!C${6 + index}`, "0.00"),
  particles: worked("Teilchen", (_, index) => `Werte!D${6 + index}`, "0"),
  water: typed("Wasser in g", ({ waterGrams }) => waterGrams),
  moles: worked("n in mol", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  molality: worked("b in mol/kg", (at) => `${at("moles")}/(${at("water")}/1000)`, "0.000"),
  depression: worked(
    "ΔT in K",
    (at) => `${fixed(kf)}*${at("molality")}*${at("particles")}`,
    "0.00",
    { fixed: [kf] },
  ),
  freezingPoint: worked("Gefrierpunkt in °C", (at) => `-${at("depression")}`, "0.00"),
});

const eisSaid = (at: ReturnType<typeof freezer>): readonly Said[] => [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "formula" },
  { label: "gelöste Stoffe in g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker je 100 g Wasser in g", states: "sugar per 100 g water", as: "formula" },
  {
    label: "vom Wasser im Gefrierschrank gefroren in %",
    ...{ states: "ice of water", as: "formula", ...at, format: "0" },
  },
];

/** The ice with which the lesson ends. */
function kitchen(kit: Kit): void {
  const sheet: CorpusSheet = addSheet(kit.marked.book, "Eis");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, made.title);
  const label = ["Gefrierschrank (°C)", "Gefrierschrank"] as const;
  const at = freezer(kit, sheet, { row: 1, column: 0 }, label);
  words.ice(kit, sheet, made, {
    ...{ row: 3, column: 0, heads: ["Zutat", "m in g"], total: "Gesamtmasse", saidRight: 3 },
    ...{ said: eisSaid(at), target: "Ziel", lead: "Hinweis:" },
  });
}

/** Solutions on one sheet, their constants on another. */
function apart(kit: Kit): void {
  const { list, tolerance } = problems(kit, 5);
  const { constant, rows } = constants(kit, list);
  const sheet = addSheet(kit.marked.book, "Lösungen");
  put(sheet, 0, 0, "Wann gefriert die Lösung?");
  const kf = putRow(sheet, 1, 0, ["Kf in K·kg/mol", shown("=Werte!B2", "0.00")])[1]!;
  const made = grid(kit, sheet, { row: 4, column: 0 }, lines(kf), list);
  const text = `Die Lösungen gelten als ideal; damit liegt man um höchstens ${tolerance} K daneben.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, (at) => ({
    ...{ constant, molar: rows[at]![2]!, particles: rows[at]![3]! },
  }));
  note(kit, sheet, 2, 0, "Stoffwerte nur auf dem Blatt Werte ändern.");
  kitchen(kit);
}

/** Sheets of a chemistry teacher. */
export const wertBlaetter: readonly Layout[] = [
  { name: "Lösungen, Stoffwerte auf eigenem Blatt", language: "de", build: apart },
];
