import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { markSamples } from "../benches/words";
import { note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import type { Problem, Said } from "../layouts/parts";
import { plainOf } from "../lodgers/swaps";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { VOICES } from "./voices";
import { ALCOHOLS, iceOn, lesson, readings, SALTS } from "./words";

interface Shared {
  readonly water: Spot;
  readonly constant: Spot;
}

/** Eine Spalte je Größe, die Einheit darunter. */
const lines = ({ water, constant }: Shared): Lines => ({
  label: { head: "Gruppe", cell: (_, __, index) => "ABCDEF"[index] },
  name: typed("Stoff", ({ solute }) => solute.de),
  mass: typed("Einwaage", ({ grams }) => grams, "g"),
  molar: typed("M", molarOf, "g/mol"),
  moles: worked("n", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  molality: worked("b", (at) => `${at("moles")}/(${fixed(water)}/1000)`, "0.000", {
    ...{ unit: "mol/kg", fixed: [water] },
  }),
  particles: typed("z (Teilchen)", particlesOf),
  depression: worked(
    "ΔT",
    (at) => `${at("particles")}*${at("molality")}*${fixed(constant)}`,
    "0.00",
    { unit: "K", fixed: [constant] },
  ),
  freezingPoint: worked("T(Gefr.) berechnet", (at) => `-${at("depression")}`, "0.00", {
    unit: "°C",
  }),
  measured: typed("T(Gefr.) gemessen", (each) => shown(reading(each), "0.0"), "°C"),
});

/** Was im Becher mit Eis und Salz abgelesen wurde. */
function bath(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Kältebad: 300 g zerstoßenes Eis und 100 g Streusalz");
  const heads = putRow(sheet, 2, 0, ["Zeit in min", "Bad A in °C", "Bad B in °C"]);
  [2, 4, 6, 8, 10].forEach((minutes, index) => put(sheet, 3 + index, 0, minutes));
  readings(kit, sheet, heads[1]!, { count: 5, from: -17, to: -9, cools: true });
  readings(kit, sheet, heads[2]!, { count: 5, from: -18, to: -8, cools: true });
  note(kit, sheet, 9, 0, "Bad nur mit Handschuhen umrühren, Glasstab statt Thermometer.");
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung gegen Wasser in K", states: "depression", as: "formula" },
  { label: "Wasser in 100 g Masse in g", states: "water", as: "typed", decimals: 1 },
  {
    label: "gefrorener Teil des Wassers bei −12 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** Das Eis, das im Bad gefroren wird. */
function bagIce(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis im Bad");
  const words = { Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Honig: "Blütenhonig" };
  const made = called(largestFirst(plainOf(kit)), words);
  put(sheet, 0, 0, `${made.title}, im Kältebad gerührt`);
  iceOn(kit, sheet, made, {
    ...{ row: 2, column: 0, columns: ["number", "name", "amount"], unit: "%" },
    ...{ headings: { number: "Nr.", name: "Zutat", amount: "Massenanteil in %" } },
    ...{ total: "Summe", said: SAID, target: "soll werden", voice: VOICES.kurs },
  });
}

/** Salze und Glycerin im Vergleich, das Kältebad, das Eis. */
function coldBath(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kryoskopie");
  put(sheet, 0, 0, "Chemie LK Q1: Kryoskopie, sechs Gruppen, gleiche Wassermenge");
  const waterGrams = kit.random.pick([100, 200]);
  const glycerol = ALCOHOLS[1]!;
  const solutes = [...SALTS, glycerol, ALCOHOLS[0]!];
  const { list, tolerance } = lesson(kit, solutes, [waterGrams]);
  const words = { label: "m(Wasser) in g", bare: "m(Wasser)", value: waterGrams };
  const water = input(kit, sheet, { row: 2, column: 0 }, words);
  const law = { label: "Kf(Wasser) in K·kg/mol", bare: "Kf(Wasser)", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 3, column: 0 }, law);
  const samples: readonly Problem[] = list;
  const made = grid(kit, sheet, { row: 5, column: 0 }, lines({ water, constant }), samples);
  const text = `Raoult für ideale Lösungen; bei diesen Einwaagen stimmt das auf ${tolerance} K.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { water, constant });
  note(kit, sheet, made.end + 2, 0, "Protokoll bis Donnerstag, je Gruppe eins.");
  bath(kit, addSheet(kit.marked.book, "Kältebad"));
  bagIce(kit);
}

/** Blätter eines Leistungskurses. */
export const kaeltebaeder: readonly Layout[] = [
  { name: "Chemie LK, Kryoskopie und Eis aus dem Kältebad", language: "de", build: coldBath },
];
