import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { readings, rowsOf, WARNT } from "./words";

const WERTE: readonly Fact[] = [
  ["Gefrierpunkt °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Erniedrigung K", { states: "depression", as: "typed", decimals: 1 }],
  [
    "Wasser gefroren bei −12 °C, in %",
    { states: "ice of water", as: "typed", decimals: 0, temperatureC: -12 },
  ],
  ["Zuckeranteil %", { states: "sugar share", as: "typed", decimals: 1 }],
];

const TOP = 5;

/** What the week needs of each line, and what that costs. */
function bedarf(
  kit: Kit,
  sheet: CorpusSheet,
  items: readonly Spot[],
  mades: readonly MadeRecipe[],
) {
  const { marked, random } = kit;
  const left = 1 + mades.length;
  const names = itemsOf(mades);
  const chargen = Array.from(mades, (_, at) => ({ sheet: sheet.name, row: 3, column: 1 + at }));
  const heads = putRow(sheet, TOP - 1, left, ["Woche (kg)", "€ je kg", "Woche (€)"]);
  const cells = items.map((item, index) => {
    const from = mades.flatMap((made) =>
      made.lines.filter((_, at) => made.names[at] === names[index]),
    );
    const own = span(chargen.map((spot) => ({ ...spot, row: item.row })));
    const need = `=SUMPRODUCT(${own},${absolute(span(chargen))})`;
    const price = usualPrice(random, from[0]!.en);
    const [kilos] = putRow(sheet, item.row, left, [shown(need, "0.000"), shown(price, "0.00")]);
    const { row } = item;
    const pay = `=${a1(kilos!)}*${a1({ ...kilos!, column: left + 1 })}`;
    return [kilos!, put(sheet, row, left + 2, shown(pay, "0.00"))] as const;
  });
  const [kilos, euros] = [0, 1].map((at) => cells.map((each) => each[at]!));
  marked.formulaColumns.push({ spots: kilos!, heading: heads[0]!, fixed: chargen });
  marked.formulaColumns.push({ spots: euros!, heading: heads[2]!, fixed: [] });
  const row = TOP + items.length;
  sumOf(kit, sheet, { row, column: left }, kilos!, "0.000");
  sumOf(kit, sheet, { row, column: left + 2 }, euros!, "0.00");
}

/** Who stands at the machine, and how cold the store is. */
function dienst(kit: Kit, sheet: CorpusSheet, row: number): void {
  rowsOf(sheet, { row, column: 0 }, [
    ["Maschine", "früh", "spät"],
    ["Mo bis Mi", "Chef", "Aushilfe"],
    ["Do bis Sa", "Lehrling", "Chef"],
  ]);
  readings(
    kit,
    sheet,
    { row, column: 4 },
    {
      heads: ["Kühlzelle", "°C um 7 Uhr"],
      when: ["Mo", "Di", "Mi", "Do", "Fr", "Sa"],
      tenths: [22, 48],
    },
  );
}

/** Four flavours in columns, kilograms to a batch, and the needs of the week at the right. */
function woche(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "KW 27");
  const own = { Zucker: "Haushaltszucker", "Sahne 35 %": "Schlagsahne 35 %" };
  const mades = kit.make(4).map((made) => called(upTo(made, 9000), own));
  put(sheet, 0, 0, "Wochenplan Eislabor: Rezepte, Chargen, Bedarf");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const amountLabel = put(sheet, TOP - 1, 0, "kg je Charge");
  putRow(sheet, 2, 0, ["Sorte", ...mades.map(({ title }) => title)]);
  putRow(sheet, 3, 0, ["Chargen diese Woche", ...mades.map(() => kit.random.whole(1, 4))]);
  put(sheet, TOP + items.length, 0, "Maschine voll");
  const row = TOP + items.length + 2;
  putRow(sheet, row + WERTE.length, 0, ["Ziel"]);
  putRow(sheet, row + WERTE.length + 1, 0, ["Aushang"]);
  mades.forEach((made, at) => {
    const plan = { items, left: 1, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, at, plan);
    factsDown(sheet, recipe, WERTE, { row, column: 1 + at, labels: 0, items });
    nameTarget(sheet, recipe, { row: row + WERTE.length, column: 1 + at });
    tellIn(sheet, recipe, { row: row + WERTE.length + 1, column: 1 + at }, WARNT);
  });
  bedarf(kit, sheet, items, mades);
  dienst(kit, sheet, row + WERTE.length + 4);
  note(kit, sheet, 1, 0, "Montag wird bestellt, Dienstag gekocht, ab Mittwoch gefroren.");
}

/** An ice parlour's week on one sheet. */
export const sortenWochen: readonly Layout[] = [
  { name: "Eislabor, Sorten in Spalten mit Wochenbedarf", language: "de", build: woche },
];
