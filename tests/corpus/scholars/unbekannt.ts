import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems } from "../layouts/parts";
import { grid, type Lines } from "./grid";
import { mystery } from "./unknown";
import * as words from "./words";

const { typed, worked } = words;

/** What was known beforehand, each substance in its own column. */
const KNOWN: Lines = {
  name: typed("Vergleichslösung", ({ solute }) => solute.de),
  water: typed("m(H₂O)", ({ waterGrams }) => waterGrams, "g"),
  mass: typed("m(Stoff)", ({ grams }) => grams, "g"),
  molar: typed("M(Stoff)", words.molarOf, "g/mol"),
  counted: worked("n(Stoff)", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  particles: typed("zerfällt in Teilchen", words.particlesOf),
  moles: worked("n(Teilchen)", (at) => `${at("counted")}*${at("particles")}`, "0.0000", {
    unit: "mol",
  }),
  constant: typed("Kf(H₂O)", () => shown(1.86, "0.00"), "K·kg/mol"),
  depression: worked(
    "ΔT berechnet",
    (at) => `${at("constant")}*${at("moles")}/(${at("water")}/1000)`,
    "0.00",
    { unit: "K" },
  ),
  measured: typed("abgelesen", (each) => shown(words.reading(each), "0.0"), "°C"),
};

/** The weighing and the reading of the unknown, and its molar mass. */
function trial(kit: Kit, sheet: CorpusSheet, row: number, column: number, kf: Spot): void {
  const { waterGrams, grams, drop } = mystery(kit);
  const [water, mass, fall] = [waterGrams, grams, shown(drop, "0.00")].map((content, at) =>
    put(sheet, row + at, column, content),
  ) as [Spot, Spot, Spot];
  const formula = `=${a1(kf)}*${a1(mass)}*1000/(${a1(fall)}*${a1(water)})`;
  put(sheet, row + 3, column, shown(formula, "0"));
}

/** The protocol: known solutions first, then a powder without a label. */
function protocol(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Protokoll");
  const { list, tolerance } = problems(kit, 3);
  put(sheet, 0, 0, "Protokoll: Molare Masse aus der Gefrierpunktserniedrigung");
  put(sheet, 1, 0, "Teil A: Vergleichslösungen");
  const made = grid(kit, sheet, { row: 2, column: 0, across: true }, KNOWN, list);
  const text = `Ideales Verhalten vorausgesetzt, Abweichung der Rechnung unter ${tolerance} K.`;
  const proviso = put(sheet, made.end, 0, text);
  words.markEach(kit, made, proviso, () => ({}));
  const row = made.end + 2;
  put(sheet, row, 0, "Teil B: Zucker ohne Etikett");
  [
    ...[
      ["m(H₂O)", "g"],
      ["m(Probe)", "g"],
      ["ΔT gemessen", "K"],
    ],
    ["M(Probe) = Kf·m(Probe)/(ΔT·m(H₂O))", "g/mol"],
  ].forEach((cells, at) => putRow(sheet, row + 1 + at, 0, cells));
  trial(kit, sheet, row + 1, 2, made.spot("constant", 0));
  note(kit, sheet, row + 6, 0, "Auswertung: Traubenzucker, Fruchtzucker oder Haushaltszucker?");
}

/** Protocols of students. */
export const protokolle: readonly Layout[] = [
  { name: "Protokoll, Zucker ohne Etikett", language: "de", build: protocol },
];
