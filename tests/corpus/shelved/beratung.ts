import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { again, hundred } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "enthält",
  honey: "Honig, nicht unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere, Fahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, 71 °C oder pasteurisiert.",
};

const VALUES: readonly (readonly [head: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "typed" }],
  ["Erniedrigung in K", { states: "depression", as: "typed" }],
  ["H2O in g/100 g", { states: "water", as: "typed", decimals: 1 }],
  ["gelöst in g/100 g", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Zucker in g/100 g H2O", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Eis/H2O bei −12 °C in %", { states: "ice of water", as: "typed", temperatureC: -12 }],
  ["Eis/Masse bei −12 °C in %", { states: "ice of mix", as: "typed", temperatureC: -12 }],
];

/** The trials of one product: first as the client makes it, then as it was changed. */
function product(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  top: number,
  code: string,
) {
  put(sheet, top, 0, `Produkt ${code}: ${mades[0]!.title}`);
  const amountLabel = put(sheet, top + 1, 0, "Massenanteile in %");
  const names = itemsOf(mades);
  const items = putRow(sheet, top + 1, 2, names);
  const after = 2 + names.length;
  const heads = putRow(sheet, top + 1, after, [
    ...["Summe", ...VALUES.map(([head]) => head)],
    ...["Produktziel", "Auslauf in °C", "Etikett"],
  ]);
  const outlets = mades.map((made, at): Spot => {
    const row = top + 2 + at;
    putRow(sheet, row, 0, [`${code}-${at + 1}`, ["Kunde", "Muster 1", "Muster 2"][at]]);
    const recipe = alongRow(kit, sheet, made, row, {
      items,
      unit: "%",
      format: "0.0",
      amountLabel,
    });
    // A file has no number format that would hide what binary sums leave.
    put(sheet, row, after, `=ROUND(SUM(${span(recipe.all)}),1)`);
    VALUES.forEach(([, plan], column) => {
      const place = { row, column: after + 1 + column };
      resultAt(sheet, recipe, heads[1 + column]!, place, plan);
    });
    const next = after + 1 + VALUES.length;
    if (made.target !== null) recipe.targets.push(put(sheet, row, next, made.target));
    tellIn(sheet, recipe, { row, column: next + 2 }, VOICE);
    return put(sheet, row, next + 1, shown(-kit.random.whole(51, 66) / 10, "0.0"));
  });
  readings(kit, heads.at(-2)!, outlets);
  return top + 3 + mades.length;
}

/** Two clients' products and their samples, a row for each, as a file. */
function beratung(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuche");
  let row = 0;
  kit.make(2).forEach((first, at) => {
    const mades = [first, again(kit, first), again(kit, first)].map((made) =>
      called(hundred(made), { Zucker: "Kristallzucker" }),
    );
    row = product(kit, sheet, mades, row, ["K7", "K9"][at]!);
  });
  note(kit, sheet, row, 0, "Muster liegen bis Monatsende im Rückstellschrank.");
}

/** A consultant who tries recipes. */
export const beratungen: readonly Layout[] = [
  {
    ...{ name: "Rezepturberatung, Muster in Zeilen als Datei", language: "de" },
    ...{ isCsv: true, build: beratung },
  },
];
