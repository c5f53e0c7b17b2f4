import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import { downward, kiloPrice, readings } from "./words";

const VOICE: Voice = {
  lead: "Enthält",
  honey: "Honig: nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol: keine Kinder, keine Schwangeren, keine Autofahrer.",
  nuts: "Ganze Nüsse: unter 5 Jahren Erstickungsgefahr.",
  egg: "Eigelb roh: Mix auf 71 °C, sonst pasteurisiert einkaufen.",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Zucker im Mix %", { states: "sugar share", as: "typed", decimals: 1 }],
  [
    "Eis im Mix bei −12 °C %",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
  ["Wasser je Wanne g", { states: "water", as: "typed", decimals: 0 }],
  ["Absenkung K", { states: "depression", as: "formula" }],
];

const TOP = 5;

interface Week {
  readonly items: readonly Spot[];
  readonly counts: readonly Spot[];
  readonly mades: readonly MadeRecipe[];
}

/** What the week's tubs need of everything and what it costs. */
function needed(kit: Kit, sheet: CorpusSheet, { items, counts, mades }: Week): void {
  const column = 1 + mades.length;
  const heads = putRow(sheet, TOP - 1, column, ["Woche kg", "€ je kg", "Einkauf €"]);
  const bought = new Map(
    mades.flatMap(({ names, lines }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  const total = beside(kit, heads[0]!, items, {
    ...{ sheet, format: "0.000", fixed: counts },
    content: ({ row }) => {
      const along = span([
        { sheet: sheet.name, row, column: 1 },
        { sheet: sheet.name, row, column: column - 1 },
      ]);
      return `=SUMPRODUCT(${absolute(span(counts))},${along})`;
    },
  });
  items.forEach(({ row, column: at }) => {
    const name = sheet.cells[row]![at]!.content as string;
    put(sheet, row, column + 1, shown(kiloPrice(kit, bought.get(name)!), "0.00"));
  });
  const costs = beside(kit, heads[2]!, total, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: column + 1 })}`,
  });
  const row = TOP + items.length;
  sumOf(kit, sheet, { row, column }, total, "0.000");
  sumOf(kit, sheet, { row, column: column + 2 }, costs, "0.00");
}

/** Five varieties in columns, a tub of each in kilograms, and the week's shopping. */
function eisladen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wochenplan");
  put(sheet, 0, 0, "Sorten der Woche, je Wanne");
  const words = { Zucker: "Feinkristallzucker", Wasser: "Trinkwasser", Salz: "Meersalz" };
  const mades = kit.make(5).map((made) => called(upTo(made, 4000), words));
  putRow(sheet, 2, 0, ["Sorte", ...mades.map(({ title }) => title)]);
  const tubs = mades.map(() => kit.random.whole(1, 4));
  const counts = putRow(sheet, 3, 0, ["Wannen", ...tubs]).slice(1);
  const amountLabel = put(sheet, TOP - 1, 0, "Menge in kg");
  const items = downward(sheet, { row: TOP, column: 0 }, itemsOf(mades));
  const end = TOP + items.length;
  putRow(sheet, end, 0, ["Wanne"]);
  put(sheet, end + 7, 0, "Vorgabe");
  put(sheet, end + 8, 0, "Schild");
  mades.forEach((made, at) => {
    const plan = { items, left: 1, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, at, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column: 1 + at, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column: 1 + at });
    tellIn(sheet, recipe, { row: end + 8, column: 1 + at }, VOICE);
  });
  needed(kit, sheet, { items, counts, mades });
  downward(sheet, { row: end + 10, column: 0 }, [
    "Vitrine um 11 Uhr",
    "Mo",
    "Di",
    "Mi",
    "Do",
    "Fr",
    "Sa",
  ]);
  const display = { heading: "abgelesen °C", count: 6, from: -14, to: -11 };
  readings(kit, sheet, { row: end + 10, column: 1 }, display);
  note(kit, sheet, end + 18, 0, "Montags zuerst die Milchsorten, dann spülen, dann Frucht.");
}

/** An ice shop. */
export const eislaeden: readonly Layout[] = [
  { name: "Eisladen, Sorten der Woche in Spalten und Einkauf", language: "de", build: eisladen },
];
