import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { columnOf, largestFirst } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { choose, dissolved } from "../solution";
import { readings } from "../wanderers/worte";
import { about, markSamples, mix, samples, small, toleranceOf } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "Enthält Honig, für Säuglinge unter 12 Monaten ungeeignet.",
  alcohol: "Enthält Alkohol: keine Abgabe an Kinder, Schwangere, Fahrende.",
  nuts: "Ganze Nusskerne: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: Masse auf 71 °C bringen, sonst pasteurisiertes einsetzen.",
};

const BEAKER = [48.2, 51.7, 49.5, 50.1, 47.9];

/** Each pupil weighs the beaker empty and full; both stand in the columns before the difference. */
const lines = (constant: Spot): Lines => ({
  who: { head: "Azubi", cell: (_, __, at) => ["Lena", "Murat", "Jonas", "Aylin", "Pia"][at] },
  name: typed("Substanz", ({ solute }) => solute.de),
  given: { head: "Becher leer", cell: (_, __, at) => shown(BEAKER[at]!, "0.0") },
  counted: {
    head: "Becher voll",
    cell: (_, { grams }, at) => shown(Number((BEAKER[at]! + grams).toFixed(1)), "0.0"),
  },
  mass: worked("Netto", (at) => `${at("counted")}-${at("given")}`, "0.0"),
  water: typed("Wasser dazu", ({ waterGrams }) => waterGrams),
  molar: typed("Molmasse", molarOf),
  particles: typed("Teilchen", particlesOf),
  moles: worked("Stoffmenge", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  molality: worked("Molalität", (at) => `1000*${at("moles")}/${at("water")}`, "0.000"),
  depression: worked(
    "Erniedrigung",
    (at) => `${at("molality")}*${at("particles")}*${fixed(constant)}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Gefrierpunkt", (at) => `0-${at("depression")}`, "0.00"),
});

const UNITS = ["g", "g", "g", "g", "g/mol", "je Einheit", "mol", "mol/kg", "K", "°C"];

/** The units in a row of their own, from the third column on. */
const withUnits = (all: Lines): Lines =>
  Object.fromEntries(
    Object.entries(all).map(([key, line], at) => [key, { ...line, unit: UNITS[at - 2] ?? "–" }]),
  );

function weighing(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "BFS Ernährung, Fachpraxis 3. Block: Differenzwägung und Gefrierpunkt");
  const words = { label: "Kryoskopische Konstante (K·kg/mol)", bare: "Kryoskopische Konstante" };
  const place = { row: 1, column: 0 };
  const constant = input(kit, sheet, place, { ...words, value: 1.86, format: "0.00" });
  const list = samples(kit, choose(kit.random, 5, dissolved), [150, 200, 300]);
  const made = grid(kit, sheet, { row: 3, column: 0 }, withUnits(lines(constant)), list);
  const text = `Näherung als ideale Lösung, Toleranz bei der Bewertung ${toleranceOf(kit, list)} K.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  note(kit, sheet, made.end + 2, 0, "Waage vor jeder Wägung nullen, Becher trocken abstellen.");
  const row = made.end + 4;
  const heads = putRow(sheet, row, 0, ["Uhrzeit", "Tiefkühlschrank (°C)"]);
  small(
    sheet,
    { row: row + 1, column: 0 },
    ["7:45", "9:30", "11:15", "13:00"].map((time) => [time]),
  );
  readings(kit, sheet, heads[1]!, { count: 4, tenths: [-221, -182] });
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser in 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
  { label: "Zucker in der Masse", inCell: "%", states: "sugar share", as: "typed", decimals: 0 },
  {
    ...{ label: "Eisanteil der Masse bei −13 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of mix", as: "typed", temperatureC: -13 },
  },
];

/** The class ice: per cent first, the weight for the machine beside them. */
function classIce(kit: Kit, sheet: CorpusSheet): void {
  const made = largestFirst(kit.make(1)[0]!);
  put(sheet, 0, 0, `Klasseneis ${made.title}`);
  const fill = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "Füllmenge der Maschine (kg)", bare: "Füllmenge der Maschine" },
      ...{ value: kit.random.pick([1.5, 2, 2.5]), format: "0.0" },
    },
  );
  const heads = ["Rohstoff", "Masse-%", "in die Maschine (kg)"];
  const { recipe, end } = mix(
    kit,
    sheet,
    made,
    {
      ...{ row: 4, column: 0, heads, name: 0, amount: 1, unit: "%", format: "0.0" },
      ...{ cells: (item, share) => [item, shown(share, "0.0")], total: "Summe" },
    },
    (rows, total) => {
      const kilos = columnOf(rows, 1).map((spot) =>
        put(sheet, spot.row, 2, shown(`=${a1(spot)}/100*${fixed(fill)}`, "0.000")),
      );
      const heading = { sheet: sheet.name, row: 4, column: 2 };
      kit.marked.formulaColumns.push({ spots: kilos, heading, fixed: [fill] });
      const sum = put(sheet, total!.row, 2, shown(`=SUM(${span(kilos)})`, "0.000"));
      kit.marked.sums.push({ spot: sum, parts: kilos });
      return kilos;
    },
  );
  const telling = { said: SAID, target: "Verwendung", voice: VOICE };
  about(sheet, recipe, { row: end + 1, column: 0 }, telling);
  small(sheet, { row: 4, column: 5 }, [
    ["Dienst", "KW 11", "KW 12"],
    ["Spülen", "Murat", "Pia"],
    ["Maschine zerlegen", "Lena", "Jonas"],
    ["Rückstellprobe", "Aylin", "Murat"],
  ]);
}

/** A vocational school's practical lesson. */
export const waegungen: readonly Layout[] = [
  {
    ...{ name: "Berufsfachschule, Differenzwägung und Klasseneis", language: "de" },
    build: (kit) => {
      weighing(kit, addSheet(kit.marked.book, "Wägung"));
      classIce(kit, addSheet(kit.marked.book, "Klasseneis"));
    },
  },
];
