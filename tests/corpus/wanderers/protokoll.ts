import { addSheet, put, putRow, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { freezesAt, markRecipe } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, upTo } from "../strollers/words";
import { heedAt, readings } from "./worte";

type Row = readonly [label: string, unit: string, plan: ResultPlan, device: string];

/** What is calculated of a batch, and the device that measures it, if any does. */
const ROWS: readonly Row[] = [
  ["Gefrierpunkt", "°C", { states: "freezing point", as: "typed", decimals: 2 }, "Kryoskop"],
  ["Wasser im Ansatz", "g", { states: "water", as: "typed", decimals: 0 }, "Trockenschrank"],
  ["gelöste Trockenmasse", "g", { states: "dissolved", as: "typed", decimals: 0 }, ""],
  ["Gesamtzucker", "% der Masse", { states: "sugar share", as: "typed" }, ""],
  [
    "Eisanteil bei −10 °C, bezogen auf das Wasser",
    "%",
    { states: "ice of water", as: "typed", temperatureC: -10 },
    "",
  ],
  ["Alkohol", "g", { states: "alcohol", as: "typed", decimals: 1 }, ""],
];

/** What the device shows where there is one: near what is so. */
function shownBy(kit: Kit, { names, grams }: MadeRecipe, device: string): number | undefined {
  if (device === "Kryoskop") {
    const read = freezesAt(names, grams) + kit.random.pick([-0.03, 0.02, 0.04]);
    return Number(read.toFixed(2));
  }
  if (device === "") return undefined;
  const water = trueValue({ names, grams }, "water", null)!;
  return Math.round(water * kit.random.between(0.995, 1.005));
}

/** Calculated and measured under each other; gives the next free row. */
function compared(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, top: number): number {
  const { made } = recipe;
  let row = top;
  putRow(sheet, row++, 0, ["Größe", "gerechnet", "Einheit", "gemessen", "Gerät"]);
  for (const [label, unit, plan, device] of ROWS) {
    if (plan.states === "alcohol" && !isAlcoholic(made)) continue;
    const at = { sheet: sheet.name, row, column: 0 };
    if (!resultAt(sheet, recipe, at, { row, column: 1 }, plan)) continue;
    put(sheet, row, 0, label);
    const seen = shownBy(kit, made, device);
    putRow(sheet, row++, 2, [unit, seen, seen === undefined ? undefined : device]);
  }
  return row;
}

/** One trial mix with its readings; gives the row for the next. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  const number = `T${kit.random.whole(200, 480)}`;
  putRow(sheet, top, 0, ["Technikumsansatz", number, made.title]);
  const heads = putRow(sheet, top + 1, 0, ["Rohware", "Ist (g)", "Soll (g)", "Lieferung"]);
  const rows = made.names.map((name, index) => {
    const grams = made.grams[index]!;
    const arrived = `${kit.random.whole(1, 28)}.5.`;
    return putRow(sheet, top + 2 + index, 0, [
      name,
      grams,
      grams < 50 ? grams : 5 * Math.round(grams / 5),
      arrived,
    ]);
  });
  const [names, amounts, planned] = [0, 1, 2].map((at) => columnOf(rows, at));
  const row = top + 2 + rows.length;
  put(sheet, row, 0, "Ansatz gesamt");
  const total = put(sheet, row, 1, `=SUM(${span(amounts!)})`);
  put(sheet, row, 2, `=SUM(${span(planned!)})`);
  const plan = { unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, { names: names!, amounts: amounts!, ...plan });
  const next = compared(kit, sheet, recipe, row + 1);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Sollbeschaffenheit" });
  return heedAt(sheet, recipe, { row: next + 1, column: 0 }, "Allergene nach Spezifikation:") + 1;
}

const HARDENED = ["nach 1 h", "nach 2 h", "nach 4 h", "nach 8 h", "nach 16 h"];

/** Three trials and how the last hardened, as the laboratory's program gives them out. */
function protocol(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Protokoll");
  put(sheet, 0, 0, "Messprotokoll Technikum");
  let top = 2;
  for (const made of kit.make(3)) {
    top = trial(kit, sheet, called(upTo(made, 2500), { Zucker: "Raffinade" }), top);
  }
  const [, heading] = putRow(sheet, top, 0, ["Härtung", "Kerntemperatur (°C)"]);
  HARDENED.forEach((when, index) => put(sheet, top + 1 + index, 0, when));
  const plan = { count: HARDENED.length, tenths: [-184, -61], falling: true } as const;
  readings(kit, sheet, heading!, plan);
  note(kit, sheet, top + 7, 0, "Rückstellmuster bis Monatsende aufheben");
}

/** What a dairy's laboratory gives out as a file. */
export const protocols: readonly Layout[] = [
  {
    ...{ name: "Molkereilabor, Messprotokoll als Datei", language: "de" },
    ...{ isCsv: true, build: protocol },
  },
];
