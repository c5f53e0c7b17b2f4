import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { trueValue } from "../marks";
import { placesOf } from "../regulars/columns";
import type { MadeRecipe } from "../recipes";
import { itemsOf, temperatures } from "../strollers/words";
import { about, fill, toldBy } from "./own";
import { RENTNER } from "./stimmen";

const AFTER = [
  ...["Masse in g", "Gefrierpunkt gerechnet in °C", "Gefrierpunkt am Fühler in °C"],
  ...["Fühler minus gerechnet in K", "Wasser in g", "Eisanteil der Masse bei −17 °C in %"],
  ...["gedacht als", "Warnung", "Bemerkung"],
];

const REMARKS = ["gut", "zu süß", "nochmal", "Fühler spät eingesetzt", "der Nachbarin gegeben"];

/** One sample in its row; gives its sum, the formulas and the reading. */
function sample(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, heads: Spot[]) {
  const { random } = kit;
  const items = heads.slice(2, heads.length - AFTER.length);
  putRow(sheet, row, 0, [`P${row - 3}`, made.title]);
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) => put(sheet, row, 2 + item, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, row }));
  const first = 2 + items.length;
  const total = sumOf(kit, sheet, { row, column: first }, all);
  const names = at.map((item) => items[item]!);
  const amountLabel: Spot = { sheet: sheet.name, row: 1, column: 0 };
  const lines = { names, amounts, total, amountLabel, unit: "g", shared: true } as const;
  const recipe = markRecipe(kit, made, lines);
  const plans = [
    [1, { states: "freezing point", as: "formula", format: "0.0" }],
    [4, { states: "water", as: "typed", decimals: 0 }],
    [5, { states: "ice of mix", as: "typed", temperatureC: -17, decimals: 0 }],
  ] as const;
  const cells = plans.map(([step, plan]) => ({
    ...{ plan, label: heads[first + step]!, at: { row, column: first + step } },
  }));
  fill(sheet, recipe, cells, `${absolute(span(items))},${span(all)}`);
  const real = (trueValue(made, "freezing point", null) ?? -3) + random.whole(-3, 3) / 10;
  const read = put(sheet, row, first + 2, shown(Number(real.toFixed(1)), "0.0"));
  const computed = { ...read, column: first + 1 };
  const gap = put(sheet, row, first + 3, shown(`=${a1(read)}-${a1(computed)}`, "0.0"));
  nameTarget(sheet, recipe, { row, column: first + 6 });
  const words = toldBy(made, RENTNER);
  if (words !== "") recipe.flags.push(put(sheet, row, first + 7, words));
  put(sheet, row, first + 8, random.pick(REMARKS));
  return [total, computed, read, gap];
}

/** A retired instrument maker: a sample a row, reckoned and read. */
function rentner(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Proben");
  put(sheet, 0, 0, "Eisproben im Werkzeugkeller");
  put(sheet, 1, 0, "alle Zutaten in g, auf der Küchenwaage");
  const mades = kit.make(5).map((made) => about(made, 400));
  const heads = putRow(sheet, 3, 0, ["Probe", "Sorte", ...itemsOf(mades), ...AFTER]);
  const rows = mades.map((made, index) => sample(kit, sheet, made, 4 + index, heads));
  const first = heads.length - AFTER.length;
  temperatures(kit, heads[first + 2]!, columnOf(rows, 2));
  ([0, 1, 3] as const).forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[first + at]!, fixed: [] },
    }),
  );
  const mean = shown(`=AVERAGE(${span(columnOf(rows, 3))})`, "0.00");
  put(sheet, 10, first + 2, "im Mittel (K)");
  put(sheet, 10, first + 3, mean);
  note(kit, sheet, 12, 0, "Fühler vor jeder Probe im Eiswasser geprüft: 0,0 °C.");
}

export const rentnerKeller: readonly Layout[] = [
  {
    name: "Werkzeugkeller, eine Probe je Zeile, gerechnet und abgelesen",
    language: "de",
    build: rentner,
  },
];
