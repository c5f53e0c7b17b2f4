import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { formulas } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { overview, type Amounts } from "./festuebersicht";
import { euros } from "./worte";

const TOP = 4;

/** A kind down its column, in grams for one bowl. */
function kind(kit: Kit, made: MadeRecipe, column: number, items: readonly Spot[]): MarkedRecipe {
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, 1, column, made.title);
  const words = items.map(({ row }) => sheet.cells[row]![0]!.content);
  const names = made.names.map((name) => items[words.indexOf(name)]!);
  const amounts = names.map(({ row }, at) => put(sheet, row, column, made.grams[at]));
  const all = items.map((item) => ({ ...item, column }));
  const total = sumOf(kit, sheet, { row: TOP + items.length, column }, all);
  const amountLabel = { sheet: sheet.name, row: 3, column: 0 };
  return markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel, total, shared: true },
  });
}

/** What goes into a bowl of each kind, and how many bowls are stirred. */
function bowls(kit: Kit, mades: readonly MadeRecipe[]): Amounts {
  const sheet = addSheet(kit.marked.book, "Mengen");
  const items = itemsOf(mades);
  put(sheet, 0, 0, "Vereinsfest, Eis vom Musikverein");
  const rest = ["Sorte", "Schüsseln (Stück)", "Für eine Schüssel in g", ...items, "wiegt zusammen"];
  const labels = rest.map((label, index) => put(sheet, 1 + index, 0, label));
  const names = labels.slice(3, -1);
  const recipes = mades.map((made, index) => kind(kit, made, 1 + index, names));
  const times = mades.map((_, index) => put(sheet, 2, 1 + index, kit.random.whole(2, 6)));
  note(kit, sheet, TOP + items.length + 2, 0, "Schüsseln und Rührgeräte bringt jeder selbst mit.");
  return { sheet, items: names, times, recipes };
}

const FETCHERS = ["Vorstand", "Trompeten", "Jugend", "Schlagwerk"];

/** What has to be bought for all bowls, who fetches it, and what it comes to. */
function shopping(kit: Kit, { items, times }: Amounts): Spot {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Einkauf");
  const heads = putRow(sheet, 0, 0, [
    ...["Was", "Bedarf (kg)", "Preis (€/kg)", "macht (€)", "besorgt von"],
  ]);
  const bowlsOf = `Mengen!${absolute(span(times))}`;
  const at = (column: number) => ({ sheet, at: [1, column] }) as const;
  const words = items.map(({ row }) => marked.book.sheets[0]!.cells[row]![0]!.content as string);
  words.forEach((word, index) => put(sheet, 1 + index, 0, word));
  const need = items.map((item) => {
    const row = times.map(({ column }) => ({ ...item, column }));
    return shown(`=SUMPRODUCT(Mengen!${span(row)},${bowlsOf})/1000`, "0.00");
  });
  const kilos = formulas(kit, heads[1]!, need, { ...at(1), fixed: [] });
  words.forEach((word, index) => put(sheet, 1 + index, 2, shown(euros(kit, word), "0.00")));
  const sums = kilos.map((spot) => shown(`=${a1(spot)}*${a1({ ...spot, column: 2 })}`, "0.00"));
  const costs = formulas(kit, heads[3]!, sums, at(3));
  words.forEach((_, index) => put(sheet, 1 + index, 4, random.pick(FETCHERS)));
  const row = 1 + words.length;
  put(sheet, row, 0, "alles zusammen");
  sumOf(kit, sheet, { row, column: 1 }, kilos, "0.00");
  return sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
}

/** Kinds in columns, a shopping list and an overview of a club's fair. */
function fair(kit: Kit): void {
  const mades = kit.make(4).map((made) => called(made, { Wasser: "Leitungswasser" }));
  const amounts = bowls(kit, mades);
  overview(kit, amounts, shopping(kit, amounts));
}

/** A fair of a club. */
export const fairs: readonly Layout[] = [
  { name: "Vereinsfest, Schüsseln je Sorte und Einkauf", language: "de", build: fair },
];
