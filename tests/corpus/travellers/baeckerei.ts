import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { about } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { costOfKilo, pair, sayAll } from "./words";

const HEADS = ["Pos.", "Zutat", "Preis (€/kg)", "Ansatz (kg)", "Wert (€)"];

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt des Ansatzes (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Eis in der Masse bei −14 °C (% der Masse)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "Zucker, % der Masse", states: "sugar share", as: "typed" },
  { label: "Wasser im Ansatz, alles zusammen (g)", states: "water", as: "typed", decimals: 0 },
];

/** What the shop pays; gives the cell with the price of a kilogram by the ingredient's name. */
function purchases(kit: Kit, mades: readonly MadeRecipe[]): ReadonlyMap<string, Spot> {
  const sheet = addSheet(kit.marked.book, "Einkauf");
  put(sheet, 0, 0, "Einkaufspreise netto, Stand Mai");
  putRow(sheet, 1, 0, ["Artikel", "€ je kg", "geprüft im"]);
  const lines = new Map(
    mades.flatMap(({ lines, names }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  return new Map(
    [...lines].map(([name, en], index) => {
      const month = kit.random.pick(["März", "April", "Mai"]);
      const price = shown(costOfKilo(kit, en), "0.00");
      return [name, putRow(sheet, 2 + index, 0, [name, price, month])[1]!];
    }),
  );
}

/** From the batch to the price on the board, right of the list. */
function toTheBoard(kit: Kit, sheet: CorpusSheet, mass: Spot, money: Spot): void {
  const { random } = kit;
  const at = (row: number, label: string, bare: string, value: number) =>
    input(kit, sheet, { row, column: 6 }, { label, bare, value });
  const cup = at(2, "Becher (g)", "Becher", random.pick([90, 110, 120]));
  const loss = at(3, "Schwund (%)", "Schwund", random.whole(3, 8));
  const markUp = pair(sheet, 4, 6, "Aufschlag, mal", random.pick([5, 5.5, 6]));
  const vat = at(5, "Mehrwertsteuer (%)", "Mehrwertsteuer", 7);
  const count = `=${a1(mass)}*1000*(1-${a1(loss)}/100)/${a1(cup)}`;
  const cups = pair(sheet, 6, 6, "Becher aus einem Ansatz", shown(count, "0"));
  const goods = pair(sheet, 7, 6, "Ware je Becher (€)", shown(`=${a1(money)}/${a1(cups)}`, "0.00"));
  const price = `=${a1(goods)}*${a1(markUp)}*(1+${a1(vat)}/100)`;
  pair(sheet, 8, 6, "Preis an der Tafel (€)", shown(price, "0.00"));
}

type Prices = ReadonlyMap<string, Spot>;

/** The lines of an ice with their prices and what they come to. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: Prices): MarkedRecipe {
  const home = { sheet: sheet.name, row: 0, column: 0 };
  const plan = {
    ...{ heads: HEADS, name: 1, amount: 3 },
    cells: (name: string, grams: number, index: number) => {
      const price = shown(`=${calledFrom(home, prices.get(name)!)}`, "0.00");
      return [index + 1, name, price, shown(inUnit(grams, "kg"), "0.000")];
    },
  };
  const { heads, rows, names, amounts, end } = listed(sheet, made, { row: 2, column: 0 }, plan);
  const values = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(rows[index]![2]!)}`,
  });
  put(sheet, end, 1, "Summe Ansatz");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.000");
  const money = sumOf(kit, sheet, { row: end, column: 4 }, values, "0.00");
  toTheBoard(kit, sheet, total, money);
  const perKilo = shown(`=${a1(money)}/${fixed(total)}`, "0.00");
  putRow(sheet, end + 1, 1, ["das Kilo kostet (€)", undefined, undefined, perKilo]);
  return markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel: heads[3]!, total });
}

/** One ice of the bakery, costed. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: Prices): void {
  put(sheet, 0, 0, `Kalkulation ${made.title}`);
  const recipe = lines(kit, sheet, made, prices);
  sayAll(
    kit,
    sheet,
    recipe,
    { row: 10, column: 6 },
    {
      ...{ said: SAID, target: "Konsistenz", lead: "Schild: enthält" },
      tellAt: { row: recipe.total!.row + 3, column: 0 },
      note: "Preise vor der Saison mit den Rechnungen vergleichen.",
    },
  );
}

/** Three ices of a bakery and what their ingredients cost. */
function bakery(kit: Kit): void {
  const words = { Zucker: "Haushaltszucker", Salz: "Speisesalz" };
  const mades = kit.make(3).map((made) => called(about(made, 4000), words));
  const prices = purchases(kit, mades);
  mades.forEach((made, index) =>
    costed(kit, addSheet(kit.marked.book, `Eis ${index + 1}`), made, prices),
  );
}

/** A bakery that sells ice in the summer. */
export const baeckereien: readonly Layout[] = [
  { name: "Bäckerei, Sommereis bis zum Tafelpreis", language: "de", build: bakery },
];
