import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { block, table, voice } from "./words";

const VOICE = voice(
  "Allergene laut Zutatenverzeichnis:",
  "Honig enthalten, daher nicht für Kinder unter 12 Monaten.",
  "Alkohol enthalten: nicht an Kinder oder Schwangere abgeben, nicht vor dem Fahren.",
  "Ganze Nüsse, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  "Rohes Eigelb: zur Rose abziehen, mindestens 71 °C, oder pasteurisiert verwenden.",
);

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn [°C]", states: "freezing point", as: "formula", format: "0.0" },
  { label: "darin Wasser [g]", states: "water", as: "typed", decimals: 0 },
  { label: "davon gelöst [g]", states: "dissolved", as: "formula", format: "0" },
  {
    label: "ausgefrorenes Wasser bei −12 °C [%]",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

const OWN = {
  Zucker: "Kristallzucker",
  Vollmilch: "Milch 3,5 %",
  Zitronensaft: "Saft von Zitronen",
};

/** Points that the tables give each other. */
function tasting(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 4, 8, "Verkostung (je 0–5 Punkte)");
  putRow(sheet, 5, 8, ["Tisch", "Aussehen", "Schmelz", "Süße", "Summe"]);
  const points = () => kit.random.whole(2, 5);
  const rows = table(
    sheet,
    { row: 6, column: 8 },
    ["Ofenseite", "Fenster", "Tür", "Spüle"].map((where) => [where, points(), points(), points()]),
  );
  rows.forEach((cells, index) => {
    sumOf(kit, sheet, { row: 6 + index, column: 12 }, cells.slice(1));
  });
}

/** The list with its shares and what four places weigh in together. */
function weighing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  // What is counted has no unit that could be forgotten.
  put(sheet, 3, 0, "Arbeitsplätze");
  const places = put(sheet, 3, 1, kit.random.pick([3, 4, 6]));
  const heads = ["Pos", "Rohstoff", "Einwaage [g]", "Anteil", "alle Plätze [g]", "Kürzel"];
  return block(
    kit,
    sheet,
    made,
    { row: 5, column: 0 },
    {
      ...{ heads, name: 1, amount: 2, unit: "g", word: "Ansatz" },
      cells: (item, grams, index) => [index + 1, item, grams],
      also: ({ heads: at, amounts, end }, total) => {
        const shares = beside(kit, at[3]!, amounts, {
          ...{ sheet, format: "0.0%", fixed: [total!] },
          content: (spot) => `=${a1(spot)}/${fixed(total!)}`,
        });
        sumOf(kit, sheet, { row: end, column: 3 }, shares, "0.0%");
        const all = beside(kit, at[4]!, amounts, {
          ...{ sheet, format: "0", fixed: [places] },
          content: (spot) => `=${a1(spot)}*${fixed(places)}`,
        });
        sumOf(kit, sheet, { row: end, column: 4 }, all, "0");
        return [...shares, ...all];
      },
    },
  );
}

/** The weighing sheet of a class of confectioners, the tables' points at its right. */
function fachklasse(kit: Kit): void {
  const made = called(kit.make(1)[0]!, OWN);
  const sheet = addSheet(kit.marked.book, "KoFa 2b");
  put(sheet, 0, 0, "Lernfeld Gefrorenes: Wiegeplan");
  putRow(sheet, 1, 0, ["Produkt", made.title]);
  const { recipe, end, rows } = weighing(kit, sheet, made);
  columnOf(rows, 0).forEach(({ row }, index) => put(sheet, row, 5, ["Mi", "Jo", "Le"][index % 3]));
  tasting(kit, sheet);
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Zielkonsistenz" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  const [heads, ...fridges] = table(sheet, { row: end + 2, column: 8 }, [
    ["Messgerät", "Soll [°C]", "abgelesen [°C]"],
    ["Reifeschrank", 4, shown(3.6, "0.0")],
    ["Schockfroster", -35, shown(-33.5, "0.0")],
    ["Lagertruhe", -18, shown(-kit.random.whole(175, 195) / 10, "0.0")],
  ]);
  [1, 2].forEach((at) =>
    kit.marked.numberColumns.push({
      ...{ spots: columnOf(fridges, at), heading: heads![at]!, total: null, kind: "temperature" },
    }),
  );
  note(kit, sheet, next + 4, 0, "Waage vor jedem Rohstoff tarieren, Kürzel rechts eintragen.");
}

/** A vocational school for confectioners. */
export const fachklassen: readonly Layout[] = [
  {
    name: "Konditorenfachklasse, Wiegeplan mit Punkten der Tische",
    ...{ language: "de", build: fachklasse },
  },
];
