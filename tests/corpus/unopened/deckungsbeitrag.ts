import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { anchored, hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { DEUTSCH, pricesOf, shares } from "./words";

const ETIKETT: Voice = { ...DEUTSCH, lead: "Etikett, Allergene:" };

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt, °C", states: "freezing point", as: "formula", format: "0.00" },
  { label: "Erniedrigung, K", states: "depression", as: "formula", format: "0.00" },
  { label: "Gesamtwasser je 100 g Masse, g", states: "water", as: "typed", decimals: 1 },
  {
    label: "Eisanteil am Wasser bei -20 °C (Lagertruhe), %",
    ...{ states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  },
  { label: "Zucker je 100 g Wasser, g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
];

/** What the goods cost, each once; gives the list in which prices are looked up. */
function purchases(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): string {
  putRow(sheet, 0, 0, ["Einkauf netto, Stand Frühjahr"]);
  const heads = putRow(sheet, 2, 0, ["Ware", "EUR je kg", "Gebinde (kg)", "EUR je Gebinde"]);
  const rows = [...pricesOf(kit, mades)].map(([name, price], index) => {
    const pack = name === "Leitungswasser" ? 1 : kit.random.pick([1, 5, 10, 25]);
    return putRow(sheet, 3 + index, 0, [name, shown(price, "0.00"), pack]);
  });
  beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  return `Einkauf!${anchored(span(rows.flat().filter(({ column }) => column < 2)))}`;
}

/** The mix in per cent, its kilograms and its cost for the batch. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: string) {
  const words = { label: "Charge (kg)", bare: "Charge", value: kit.random.pick([8, 12, 20]) };
  const charge = input(kit, sheet, { row: 1, column: 0 }, words);
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Masse-%", "kg je Charge", "EUR/kg", "EUR je Charge"],
      cells: (item, share) => [item, shown(share, "0.0")],
    },
  );
  const { heads, names, amounts, end } = list;
  const plan = { sheet, format: "0.000" } as const;
  const kilos = beside(kit, heads[2]!, amounts, {
    ...{ ...plan, fixed: [charge] },
    content: (spot) => `=${a1(spot)}/100*${fixed(charge)}`,
  });
  const price = beside(kit, heads[3]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${prices},2,FALSE)`,
  });
  const costs = beside(kit, heads[4]!, kilos, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(price[index]!)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, kilos, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const cells = { names, amounts, total, alsoAmounts: kilos, amountLabel: heads[1]! };
  return { recipe: markRecipe(kit, made, { ...cells, unit: "%" }), cost, charge };
}

/** What a tub leaves; gives the next free row. */
function tub(
  kit: Kit,
  sheet: CorpusSheet,
  { recipe, cost, charge }: { recipe: MarkedRecipe; cost: Spot; charge: Spot },
): number {
  const row = recipe.total!.row + 2;
  const words = { label: "Füllgewicht Becher (g)", bare: "Füllgewicht Becher", value: 85 };
  const fill = input(kit, sheet, { row, column: 0 }, words);
  const line = (step: number, label: string, content: string | number): Spot =>
    putRow(sheet, row + step, 0, [label, shown(content, "0.00")])[1]!;
  const cup = line(1, "Becher, Deckel, Etikett (EUR)", kit.random.whole(18, 34) / 100);
  const work = line(2, "Lohn je Becher (EUR)", kit.random.whole(25, 60) / 100);
  const price = line(3, "Abgabe an Läden netto (EUR)", kit.random.whole(22, 31) / 10);
  const goods = `=${a1(cost)}/${a1(charge)}/1000*${a1(fill)}`;
  const ware = line(4, "Ware je Becher (EUR)", goods);
  line(5, "Deckungsbeitrag je Becher (EUR)", `=${a1(price)}-${a1(cup)}-${a1(work)}-${a1(ware)}`);
  return row + 7;
}

/** One kind's sheet. */
function sort(kit: Kit, made: MadeRecipe, name: string, prices: string): void {
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, ["Sorte", made.title]);
  const all = costed(kit, sheet, made, prices);
  const next = tub(kit, sheet, all);
  const below = say(sheet, all.recipe, { row: 3, column: 6 }, SAID);
  nameTarget(sheet, all.recipe, { row: below, column: 6, label: "Zielkonsistenz" });
  const end = tellIn(sheet, all.recipe, { row: next, column: 0 }, ETIKETT);
  note(kit, sheet, end + 1, 0, "Lohn gerechnet mit 2 Leuten an der Abfüllung.");
}

/** Prices on a sheet, kinds on others, and where it all goes. */
function deckungsbeitrag(kit: Kit): void {
  const { book } = kit.marked;
  const own = { Zucker: "Rübenzucker", Wasser: "Leitungswasser", Salz: "Speisesalz" };
  const mades = kit.make(3).map((made) => called(hundred(made), own));
  const prices = purchases(kit, addSheet(book, "Einkauf"), mades);
  mades.forEach((made, index) => sort(kit, made, `Sorte ${index + 1}`, prices));
  const sheet = addSheet(book, "Absatz");
  put(sheet, 0, 0, "Wohin die Becher letztes Jahr gingen");
  shares(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["Weg", "Anteil am Absatz in %"],
      parts: ["Hofläden", "Wochenmarkt", "Freibad", "Feste"],
      total: "alle",
    },
  );
}

/** A small maker's costing. */
export const deckungsbeitraege: readonly Layout[] = [
  {
    name: "Becherkalkulation mit Einkaufsliste und Deckungsbeitrag",
    language: "de",
    build: deckungsbeitrag,
  },
];
