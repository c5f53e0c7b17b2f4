import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { solution } from "../solution";
import { rowsAt, thermometer, WIRT } from "./words";

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt [°C]", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Gelöstes je kg [g]", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker gesamt [%]", states: "sugar share", as: "typed", decimals: 1 },
  {
    ...{ label: "Eis in der Masse, −18 °C [%]", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** What was to be weighed, what the apprentice weighed, and the difference. */
function weighing(kit: Kit, sheet: CorpusSheet): void {
  const made = called(perKilogram(kit.make(1)[0]!), { Zucker: "Weißzucker", Eigelb: "Dotter" });
  putRow(sheet, 0, 0, ["Übung 4 – Abwiegen", undefined, made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: ["Rohstoff", "Soll [g]", "Ist [g]", "Abweichung [g]"],
      cells: (item, grams) => [item, grams, Math.max(1, grams + kit.random.whole(-1, 1))],
    },
  );
  const actual = amounts.map((spot) => ({ ...spot, column: 3 }));
  const apart = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "+0;-0;0" },
    content: (spot) => `=${a1({ ...spot, column: 3 })}-${a1(spot)}`,
  });
  put(sheet, end, 1, "Ansatz");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  sumOf(kit, sheet, { row: end, column: 3 }, actual);
  sumOf(kit, sheet, { row: end, column: 4 }, apart, "+0;-0;0");
  const lines = { names, amounts, alsoAmounts: actual, amountLabel: heads[1]!, total };
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: end + 3, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Soll-Beschaffenheit" });
  tellIn(sheet, recipe, { row: end + 1, column: 1 }, WIRT);
  put(sheet, 3, 6, "Maschine");
  ["14:00", "14:10", "14:20", "14:30"].forEach((time, index) => put(sheet, 4 + index, 6, time));
  thermometer(
    kit,
    sheet,
    { row: 3, column: 7 },
    {
      ...{ heading: "Masse [°C]", count: 4, range: [-8, -3] },
    },
  );
  note(kit, sheet, 10, 6, "Waage vor jedem Rohstoff auf null stellen");
}

const TASKS = ["Abwiegen", "Hygiene", "Fachrechnen", "Verkosten", "Protokoll"];

/** Points of three apprentices. */
function points(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Punkte", "max.", "Azubi 1", "Azubi 2", "Azubi 3"]);
  const rows = TASKS.map((task, index) => {
    const most = [20, 20, 30, 10, 20][index]!;
    const reached = [0, 1, 2].map(() => most - kit.random.whole(0, most / 2));
    return putRow(sheet, 1 + index, 0, [task, most, ...reached]).slice(1);
  });
  put(sheet, 6, 0, "erreicht");
  [0, 1, 2, 3].forEach((at) => {
    const parts: Spot[] = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: 6, column: 1 + at }, parts);
  });
  rowsAt(sheet, { row: 9, column: 0 }, [
    ["Berufsschule", "Mo + Di"],
    ["Ausbildungsnachweis abgeben", "freitags"],
  ]);
}

/** Strengths of sugar water both ways, for practice. */
function sugarWater(kit: Kit, sheet: CorpusSheet): void {
  const row = 17;
  const heads = putRow(sheet, row, 0, [
    ...["Läuterzucker", "Zucker [g]", "Wasser [g]", "g Zucker / 100 g Wasser", "Zucker [Masse-%]"],
  ]);
  const lines = ["leicht", "mittel", "schwer", "für Früchte"].map((words, index) => {
    const [, sugar, water] = putRow(sheet, row + 1 + index, 0, [
      ...[words, 50 * (2 * index + kit.random.whole(4, 5)), 500],
    ]) as [Spot, Spot, Spot];
    const ratio = shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0");
    const part = shown(`=100*${a1(sugar)}/(${a1(sugar)}+${a1(water)})`, "0.0");
    const [perWater, share] = putRow(sheet, sugar.row, 3, [ratio, part]) as [Spot, Spot];
    kit.marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) => {
    const spots = lines.map((cells) => cells[at]!);
    kit.marked.formulaColumns.push({ spots, heading: heads[3 + at]!, fixed: [] });
  });
}

/** An apprentice's exercise, the points, and trade sums. */
function ausbilder(kit: Kit): void {
  weighing(kit, addSheet(kit.marked.book, "Übung 4"));
  points(kit, addSheet(kit.marked.book, "Punkte"));
  const sheet = addSheet(kit.marked.book, "Fachrechnen");
  put(sheet, 0, 0, "Wie weit drückt das Gelöste den Gefrierpunkt?");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 3 },
    headings: ["Stoff", "Masse [g]", "M [g/mol]", "Teilchen", "n gesamt [mol]"],
    words: {
      water: ["Lösewasser [g]", "Lösewasser"],
      constant: "kryoskopische Konstante Wasser [K·kg/mol]",
      depression: "Gefrierpunkt sinkt um [K]",
      freezingPoint: "friert bei [°C]",
      proviso: (gap) => `Ideal gerechnet, stimmt bei dieser Verdünnung auf ${gap} K.`,
    },
  });
  sugarWater(kit, sheet);
}

/** Someone who trains apprentices. */
export const ausbilderBlaetter: readonly Layout[] = [
  { name: "Ausbilder, Soll und Ist beim Abwiegen", language: "de", build: ausbilder },
];
