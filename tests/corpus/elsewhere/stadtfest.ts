import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { given } from "../lodgers/words";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { temperatures, upTo } from "../strollers/words";
import { ifAlcoholic, inGerman, ownList, pricePerKilo } from "./words";

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefriert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Gefrierpunkt unter dem von Wasser um (K)", states: "depression", as: "typed" },
  {
    ...{ label: "Wasser als Eis bei −15 °C (%)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
  { label: "Zuckeranteil der Masse (%)", states: "sugar share", as: "typed", decimals: 1 },
  ...ifAlcoholic(made, { label: "Alkohol darin (g)", states: "alcohol", as: "typed", decimals: 0 }),
];

/** What has to be bought, the sum over the lines. */
function shopping(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const list = ownList(
    kit,
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Einkauf", "Bedarf (kg)", "€ je kg", "€ zusammen", "besorgt"],
      cells: (item, grams, index) => [
        ...[
          item,
          shown(inUnit(grams, "kg"), "0.000"),
          shown(pricePerKilo(kit, made, index), "0.00"),
        ],
        ...[undefined, kit.random.pick(["Ina", "Olli", "Gerd"])],
      ],
      ...{ name: 0, amount: 1, unit: "kg", format: "0.000", total: "Summe", totalRow: 4 },
    },
  );
  const costs = beside(kit, list.heads[3]!, list.amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const cost = sumOf(kit, sheet, { row: 4, column: 3 }, costs, "0.00");
  return { ...list, cost };
}

const OTHER: readonly (readonly [string, number])[] = [
  ["Standgebühr", 35],
  ["Stromkasten", 20],
  ["Servietten und Becher", 28],
  ["Schilder drucken", 9],
];

/** What the day costs besides; gives its sum. */
function other(kit: Kit, sheet: CorpusSheet): Spot {
  const heads = putRow(sheet, 5, 6, ["Sonst noch", "€"]);
  const paid = OTHER.map(([what, euros], index) => {
    put(sheet, 6 + index, 6, what);
    return put(sheet, 6 + index, 7, shown(euros + kit.random.whole(0, 12) / 2, "0.00"));
  });
  put(sheet, 10, heads[0]!.column, "macht");
  return sumOf(kit, sheet, { row: 10, column: 7 }, paid, "0.00");
}

/** Who serves when, and the chest's thermometer at the change. */
function shifts(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 12, 6, ["Schicht", "Helfer", "Truhe bei Übergabe (°C)"]);
  const rows = ["10–13 Uhr", "13–16 Uhr", "16–19 Uhr", "Abbau"].map((shift, index) =>
    putRow(sheet, 13 + index, 6, [shift, kit.random.whole(2, 4), -kit.random.whole(14, 19)]),
  );
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** What a ball costs the club. */
function ball(kit: Kit, sheet: CorpusSheet, list: ReturnType<typeof shopping>, rest: Spot): number {
  const row = list.end + 1;
  const grams = given(kit, sheet, [row, 0], ["Eine Kugel wiegt", "g", 65]);
  const line = (at: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row + at, 0, [label, shown(formula, format)])[1]!;
  const number = line(1, "Kugeln insgesamt", `=${a1(list.total)}*1000/${a1(grams)}`, "0");
  const sum = `=(${a1(list.cost)}+${a1(rest)})/${a1(number)}`;
  const each = line(2, "Kosten je Kugel (€)", sum, "0.00");
  const price = putRow(sheet, row + 3, 0, ["Preis je Kugel (€)", shown(1.5, "0.00")])[1]!;
  const gain = `=(${a1(price)}-${a1(each)})*${a1(number)}`;
  line(4, "bleibt für die Vereinskasse (€)", gain, "0.00");
  return row + 6;
}

/** A club at the town's festival. */
function festival(kit: Kit): void {
  const made = called(upTo(kit.make(1)[0]!, 9000), { Zucker: "Haushaltszucker" });
  const sheet = addSheet(kit.marked.book, "Eisstand");
  put(sheet, 0, 0, "Stadtfest, Eisstand der Ruderer");
  put(sheet, 1, 0, `Sorte: ${made.title}`);
  note(kit, sheet, 2, 0, "Belege bitte bei Gerd abgeben, auch die kleinen!");
  const list = shopping(kit, sheet, made);
  const next = ball(kit, sheet, list, other(kit, sheet));
  shifts(kit, sheet);
  const { recipe } = list;
  const below = say(sheet, recipe, { row: next, column: 0 }, saidOf(made));
  nameTarget(sheet, recipe, { row: below, column: 0, label: "Ausgabe" });
  tellIn(sheet, recipe, { row: below + 1, column: 0 }, inGerman("Aushang am Stand: enthält"));
}

/** A rowing club's stall. */
export const stadtfest: readonly Layout[] = [
  { name: "Stadtfest, Eisstand der Ruderer", language: "de", build: festival },
];
