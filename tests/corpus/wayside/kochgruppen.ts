import { addSheet, put, putRow } from "../book";
import { tellIn } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import type { MadeRecipe } from "../recipes";
import { dissolved, solution } from "../solution";
import { lineup, readings, SCHLICHT } from "./words";

const SAID: readonly Said[] = [
  { label: "Unser Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Das sind K unter Wasser", inCell: "K", states: "depression", as: "formula" },
  { label: "Wasser insg.", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Gelöst insg.", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Wasser gefroren bei −18 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

interface Group {
  readonly made: MadeRecipe;
  readonly task: string;
  readonly remark: string;
}

/** A group's sheet: the copied one with its own change and its own sums. */
function groupSheet(kit: Kit, { made, task, remark }: Group, index: number): void {
  const sheet = addSheet(kit.marked.book, `Gr. ${index + 1}`);
  putRow(sheet, 0, 0, ["HW 8", undefined, undefined, `Gruppe ${index + 1}: ${task}`]);
  const { recipe, end } = lineup(kit, sheet, made, {
    ...{ row: 2, column: 0, heads: ["abgehakt", "Zutat", undefined, "g"], name: 1, amount: 3 },
    cells: (name, amount) => [undefined, name, undefined, amount],
    ...{ unit: "g", format: "0", total: { label: "Schüssel" } },
  });
  const next = say(sheet, recipe, { row: end + 1, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "So soll's sein" });
  tellIn(sheet, recipe, { row: next + 1, column: 1 }, SCHLICHT);
  note(kit, sheet, 1, 5, remark);
  put(sheet, 2, 5, "Nebenrechnung (nur Wasser mit zwei Stoffen)");
  solution(kit, sheet, {
    ...{ top: 3, left: 5, count: 2, from: dissolved.filter(({ en }) => en !== "sodium chloride") },
    headings: ["gelöst", "g", "g je mol", "zerfällt in (Teilchen)", "mol Teilchen"],
    words: {
      water: ["Topf Wasser (g)", "Topf Wasser"],
      constant: "Kf (K·kg/mol)",
      depression: "sinkt um (K)",
      freezingPoint: "also Gefrierpunkt (°C)",
      proviso: (gap) => `Wir tun so, als wär's ideal; stimmt hier auf ${gap} K.`,
    },
  });
}

/** Three groups of a class, each on a copy of the same sheet, then the freezer's list. */
function kochgruppen(kit: Kit): void {
  const own = { Zucker: "Haushaltszucker", Salz: "Speisesalz" };
  const base = plainOf(kit);
  const plain = sound(kit, base);
  const groups: readonly Group[] = [
    { made: base, task: "so wie im Ordner", remark: "fertig 10:50" },
    { made: changed(plain, 0.8), task: "ein Fünftel weniger Zucker", remark: "fehlt: Nele" },
    {
      made: changed(plain, 0.6, "fructose"),
      ...{ task: "Fruchtzucker statt einem Teil", remark: "zweimal neu tariert" },
    },
  ];
  groups.forEach((group, index) => {
    groupSheet(kit, { ...group, made: called(group.made, own) }, index);
  });
  const sheet = addSheet(kit.marked.book, "Truhe");
  putRow(sheet, 0, 2, ["Aushang Schulküche", "bitte jeden Tag eintragen"]);
  const heads = ["Tag", "1. Std. °C", "6. Std. °C"];
  readings(kit, sheet, { row: 3, column: 1 }, heads, ["Mo", "Di", "Mi", "Do", "Fr"], [-21, -17]);
  putRow(sheet, 3, 6, ["Küchendienst", "8a", "8b"]);
  ["Spülen", "Tische", "Müll"].forEach((duty, index) => {
    const pupils = [
      ["Nele", "Ole"],
      ["Tuan", "Mia"],
      ["Lio", "Sena"],
    ][index]!;
    putRow(sheet, 4 + index, 6, [duty, ...pupils]);
  });
}

/** Sheets of a teacher of home economics. */
export const kochgruppenBlaetter: readonly Layout[] = [
  { name: "HW 8, drei Gruppen auf kopierten Blättern", language: "de", build: kochgruppen },
];
