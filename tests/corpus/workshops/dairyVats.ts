import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { readings, rowsOf, WARNS } from "./words";

const known = (temperature: Spot): readonly Said[] => [
  { label: "Freezing point °C", states: "freezing point", as: "formula" },
  { label: "Lowering K", states: "depression", as: "typed", decimals: 2 },
  { label: "Water g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Sugar per 100 g water, g",
    states: "sugar per 100 g water",
    as: "formula",
    format: "0.0",
  },
  {
    ...{ label: "Water frozen in the van, %", format: "0" },
    ...{ states: "ice of water", as: "formula", temperature, temperatureC: -17 },
  },
];

interface Dairy {
  readonly sheet: CorpusSheet;
  readonly vat: Spot;
  readonly van: Spot;
}

/** A mix across the page, the total before its parts; three rows of numbers under the names. */
function mix(kit: Kit, { sheet, vat, van }: Dairy, made: MadeRecipe, top: number): void {
  put(sheet, top, 0, made.title);
  const names = putRow(sheet, top + 1, 2, made.names);
  putRow(sheet, top + 1, 0, ["Goes in", "Altogether"]);
  const amountLabel = put(sheet, top + 2, 0, "Bench batch, g");
  const amounts = putRow(sheet, top + 2, 2, made.grams);
  const total = sumOf(kit, sheet, { row: top + 2, column: 1 }, amounts);
  const [perCent, kilos] = ["Part of it, %", "Vat, kg"].map((words, at) =>
    put(sheet, top + 3 + at, 0, words),
  );
  const shares = amounts.map((spot) =>
    put(sheet, top + 3, spot.column, shown(`=${a1(spot)}/${fixed(total)}*100`, "0.0")),
  );
  const weights = shares.map((spot) =>
    put(sheet, top + 4, spot.column, shown(`=${a1(spot)}/100*${fixed(vat)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots: shares, heading: perCent!, fixed: [total] });
  kit.marked.formulaColumns.push({ spots: weights, heading: kilos!, fixed: [vat] });
  sumOf(kit, sheet, { row: top + 3, column: 1 }, shares, "0.0");
  sumOf(kit, sheet, { row: top + 4, column: 1 }, weights, "0.00");
  const alsoAmounts = [...shares, ...weights];
  const cells = { names, amounts, alsoAmounts, unit: "g", total, amountLabel } as const;
  const recipe = markRecipe(kit, made, cells);
  strip(sheet, recipe, { row: top + 6, column: 1 }, known(van));
  nameTarget(sheet, recipe, { row: top + 8, column: 0, label: "Asked for" });
  tellIn(sheet, recipe, { row: top + 8, column: 3 }, WARNS);
}

/** A farm dairy's three mixes for the vat. */
function dairy(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Mixes");
  put(sheet, 0, 0, "Hillside dairy, mixes for the pasteuriser");
  const vat = given(kit, sheet, [1, 0], ["Vat takes", "kg", kit.random.pick([40, 60, 90])]);
  const van = given(kit, sheet, [2, 0], ["Delivery van", "°C", -17]);
  const own = { "whole milk": "full-fat milk", "cream 35 % fat": "whipping cream 35 %" };
  kit.make(3).forEach((made, at) => mix(kit, { sheet, vat, van }, called(made, own), 4 + 11 * at));
  note(kit, sheet, 38, 0, "Vat is filled to the line, never over the paddle.");
  const log = addSheet(kit.marked.book, "Round");
  readings(
    kit,
    log,
    { row: 0, column: 0 },
    {
      heads: ["Stop", "Van box (°C)"],
      when: ["depart", "bakery", "farm shop", "garden centre", "pub", "home again"],
      tenths: [-186, -152],
    },
  );
  rowsOf(log, { row: 0, column: 3 }, [
    ["Tub", "£ to shops"],
    ["120 ml", shown(1.35, "0.00")],
    ["500 ml", shown(3.9, "0.00")],
    ["4 litre", shown(19.5, "0.00")],
  ]);
}

/** A farm dairy. */
export const dairyVats: readonly Layout[] = [
  { name: "farm dairy, mixes across the page for the vat", language: "en", build: dairy },
];
