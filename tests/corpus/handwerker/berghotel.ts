import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { SWISS, VOICE_OF_THE_ALPS, pricePerKg, readings, swissTitle, table } from "./words";

const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "tiefer als Wasser um", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser total", inCell: "g", states: "water", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alkohol, rein", "g"),
  {
    ...{ label: "Wasser ausgefroren bei −14 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -14 },
  },
];

interface Block {
  readonly end: number;
  readonly total: Spot;
  readonly cost: Spot;
}

/** A mix with its total above the lines and what is known of it at the right. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, at: number): Block {
  put(sheet, top, 0, `${at + 1}. ${swissTitle(made.title)}`);
  const heads = putRow(sheet, top + 1, 0, ["Zutat", "kg", "Fr. pro kg", "Betrag Fr."]);
  const rows = made.names.map((name, index) => {
    const kilos = shown(inUnit(made.grams[index]!, "kg"), "0.000");
    return putRow(sheet, top + 3 + index, 0, [name, kilos, pricePerKg(kit, name)]);
  });
  const [names, amounts, prices] = [0, 1, 2].map((column) => columnOf(rows, column));
  const costs = beside(kit, heads[3]!, amounts!, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(prices![index]!)}`,
  });
  put(sheet, top + 2, 0, "Total Masse");
  const total = sumOf(kit, sheet, { row: top + 2, column: 1 }, amounts!, "0.000");
  const cost = sumOf(kit, sheet, { row: top + 2, column: 3 }, costs, "0.00");
  const lines = { names: names!, amounts: amounts!, total } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "kg", amountLabel: heads[1]! });
  const next = say(sheet, recipe, { row: top + 2, column: 5 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Service" });
  const told = tellIn(sheet, recipe, { row: next + 1, column: 5 }, VOICE_OF_THE_ALPS);
  return { total, cost, end: Math.max(top + 3 + rows.length, told) + 1 };
}

const MENU = [
  ["Montag", "Kastanienkuchen", 42],
  ["Dienstag", "Glace, Meringue", 38],
  ["Mittwoch", "Fruchtsalat", 45],
  ["Donnerstag", "Glace im Becher", 51],
];

/** Three mixes down the page, their sum, and the week's desserts. */
function berghotel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Glace Winter");
  put(sheet, 0, 0, "Hotelküche auf 1900 m, Glacemassen der Wintersaison");
  let top = 2;
  const blocks = kit.make(3).map((made, index) => {
    const each = block(kit, sheet, called(upTo(made, 4000), SWISS), top, index);
    top = each.end + 1;
    return each;
  });
  put(sheet, top, 0, "Alle drei Massen");
  const all = (spots: readonly Spot[]) => `=${spots.map(a1).join("+")}`;
  const totals = blocks.map(({ total }) => total);
  const costs = blocks.map(({ cost }) => cost);
  const sum = put(sheet, top, 1, shown(all(totals), "0.000"));
  kit.marked.sums.push({ spot: sum, parts: totals });
  kit.marked.sums.push({ spot: put(sheet, top, 3, shown(all(costs), "0.00")), parts: costs });
  const menu = table(sheet, { row: top + 2, column: 0 }, ["Abend", "Dessert", "Gäste"], MENU);
  const guests = columnOf(menu.slice(1), 2);
  putRow(sheet, top + 7, 0, ["Woche", undefined, shown(`=SUM(${span(guests)})`, "0")]);
  kit.marked.sums.push({ spot: { sheet: sheet.name, row: top + 7, column: 2 }, parts: guests });
  const frozen = put(sheet, top + 2, 3, "Glacetruhe, Kontrolle 17 h (°C)");
  readings(kit, sheet, frozen, MENU.length, [-19, -15]);
  note(kit, sheet, top + 9, 0, "Mit der letzten Bahn kommt der Rahm, vorher abmachen.");
}

/** A hotel in the mountains. */
export const berghotels: readonly Layout[] = [
  { name: "Berghotel, Massen in kg mit Total über den Zeilen", language: "de", build: berghotel },
];
