import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { tellIn, type Answer } from "./columns";
import { priceOf } from "./prices";

/** One old recipe in kilograms on its own sheet; gives what it costs. */
function oldSheet(kit: Kit, made: MadeRecipe, name: string): [MarkedRecipe, Spot] {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, name);
  putRow(sheet, 0, 0, ["Rez.", made.title]);
  const heads = putRow(sheet, 2, 0, ["Rohstoff", "kg", "€/kg", "€"]);
  const rows = made.names.map((item, index) => {
    const price = shown(priceOf(random, item), "0.00");
    const amount = shown(inUnit(made.grams[index]!, "kg"), "0.000");
    return putRow(sheet, 3 + index, 0, [item, amount, price]);
  });
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const spots = rows.map(([, amount, price]) =>
    put(sheet, amount!.row, 3, shown(`=${a1(amount!)}*${a1(price!)}`, "0.00")),
  );
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  const row = 4 + rows.length;
  put(sheet, row, 0, "Zus.");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row, column: 3 }, spots, "0.00");
  const amountLabel = heads[1]!;
  return [markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total }), cost];
}

const COLUMNS: readonly Answer[] = [
  ["Gefr.-Pkt. (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["davon Wasser (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Zuckergeh. (%)", { states: "sugar share", as: "typed" }],
  [
    "ausgefr. Wasser b. −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** A recipe's line of the summary. */
function line(sheet: CorpusSheet, recipe: MarkedRecipe, cost: Spot, row: number): void {
  const { made, total } = recipe;
  const from = `'${cost.sheet}'!`;
  putRow(sheet, row, 0, [
    ...[cost.sheet, made.title, shown(`=${from}${a1(total!)}`, "0.000")],
    shown(`=${from}${a1(cost)}`, "0.00"),
  ]);
  COLUMNS.forEach(([, plan], index) => {
    const column = 4 + index;
    resultAt(sheet, recipe, { sheet: sheet.name, row: 2, column }, { row, column }, plan);
  });
  nameTarget(sheet, recipe, { row, column: 8 });
  tellIn(sheet, recipe, { row, column: 9 }, "Allergene");
}

const SPIRITS = [
  ["Rum 54 %", 54],
  ["Kirschwasser 40 %", 40],
  ["Eierlikör 20 %", 20],
  ["Weinbrand 36 %", 36],
] as const;

/** What is soaked into the ice cakes, worked out once and typed; gives the warning. */
function soaking({ marked, random }: Kit): Spot {
  const sheet = addSheet(marked.book, "Tränken");
  putRow(sheet, 0, 0, ["Spirituose", "Vol.-%", "je Eistorte (g)", "reiner Alk. (g)"]);
  SPIRITS.forEach(([name, strength], index) => {
    const poured = random.whole(20, 60);
    const share = callFunction("ABVTOMASSFRACTION", strength)[0]![0] as number;
    const pure = shown(Number((poured * share).toFixed(1)), "0.0");
    const cells = putRow(sheet, 1 + index, 0, [name, strength, poured, pure]);
    const [, abv, grams, alcohol] = cells as [Spot, Spot, Spot, Spot];
    marked.alcohols.push({ grams, abv, alcohol });
  });
  return put(sheet, 6, 0, "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.");
}

/** Sheets of the old book and a summary of them in front. */
export function oldSheets(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Zusammenst.");
  put(sheet, 0, 0, "Zusammenstellung Speiseeis, alle Rez. aus dem alten Ordner");
  putRow(sheet, 2, 0, ["Blatt", "Sorte", "Masse (kg)", "Mat.-Kosten (€)"]);
  putRow(sheet, 2, 4, [...COLUMNS.map(([label]) => label), "Verw. als", "Allerg. u. Hinweise"]);
  const mades = kit.make(4);
  const first = random.whole(3, 20);
  mades.forEach((made, index) => {
    const [recipe, cost] = oldSheet(kit, made, `Bl. ${first + 3 * index}`);
    line(sheet, recipe, cost, 3 + index);
  });
  note(kit, sheet, 9, 0, "Preise v. Januar, Großhandel. Opas Mengen a. Pfund umgerechn.");
  const warning = soaking(kit);
  for (const { flags, made } of marked.recipes) if (made.flagged) flags.push(warning);
}
