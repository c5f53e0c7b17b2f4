import { addSheet, put, shown } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Said } from "../layouts/parts";
import { ofAlcohol } from "../strollers/words";
import { shares } from "./columns";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

const AUFGABEN: Lines = {
  label: { head: "Aufgabe", cell: (_, __, index) => index + 1 },
  given: { head: "Gegeben", cell: () => undefined },
  name: typed("Stoff", ({ solute }) => solute.de),
  mass: typed("Masse Stoff", ({ grams }) => grams, "g"),
  molar: typed("molare Masse M", words.molarOf, "g/mol"),
  particles: typed("van-’t-Hoff-Faktor i", words.particlesOf),
  water: typed("Masse Wasser", ({ waterGrams }) => waterGrams, "g"),
  constant: typed("Kryoskopische Konstante Kf", () => shown(1.86, "0.00"), "K·kg/mol"),
  sought: { head: "Gesucht", cell: () => "ΔT, Gefrierpunkt" },
  worked: { head: "Lösung", cell: () => undefined },
  moles: worked("Stoffmenge n = m/M", (at) => `${at("mass")}/${at("molar")}`, "0.0000", {
    unit: "mol",
  }),
  molality: worked("Molalität b", (at) => `${at("moles")}/(${at("water")}/1000)`, "0.000", {
    unit: "mol/kg",
  }),
  depression: worked(
    "ΔT = i·Kf·b",
    (at) => `${at("particles")}*${at("constant")}*${at("molality")}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("Gefrierpunkt", (at) => `-${at("depression")}`, "0.00", { unit: "°C" }),
};

const EIS: readonly Said[] = [
  { label: "fängt an zu gefrieren bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung (K)", states: "depression", as: "formula" },
  { label: "davon Wasser (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Eisanteil der Masse bei −15 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** Three exercises beside each other, and the ice of the project day. */
function aufgaben(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Übung");
  const { list, tolerance } = problems(kit, 3);
  put(sheet, 0, 0, "Übung zur Gefrierpunktserniedrigung, drei Aufgaben");
  const made = grid(kit, sheet, { row: 2, column: 0, across: true }, AUFGABEN, list);
  const text = `Annahme: ideal verdünnte Lösung, Fehler dadurch höchstens ${tolerance} K.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, () => ({}));
  note(kit, sheet, made.end + 2, 0, "Aufgabe 3 ist Hausaufgabe.");
  const next = addSheet(kit.marked.book, "Projekttag");
  const recipe = kit.make(1)[0]!;
  put(next, 0, 0, `Am Projekttag gibt es ${recipe.title}`);
  words.ice(kit, next, recipe, {
    ...{ row: 2, column: 0, heads: ["Was", "Wie viel (g)"], total: "zusammen" },
    said: [...EIS, ...ofAlcohol(recipe, "reiner Alkohol darin (g)")],
    extra: shares(kit, next, 2, "Anteil (%)"),
    ...{ target: "soll werden", lead: "Darin sind:" },
  });
}

/** Sheets of exercises. */
export const uebungen: readonly Layout[] = [
  { name: "Übung, drei Aufgaben nebeneinander", language: "de", build: aufgaben },
];
