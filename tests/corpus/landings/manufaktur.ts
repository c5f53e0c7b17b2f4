import { a1, addSheet, calledFrom, fixed, put, putRow, shown, span } from "../book";
import type { CorpusSheet, Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { priceList, type PriceList } from "./words";

const VOICE: Voice = {
  lead: "Zutatenliste hervorheben:",
  honey: "Hinweis Honig: ungeeignet für Kinder unter 12 Monaten.",
  alcohol: "Hinweis Alkohol: nicht für Kinder, Schwangere und vor dem Fahren.",
  nuts: "Hinweis ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Hinweis Eigelb: Mix auf 71 °C erhitzen, sonst nur pasteurisierte Ware.",
};

const FACTS: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "formula" },
  { label: "Wasser in 100 g", inCell: "g", states: "water", as: "formula", format: "0.0" },
  { label: "gelöst in 100 g", inCell: "g", states: "dissolved", as: "typed", decimals: 1 },
  {
    ...{ label: "vom Wasser gefroren, Lager −18 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

interface Variety {
  readonly recipe: MarkedRecipe;
  readonly perKilo: Spot;
}

/** A variety on its sheet: shares, batch and what a kilogram costs. */
function variety(kit: Kit, made: MadeRecipe, index: number, prices: PriceList): Variety {
  const sheet = addSheet(kit.marked.book, `Sorte ${String.fromCharCode(65 + index)}`);
  put(sheet, 0, 0, made.title);
  const batch = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Ansatz (kg)", bare: "Ansatz", value: kit.random.pick([8, 10, 12.5]) },
    },
  );
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Anteil %", "Ansatz kg", "€/kg", "€ in 1 kg Mix"],
      cells: (item, grams) => [item, shown(grams, "0.0")],
    },
  );
  const { heads, names, amounts, end } = list;
  const kilos = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}/100`,
  });
  names.forEach((spot, at) => {
    const price = calledFrom(spot, prices.of.get(made.names[at]!)!);
    put(sheet, spot.row, 3, shown(`=${price}`, "0.00"));
  });
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1(spot)}/100*${a1({ ...spot, column: 3 })}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, kilos, "0.000");
  const perKilo = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const cells = { names, amounts, alsoAmounts: kilos, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, FACTS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "soll sein" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  return { recipe, perKilo };
}

/** What the cups of each variety cost. */
function cups(kit: Kit, sheet: CorpusSheet, list: readonly Variety[]): void {
  put(sheet, 0, 0, "Becher, Stand nach der letzten Preisrunde");
  const heads = putRow(sheet, 2, 0, [
    ...["Sorte", "Mix €/kg", "Becher (g)", "Mix €", "Leerbecher €", "Becher €"],
  ]);
  const rows = list.map(({ recipe, perKilo }, index) => {
    const home = { sheet: sheet.name, row: 3 + index, column: 1 };
    const size = kit.random.pick([110, 320]);
    return putRow(sheet, home.row, 0, [
      ...[recipe.made.title, shown(`=${calledFrom(home, perKilo)}`, "0.00")],
      ...[size, undefined, shown(size === 110 ? 0.14 : 0.24, "0.00")],
    ]);
  });
  const mixes = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 1 })}*${a1(spot)}/1000`,
  });
  beside(kit, heads[5]!, mixes, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}+${a1({ ...spot, column: 4 })}`,
  });
  put(sheet, 4 + rows.length, 0, "Mittel aller Sorten");
  const mean = `=AVERAGE(${span(columnOf(rows, 1))})`;
  put(sheet, 4 + rows.length, 1, shown(mean, "0.00"));
  note(kit, sheet, 6 + rows.length, 0, "Leerbecher kommen zu 500 im Karton.");
}

const WORDS = { Zucker: "Rübenzucker", Salz: "Speisesalz", Vollmilch: "Vollmilch 3,5 %" };

/** Prices first, then the varieties, the cups last. */
function manufaktur(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(largestFirst(made), WORDS));
  const sheet = addSheet(kit.marked.book, "Einkaufspreise");
  put(sheet, 0, 0, "Rohstoffe, netto frei Rampe");
  const prices = priceList(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ mades, heads: ["Rohstoff", "€/kg", "Preis seit"] },
      more: () => [kit.random.pick(["Januar", "März", "Mai"])],
    },
  );
  const list = mades.map((made, index) => variety(kit, made, index, prices));
  cups(kit, addSheet(kit.marked.book, "Becher"), list);
}

/** A small producer. */
export const manufakturen: readonly Layout[] = [
  {
    name: "Eismanufaktur, Einkaufspreise, Sorten in Prozent, Becher",
    language: "de",
    build: manufaktur,
  },
];
