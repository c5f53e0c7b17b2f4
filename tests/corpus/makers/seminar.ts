import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { solution } from "../solution";
import { log, UNSERE } from "./words";

/** Syrups for the shelf, their strength in both ways. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  const { marked, random } = kit;
  put(sheet, 0, 0, "Läuterzucker im Regal, zwei Arten zu rechnen");
  const heads = putRow(sheet, 2, 0, [
    "Flasche",
    "Wasser",
    "Zucker",
    "auf 100 g Wasser",
    "in 100 g Sirup",
  ]);
  putRow(sheet, 3, 1, ["g", "g", "g Zucker", "g Zucker"]);
  const rows = ["leicht", "mittel", "Bar", "kräftig", "Vorrat"].map((bottle, index) => {
    const row = 4 + index;
    const [, water, sugar] = putRow(sheet, row, 0, [
      ...[bottle, random.pick([500, 750, 1000]), 25 * random.whole(10 + 3 * index, 12 + 3 * index)],
    ]) as [Spot, Spot, Spot];
    const perWater = put(sheet, row, 3, shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0"));
    const both = `(${a1(water)}+${a1(sugar)})`;
    const share = put(sheet, row, 4, shown(`=100*${a1(sugar)}/${both}`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
  note(kit, sheet, 10, 0, "Heiß abfüllen, nach dem Öffnen in die Kühlung.");
}

/** The sum by hand, the sums of the class below it. */
function byHand(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Rechnen an der Tafel: drei Stoffe in einem Topf Wasser");
  solution(kit, sheet, {
    ...{ top: 2, left: 1, count: 3, inputsFirst: true },
    headings: [
      "gelöst",
      "Masse (g)",
      "molare Masse (g/mol)",
      "Teilchen je Formel",
      "Teilchen (mol)",
    ],
    words: {
      water: ["Topf, Wasser (g)", "Topf, Wasser"],
      constant: "kryoskopische Konstante (K·kg/mol)",
      depression: "ergibt ΔT (K)",
      freezingPoint: "also Gefrierpunkt (°C)",
      proviso: (gap) => `Gilt streng nur für sehr verdünnte Lösungen; hier auf ${gap} K genau.`,
    },
  });
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Zucker auf 100 g Wasser", inCell: "g", states: "sugar per 100 g water", as: "formula" },
  { label: "Zucker in der Masse", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Wasser gefroren, −12 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** The practical part: a list with its steps, the answers at its left foot. */
function practice(kit: Kit, sheet: CorpusSheet): void {
  const own = { "Dextrose-Monohydrat": "Glukose-Monohydrat" };
  const made = called(perKilogram(kit.make(1)[0]!), own);
  put(sheet, 0, 0, `Praxis am Nachmittag: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      ...{ heads: ["Schritt", "Gramm", "Zutat", "Gruppe holt"], name: 2, amount: 1 },
      cells: (name, grams, index) => [index + 1, grams, name, ["I", "II", "III"][index % 3]],
    },
  );
  putRow(sheet, end, 2, ["ergibt"]);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 2, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "angestrebt" });
  tellIn(sheet, recipe, { row: next + 1, column: 2 }, UNSERE);
  log(
    kit,
    sheet,
    { row: 2, column: 6 },
    {
      ...{ heads: ["Rührzeit", "Gruppe I (°C)", "Gruppe II (°C)"] },
      ...{ when: ["5 min", "10 min", "15 min", "20 min"], isFalling: true },
      ranges: [
        [-6, 4],
        [-7, 3],
      ],
    },
  );
}

/** A seminar day: syrups, the sum by hand, an ice. */
function seminar(kit: Kit): void {
  syrups(kit, addSheet(kit.marked.book, "Sirup"));
  byHand(kit, addSheet(kit.marked.book, "Tafel"));
  practice(kit, addSheet(kit.marked.book, "Praxis"));
}

/** Somebody who gives seminars on ices. */
export const seminare: readonly Layout[] = [
  { name: "Eisseminar mit Sirup, Tafelrechnung und Praxis", language: "de", build: seminar },
];
