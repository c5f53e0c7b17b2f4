import { addSheet, put, shown } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Said } from "../layouts/parts";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

/** The same sample read a second time: a tenth higher or lower. */
const again = (celsius: number, index: number): number =>
  Number((celsius + (index % 2 === 0 ? 0.1 : -0.1)).toFixed(1));

/** Two readings a sample, their mean beside what the law says. */
const SAMPLES: Lines = {
  label: { head: "Probe", unit: "Nr.", cell: (_, __, index) => `P${index + 1}` },
  mass: typed("Einwaage", ({ grams }) => grams, "g"),
  name: typed("Substanz", ({ solute }) => solute.de),
  molar: typed("Molmasse", words.molarOf, "g/mol"),
  particles: typed("Ionen bzw. Moleküle", words.particlesOf),
  water: typed("Wasser", ({ waterGrams }) => waterGrams, "g"),
  constant: typed("Kf", () => shown(1.86, "0.00"), "K·kg/mol"),
  moles: worked("Stoffmenge", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  depression: worked(
    "Erniedrigung",
    (at) => `${at("constant")}*${at("moles")}*${at("particles")}*1000/${at("water")}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("Soll", (at) => `0-${at("depression")}`, "0.00", { unit: "°C" }),
  first: typed("Messung 1", (each) => shown(words.reading(each), "0.0"), "°C"),
  second: {
    ...{ head: "Messung 2", unit: "°C" },
    cell: (_, each, index) => shown(again(words.reading(each), index), "0.0"),
  },
  measured: worked("Mittel", (at) => `AVERAGE(${at("first")}:${at("second")})`, "0.00", {
    unit: "°C",
  }),
  difference: worked("Mittel − Soll", (at) => `${at("measured")}-${at("freezingPoint")}`, "0.00", {
    unit: "K",
  }),
};

const MASSE: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed" },
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    label: "Eisanteil der Masse bei −12 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** A lab assistant's list of samples, then the mix from the school kitchen that was measured, too. */
function samples(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Messreihe");
  const { list, tolerance } = problems(kit, 6);
  put(sheet, 0, 0, "Messreihe Gefrierpunkt, Praktikum Lebensmittelchemie");
  const made = grid(kit, sheet, { row: 2, column: 0 }, SAMPLES, list);
  const text = `Soll: ideale Lösung. Systematischer Fehler der Formel hier bis ${tolerance} K.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, () => ({}));
  note(kit, sheet, made.end + 2, 0, "Fühler vor jeder Probe in Eiswasser auf 0,0 °C stellen.");
  const next = addSheet(kit.marked.book, "Probe aus der Küche");
  const recipe = kit.make(1)[0]!;
  put(next, 0, 0, `Probe aus der Küche: ${recipe.title}`);
  words.ice(kit, next, recipe, {
    ...{ row: 2, column: 0, heads: ["Bestandteil", "Einwaage (g)"], total: "Summe" },
    ...{ amountFirst: true, said: MASSE, target: "Verwendung", lead: "Allergene:" },
  });
}

/** Lists of a laboratory. */
export const messreihen: readonly Layout[] = [
  { name: "Messreihe, zwei Ablesungen neben dem Soll", language: "de", build: samples },
];
