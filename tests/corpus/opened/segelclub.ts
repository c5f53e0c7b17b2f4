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
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf } from "../layouts/parts";
import { List } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { usualPrice } from "../unseen/shared";
import { about, declare, readings } from "./own";
import { VEREIN } from "./stimmen";

interface Sorte {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** A flavour on its own sheet. */
function sorte(kit: Kit, made: MadeRecipe): Sorte {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, `Rezept ${made.title}`);
  const list = new List(kit, sheet, made, {
    ...{ top: 2, left: 0, unit: "g", total: "Ansatz gesamt" },
    columns: ["number", "name", "amount", "price", "cost"],
    headings: {
      ...{ number: "Nr.", name: "Zutat", amount: "Gramm" },
      ...{ price: "€ je kg", cost: "Kosten in €" },
    },
    priceOf: (_, index) => shown(usualPrice(random, made.lines[index]!.en), "0.00"),
  });
  const { recipe, totalRow } = list;
  const next = say(sheet, recipe, { row: totalRow + 2, column: 1 }, [
    { label: "Gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser darin (g)", states: "water", as: "formula", format: "0" },
    { label: "Zucker je 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Soll sein" });
  declare(sheet, recipe, { row: next + 2, column: 0 }, VEREIN);
  return { recipe, cost: { sheet: sheet.name, row: totalRow, column: 4 } };
}

const HEADS = [
  ...["Sorte", "Ansatz (kg)", "Kosten (€)", "Becher", "Kosten je Becher (€)"],
  ...["Gefrierpunkt (°C)", "Wasser gefroren in der Truhe, −15 °C (%)"],
];

/** A flavour's row for the board; gives its formulas. */
function zeile(sheet: CorpusSheet, { recipe, cost }: Sorte, row: number, fill: Spot): Spot[] {
  const on = (spot: Spot): string => `'${recipe.total!.sheet}'!${a1(spot)}`;
  put(sheet, row, 0, recipe.made.title);
  const kilos = put(sheet, row, 1, shown(`=${on(recipe.total!)}/1000`, "0.00"));
  const paid = put(sheet, row, 2, shown(`=${on(cost)}`, "0.00"));
  const cups = put(sheet, row, 3, shown(`=${a1(kilos)}*1000/${fixed(fill)}`, "0"));
  const each = put(sheet, row, 4, shown(`=${a1(paid)}/${a1(cups)}`, "0.00"));
  const home = recipe.total!.sheet;
  const lines = `'${home}'!${span(recipe.names)},'${home}'!${span(recipe.amounts)}`;
  const label = (column: number): Spot => ({ sheet: sheet.name, row: 4, column });
  const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, label(5), { row, column: 5 }, point, () => lines);
  const ice = { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 } as const;
  resultAt(sheet, recipe, label(6), { row, column: 6 }, ice);
  return [kilos, paid, cups, each];
}

/** The treasurer of a sailing club: a page for the board, then a sheet a flavour. */
function segelclub(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Vorstand");
  put(sheet, 0, 0, "Eis zum Ansegeln, Übersicht für den Vorstand");
  const bare = "Becher fasst";
  const words = { label: `${bare} (g)`, bare, value: random.pick([90, 100, 120]) };
  const fill = input(kit, sheet, { row: 2, column: 0 }, words);
  const heads = putRow(sheet, 4, 0, HEADS);
  const mades = kit.make(4).map((made) => called(about(made, 2500), { Zucker: "Haushaltszucker" }));
  const sorten = mades.map((made) => sorte(kit, made));
  const rows = sorten.map((each, index) => zeile(sheet, each, 5 + index, fill));
  [[], [], [fill], []].forEach((cells, at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[1 + at]!, fixed: cells },
    }),
  );
  put(sheet, 9, 0, "Alles zusammen");
  sumOf(kit, sheet, { row: 9, column: 1 }, columnOf(rows, 0), "0.00");
  sumOf(kit, sheet, { row: 9, column: 2 }, columnOf(rows, 1), "0.00");
  sumOf(kit, sheet, { row: 9, column: 3 }, columnOf(rows, 2), "0");
  const truhe = putRow(sheet, 12, 0, ["Wann", "Truhe am Steg (°C)"]);
  ["Fr 18 Uhr", "Sa 9 Uhr", "Sa 14 Uhr", "Sa 19 Uhr"].forEach((when, index) =>
    put(sheet, 13 + index, 0, when),
  );
  readings(kit, sheet, truhe[1]!, [4, -18, -13]);
  note(kit, sheet, 18, 0, "Pfand für die Becher nicht vergessen.");
}

export const segelclubs: readonly Layout[] = [
  {
    name: "Segelclub, vier Sorten und ein Blatt für den Vorstand",
    language: "de",
    build: segelclub,
  },
];
