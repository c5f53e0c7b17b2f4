import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { DEUTSCH, thermometer } from "./words";

const FAMILIE: Voice = {
  lead: "Für Gäste mit Allergie: da ist drin",
  honey: "Mit Honig, also nichts für Kinder unter 12 Monaten (Emil!).",
  alcohol: "Nur für Große: Alkohol, also keine Kinder, keine Schwangeren, keine Fahrer.",
  nuts: "Ganze Nüsse, daran können sich Kinder unter 5 Jahren verschlucken: Erstickungsgefahr.",
  egg: DEUTSCH.egg,
};

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "fängt an zu gefrieren bei °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser drin, alles zusammen, g", states: "water", as: "typed", decimals: 0 },
  {
    label: "im Gefrierfach (-18 °C) sind vom Wasser gefroren %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ofAlcohol(made, "reiner Alkohol, g"),
];

const WORDS = [
  "Tante Inge wollte das Rezept.",
  "Beim letzten Mal zu lange in der Maschine.",
  "Zum Geburtstag die doppelte Menge.",
  "Geht auch mit weniger Zucker, schmeckt dann aber flach.",
];

/** A recipe as it is jotted down, no headings; gives the next free row. */
function jotted(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, at: number): number {
  const stars = "★★★★★".slice(0, kit.random.whole(3, 5));
  putRow(sheet, top, 0, [`${at}. ${made.title}`, undefined, undefined, stars]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 1 + index, 0, [made.grams[index], "g", name]),
  );
  const [amounts, unitCells, names] = [0, 1, 2].map((column) => columnOf(rows, column));
  const recipe = markRecipe(kit, made, {
    ...{ names: names!, amounts: amounts!, unitCells: unitCells!, unit: "g" },
  });
  const below = say(sheet, recipe, { row: top + 1, column: 4 }, said(made));
  nameTarget(sheet, recipe, { row: below, column: 4, label: "soll sein" });
  const end = Math.max(top + 1 + rows.length, below + 1);
  const next = tellIn(sheet, recipe, { row: end, column: 0 }, FAMILIE);
  note(kit, sheet, next, 0, WORDS[at - 1]!);
  return next + 2;
}

/** The family's book, then the freezer in the cellar. */
function eisbuch(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepte");
  put(sheet, 0, 0, "Unser Eisbuch");
  const own = {
    ...{ Zucker: "Haushaltszucker", Vollmilch: "Milch 3,5 %", Filterkaffee: "Kaffee" },
    ...{ "Sahne 35 %": "Schlagsahne 35 %", "Spirituose 40 % vol": "Schnaps 40 %" },
  };
  let top = 2;
  kit.make(4).forEach((made, index) => {
    top = jotted(kit, sheet, called(made, own), top, index + 1);
  });
  const cellar = addSheet(kit.marked.book, "Truhe im Keller");
  const next = thermometer(
    kit,
    cellar,
    { row: 0, column: 0 },
    {
      heads: ["Datum", "oben (°C)", "unten (°C)"],
      lines: ["1.5.", "8.5.", "15.5.", "22.5.", "29.5."],
      from: [
        [-18, -15],
        [-22, -19],
      ],
    },
  );
  note(kit, cellar, next + 1, 0, "Im Oktober abtauen.");
  putRow(cellar, 0, 4, ["Was liegt drin", "Dosen"]);
  ["Bohnen", "Beeren", "Eis", "Suppe"].forEach((each, index) =>
    putRow(cellar, 1 + index, 4, [each, kit.random.whole(2, 9)]),
  );
}

/** A family's recipes. */
export const eisbuecher: readonly Layout[] = [
  { name: "Eisbuch der Familie, Rezepte ohne Überschriften", language: "de", build: eisbuch },
];
