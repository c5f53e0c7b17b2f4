import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { solution } from "../solution";
import { readings, WARNT } from "./words";

const DRY = /sugar|sucrose|dextrose|fructose|powder|^salt|acid|inulin|nuts|pistachios|desiccated/;

const WERTE: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Absenkung", inCell: "K", states: "depression", as: "typed", decimals: 2 },
  { label: "Wasser, alles zusammen", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "davon bei −10 °C gefroren", inCell: "%", ...iceAt(-10) },
  { label: "davon bei −18 °C gefroren", inCell: "%", ...iceAt(-18) },
];

function iceAt(temperatureC: number) {
  return { states: "ice of water", as: "typed", temperatureC, decimals: 0 } as const;
}

interface Part {
  readonly lines: readonly (readonly [index: number, name: Spot, amount: Spot])[];
  readonly total: Spot;
}

/** One part of the recipe under its own heading, with its own sum. */
function part(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  words: string,
  which: number[],
  top: number,
) {
  put(sheet, top, 0, words);
  const lines = which.map((index, at) => {
    const cells = putRow(sheet, top + 1 + at, 0, [made.names[index], made.grams[index], "g"]);
    return [index, cells[0]!, cells[1]!] as const;
  });
  const row = top + 1 + lines.length;
  putRow(sheet, row, 0, [`${words} gesamt`, undefined, "g"]);
  const total = sumOf(
    kit,
    sheet,
    { row, column: 1 },
    lines.map(([, , amount]) => amount),
  );
  return { lines, total } satisfies Part;
}

/** A recipe in two parts, wet and dry; gives its marked cells. */
function rezeptur(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const all = made.lines.map((_, index) => index);
  const isDry = (index: number) => DRY.test(made.lines[index]!.en);
  const kinds = [
    ["Nasse Phase", all.filter((index) => !isDry(index))],
    ["Trockene Phase", all.filter(isDry)],
  ] as const;
  const [heading, amountLabel, , shareHead] = putRow(sheet, 2, 0, [
    ...["Komponente", "Einwaage", "Einheit", "Anteil (%)"],
  ]);
  let top = heading!.row + 1;
  const parts = kinds.map(([words, which]) => {
    const phase = part(kit, sheet, made, words, which, top);
    top = phase.total.row + 2;
    return phase;
  });
  const [wet, dry] = parts.map(({ total }) => total);
  putRow(sheet, top, 0, ["Ansatz", `=${a1(wet!)}+${a1(dry!)}`, "g"]);
  const total = { sheet: sheet.name, row: top, column: 1 };
  kit.marked.sums.push({ spot: total, parts: [wet!, dry!] });
  const lines = parts.flatMap((each) => each.lines).sort(([one], [other]) => one - other);
  const [names, amounts] = [lines.map((each) => each[1]), lines.map((each) => each[2])];
  const shares = [...amounts]
    .sort((one, other) => one.row - other.row)
    .map((spot) => {
      return put(sheet, spot.row, 3, shown(`=${a1(spot)}/${fixed(total)}*100`, "0.0"));
    });
  kit.marked.formulaColumns.push({ spots: shares, heading: shareHead!, fixed: [total] });
  const unitCells = amounts.map((spot) => ({ ...spot, column: 2 }));
  const cells = { names, amounts, unitCells, alsoAmounts: shares, unit: "g", total } as const;
  return markRecipe(kit, made, { ...cells, amountLabel: amountLabel! });
}

/** A trial's sheet, figures and temperatures at the right. */
function blatt(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Versuch ${at + 1}`);
  putRow(sheet, 0, 0, [`Versuch ${at + 1}: ${made.title}`]);
  const recipe = rezeptur(kit, sheet, made);
  const next = say(sheet, recipe, { row: 2, column: 5 }, WERTE);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Vorgabe Vertrieb" });
  readings(
    kit,
    sheet,
    { row: next + 2, column: 5 },
    {
      heads: ["Reifung", "Masse (°C)"],
      when: ["nach 2 h", "nach 4 h", "nach 12 h"],
      tenths: [21, 49],
    },
  );
  const row = recipe.total!.row + 2;
  const last = tellIn(sheet, recipe, { row, column: 0 }, WARNT);
  note(kit, sheet, last, 0, "Erst die trockene Phase vormischen, dann einrühren.");
}

/** A test kitchen's trials, and the sum that checks the instrument. */
function teststelle(kit: Kit): void {
  const own = { Saccharose: "Kristallzucker", Zucker: "Kristallzucker", Wasser: "Trinkwasser" };
  kit.make(3).forEach((made, at) => blatt(kit, called(perKilogram(made), own), at));
  const sheet = addSheet(kit.marked.book, "Prüflösung");
  put(sheet, 0, 0, "Prüflösung für das Kryoskop, von Hand gerechnet");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Stoff", "m (g)", "M (g/mol)", "Teilchen je Formel", "Teilchenmenge (mol)"],
    words: {
      water: ["Destilliertes Wasser (g)", "Destilliertes Wasser"],
      constant: "Kryoskopische Konstante (K·kg/mol)",
      depression: "Absenkung gerechnet (K)",
      freezingPoint: "Sollanzeige (°C)",
      proviso: (gap) => `Ideal gerechnet; die wirkliche Lösung liegt höchstens ${gap} K daneben.`,
    },
  });
}

/** The test kitchen of a factory. */
export const teststellen: readonly Layout[] = [
  { name: "Teststelle, nasse und trockene Phase", language: "de", build: teststelle },
];
