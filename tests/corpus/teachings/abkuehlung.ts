import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { markEach, molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { table } from "./words";

const MINUTES = [0, 1, 2, 3, 4, 6, 8, 10, 12, 14, 16];

/** What the probe shows after some minutes: fast at first, then level where ice forms. */
const cooled = (problem: Problem, minutes: number): number => {
  const level = reading(problem);
  return Number((level + (17.4 - level) * Math.exp(-minutes / 2.3)).toFixed(1));
};

/** Both curves, minute by minute. */
function curves(kit: Kit, sheet: CorpusSheet, list: readonly Problem[]): void {
  putRow(sheet, 2, 0, ["Zeit", "Fühler A", "Fühler B"]);
  const heads = putRow(sheet, 3, 0, ["min", "°C", "°C"]);
  const rows = table(
    sheet,
    { row: 4, column: 0 },
    MINUTES.map((minutes) => [minutes, ...list.map((each) => shown(cooled(each, minutes), "0.0"))]),
  );
  [1, 2].forEach((at) => temperatures(kit, { ...heads[at]!, row: 2 }, columnOf(rows, at)));
}

/** What is known of both glasses and follows from it. */
const lines = (constant: Spot): Lines => ({
  label: { head: "Glas", unit: "Einheit", cell: (_, __, index) => "AB"[index] },
  name: typed("gelöster Stoff", ({ solute }) => solute.de),
  mass: typed("m(Stoff)", ({ grams }) => grams, "g"),
  water: typed("m(Wasser)", ({ waterGrams }) => waterGrams, "g"),
  molar: typed("M", molarOf, "g/mol"),
  particles: typed("i (Teilchenzahl je Formeleinheit)", particlesOf),
  molality: worked(
    "b = m(Stoff)/M/m(Wasser)",
    (at) => `${at("mass")}/${at("molar")}/(${at("water")}/1000)`,
    "0.000",
    { unit: "mol/kg" },
  ),
  depression: worked(
    "ΔT = i·Kf·b",
    (at) => `${at("molality")}*${at("particles")}*${fixed(constant)}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("Haltepunkt nach Rechnung", (at) => `0-${at("depression")}`, "0.00", {
    unit: "°C",
  }),
  measured: typed("Haltepunkt aus der Kurve", (each) => shown(reading(each), "0.0"), "°C"),
  difference: worked(
    "Kurve minus Rechnung",
    (at) => `${at("measured")}-${at("freezingPoint")}`,
    "0.00",
    { unit: "K" },
  ),
});

/** Two glasses cool; where the curve is level, the law is put to the test. */
function abkuehlung(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Haltepunkt");
  const { list, tolerance } = problems(kit, 2);
  put(sheet, 0, 0, "Abendgymnasium, Physik Q2: Wo bleibt die Abkühlkurve stehen?");
  curves(kit, sheet, list);
  const words = { label: "Kf(Wasser) in K·kg/mol", bare: "Kf(Wasser)", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 4 }, { ...words, format: "0.00" });
  const made = grid(kit, sheet, { row: 4, column: 4, across: true }, lines(constant), list);
  const text = `Kf gilt für verdünnte, ideale Lösungen; hier passt das auf ${tolerance} K genau.`;
  markEach(kit, made, put(sheet, made.end + 1, 4, text), () => ({ constant }));
  note(kit, sheet, made.end + 3, 0, "Rührfisch läuft durch, Fühler nicht an die Wand lehnen.");
  const dates = [
    ["Termin", "Versuch"],
    ["12.11.", "Abkühlkurven"],
    ["19.11.", "Auswertung"],
  ];
  table(sheet, { row: made.end + 5, column: 0 }, dates);
}

/** An evening school's physics course. */
export const abkuehlungen: readonly Layout[] = [
  {
    name: "Abendgymnasium, zwei Abkühlkurven mit Haltepunkt",
    ...{ language: "de", build: abkuehlung },
  },
];
