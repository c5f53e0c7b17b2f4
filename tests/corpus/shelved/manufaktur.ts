import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { usualPrice } from "../unseen/shared";
import { putList } from "./lists";
import { thermometers, worked } from "./words";

const VOICE: Voice = {
  lead: "Zutatenetikett, Allergene:",
  honey: "Honig: für Säuglinge unter 12 Monaten ungeeignet.",
  alcohol: "Alkohol: nicht an Kinder, Schwangere und Fahrende abgeben.",
  nuts: "Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Eigelb roh: 71 °C Kerntemperatur oder pasteurisiert.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  {
    ...{ label: "Eis im Becher bei −18 °C (Anteil der Masse)", states: "ice of mix", as: "typed" },
    ...{ percent: "format", temperatureC: -18 },
  },
  {
    ...{ label: "Zuckerarten in der Masse (Anteil)", states: "sugar share", as: "typed" },
    percent: "format",
  },
];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** A labelled number that formulas read. */
function asked(
  kit: Kit,
  sheet: CorpusSheet,
  row: number,
  words: readonly [string, string],
  n: number,
) {
  const [label, value] = putRow(sheet, row, 0, [words[0], n]);
  kit.marked.inputs.push({ label: label!, value: value!, bare: words[1] });
  return value!;
}

/** Share, raw material, what the batch takes of it and what that costs. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, size: Spot): Costed {
  const list = putList(sheet, made, {
    ...{ row: 5, column: 0, name: 2, amount: 1 },
    heads: ["Pos.", "Anteil", "Rohstoff", "Charge in kg", "€ je kg netto", "€ Charge"],
    cells: (item, grams, at) => [
      ...[10 * (at + 1), shown(inUnit(grams, "fraction"), "0.0%"), item, undefined],
      shown(Number(usualPrice(kit.random, made.lines[at]!.en).toFixed(2)), "0.00"),
    ],
  });
  const { names, amounts, heads, end } = list;
  const kilos = amounts.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}*${fixed(size)}`, "0.000")),
  );
  const euros = kilos.map((spot) =>
    put(sheet, spot.row, 5, shown(`=${a1(spot)}*${a1({ ...spot, column: 4 })}`, "0.00")),
  );
  worked(kit, heads[3]!, kilos, [size]);
  worked(kit, heads[5]!, euros);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  put(sheet, end, 2, "Rezept vollständig");
  sumOf(kit, sheet, { row: end, column: 3 }, kilos, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, euros, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[1]!, unit: "fraction" } as const;
  return { recipe: markRecipe(kit, made, { ...cells, alsoAmounts: kilos }), cost };
}

/** From the batch to the cup; gives the first free row. */
function cups(
  kit: Kit,
  sheet: CorpusSheet,
  row: number,
  inputs: readonly Spot[],
  cost: Spot,
): number {
  const [size, cup] = inputs as [Spot, Spot];
  const line = (at: number, label: string, formula: string, format: string) =>
    putRow(sheet, row + at, 2, [label, shown(formula, format)])[1]!;
  const count = line(0, "Becher aus der Charge", `=${a1(size)}*1000/${a1(cup)}`, "0");
  const each = line(1, "Wareneinsatz je Becher (€)", `=${a1(cost)}/${a1(count)}`, "0.00");
  const lid = putRow(sheet, row + 2, 2, ["Becher und Deckel (€)", shown(0.19, "0.00")])[1]!;
  line(3, "zusammen (€)", `=${a1(each)}+${a1(lid)}`, "0.00");
  return row + 5;
}

function costing(kit: Kit, given: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  const made = called(largestFirst(given), { Zucker: "Rübenzucker", Wasser: "Trinkwasser" });
  putRow(sheet, 0, 0, [name, undefined, made.title]);
  const size = asked(kit, sheet, 2, ["Charge (kg)", "Charge"], kit.random.pick([24, 30, 40]));
  const cup = asked(
    kit,
    sheet,
    3,
    ["Becherinhalt (g)", "Becherinhalt"],
    kit.random.pick([95, 120]),
  );
  const { recipe, cost } = shares(kit, sheet, made, size);
  const next = cups(kit, sheet, cost.row + 2, [size, cup], cost);
  const last = say(sheet, recipe, { row: next, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row: last, column: 2, label: "Produktziel" });
  tellIn(sheet, recipe, { row: last + 2, column: 2 }, VOICE);
}

/** Costing sheets, one for each article, and the cold rooms. */
function manufaktur(kit: Kit): void {
  kit.make(3).forEach((made, at) => {
    costing(kit, made, `Artikel ${410 + 5 * at}`);
  });
  const sheet = addSheet(kit.marked.book, "Lager");
  thermometers(
    kit,
    sheet,
    { row: 1, column: 1 },
    {
      heads: ["Raum", "Mo (°C)", "Mi (°C)", "Fr (°C)"],
      lines: ["Schockfroster", "TK-Zelle 1", "TK-Zelle 2"],
      ...{ from: -26, to: -19 },
    },
  );
  note(kit, sheet, 7, 1, "Zelle 2 wird im November abgetaut.");
}

/** A small maker who costs in shares. */
export const manufakturen: readonly Layout[] = [
  { name: "Manufaktur, Artikelkalkulation mit Anteilen", language: "de", build: manufaktur },
];
