import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { solutionRows } from "../solutionRows";
import { degrees, readings } from "./words";

const VOICE: Voice = {
  lead: "Bitte ansagen, enthält:",
  honey: "Honig, nicht an Kinder unter 12 Monaten.",
  alcohol: "Alkohol, nicht an Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren können ersticken.",
  egg: "Rohes Eigelb, die Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
};

const DAZU: readonly Said[] = [
  { label: "Gefrierpunkt der Masse (°C)", states: "freezing point", as: "formula", format: "0.00" },
  { label: "Erniedrigung gegenüber Wasser (K)", states: "depression", as: "typed", decimals: 2 },
  { label: "Wasser, auch aus den Zutaten (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Zucker je 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
];

/** The mix that the apprentices compare with the theory. */
function masse(kit: Kit, sheet: CorpusSheet): void {
  const words = { Zucker: "Kristallzucker", Wasser: "Leitungswasser" };
  const made = called(kit.make(1)[0]!, words);
  putRow(sheet, 0, 0, ["Praxis, Lehrküche 2", made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Pos.", "Rohstoff", "Einwaage (g)", "abgewogen von"],
      cells: (name, grams, index) => [
        ...[index + 1, name, grams, kit.random.pick(["Gruppe 1", "Gruppe 2", "Gruppe 3"])],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "Masse");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const cells = { names, amounts, unit: "g", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, DAZU);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Prüfung am Teller" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  const rows = [0, 10, 20, 30].map((minutes) => {
    return [minutes, degrees(kit, minutes === 0 ? 3 : -6, minutes === 0 ? 7 : -4)];
  });
  const heading = ["Minute", "Masse in der Maschine (°C)"];
  readings(kit, sheet, { row: 2, column: 6 }, { heads: heading, rows, temperatures: [1] });
  note(kit, sheet, next + 3, 0, "Fachfrage: Warum ist der Gefrierpunkt kein Punkt?");
}

/** Vocational school: five solutions, a line each, then a real mix. */
function berufsschule(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Theorie");
  put(sheet, 0, 0, "Lernfeld 8: Lösungen gefrieren tiefer als Wasser");
  put(sheet, 1, 0, "Namen:");
  solutionRows(kit, sheet, {
    ...{ top: 3, left: 0, constant: "Konstante Kf, Wasser (K·kg/mol)" },
    headings: [
      ...(["Lösung von", "m Stoff (g)", "m Wasser (g)", "M (g/mol)"] as const),
      ...(["i", "Molalität (mol/kg)", "ΔTf (K)", "Tf (°C)"] as const),
    ],
    proviso: (gap) =>
      `Rechnung für ideale Lösungen, bei diesen Einwaagen bis auf ${gap} K richtig.`,
  });
  note(kit, sheet, 13, 0, "Taschenrechner und Tafelwerk erlaubt, Ergebnisse auf zwei Stellen.");
  masse(kit, addSheet(kit.marked.book, "Praxis"));
}

/** Sheets of a vocational school. */
export const berufsschulen: readonly Layout[] = [
  { name: "Berufsschule Lernfeld 8, Lösungen und eine Masse", language: "de", build: berufsschule },
];
