import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { given } from "../lodgers/words";
import { beside } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import { allergenOf, inGerman, ownList } from "./words";

const saidFor = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "Gefrierpunkt der Füllung, °C", states: "freezing point", as: "formula" },
  { label: "Absenkung, K", states: "depression", as: "typed" },
  { label: "Wasser in 100 g, g", states: "water", as: "typed", decimals: 1 },
  {
    ...{ label: "davon Eis, wenn der Becher aus dem Froster kommt", states: "ice of water" },
    ...{ as: "formula", temperature, temperatureC, percent: "format" },
  },
  { label: "Zucker in der Füllung", states: "sugar share", as: "formula", percent: "format" },
];

const DISHES = ["Menü 1", "Menü 2", "à la carte"];

/** How many cups are thawing for which menu. */
function orders(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 5, ["Gang", "Becher", "aus dem Froster um", "Becher bei (°C)"]);
  const rows = DISHES.map((dish, index) =>
    putRow(sheet, row + 1 + index, 5, [
      ...[dish, kit.random.whole(2, 6), `${18 + index} Uhr`, -kit.random.whole(19, 23)],
    ]),
  );
  put(sheet, row + 1 + rows.length, 5, "zusammen");
  sumOf(kit, sheet, { row: row + 1 + rows.length, column: 6 }, columnOf(rows, 1));
  temperatures(kit, heads[3]!, columnOf(rows, 3));
}

/** Shares of a filling that is frozen in cups and shaved to order. */
function cups(kit: Kit): void {
  const { random, marked } = kit;
  const own = { Zucker: "Kristallzucker", Saccharose: "Kristallzucker", Salz: "Meersalz" };
  const made = called(largestFirst(kit.make(1)[0]!), own);
  const sheet = addSheet(marked.book, "Patisserie");
  put(sheet, 0, 0, `${made.title} im Becher`);
  const froster = given(kit, sheet, [1, 0], ["Froster", "°C", random.pick([-20, -22])]);
  const cup = given(kit, sheet, [2, 0], ["Füllgewicht Becher", "g", random.pick([650, 800])]);
  const { recipe, end, amounts } = ownList(
    kit,
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Zutat", "Anteil", "g im Becher", "Allergen"],
      cells: (item, grams, index) => [
        ...[item, shown(inUnit(grams, "fraction"), "0.0%"), undefined, allergenOf(made, index)],
      ],
      ...{ name: 0, amount: 1, unit: "fraction", format: "0.0%", total: "voller Becher" },
      also: ({ heads, amounts: shares }) =>
        beside(kit, heads[2]!, shares, {
          ...{ sheet, format: "0", fixed: [cup] },
          content: (spot) => `=${a1(spot)}*${fixed(cup)}`,
        }),
    },
  );
  sumOf(kit, sheet, { row: end, column: 2 }, recipe.alsoAmounts, "0");
  const heading = recipe.amountLabel!;
  marked.numberColumns.push({ spots: amounts, heading, total: recipe.total, kind: "fraction" });
  if (made.flagged) recipe.flags.push(...amounts.map((spot) => ({ ...spot, column: 3 })));
  const temperatureC = Number(sheet.cells[froster.row]![froster.column]!.content);
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, saidFor(froster, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "auf dem Teller" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, inGerman("Service ansagen, enthält"));
  orders(kit, sheet, 4);
  note(kit, sheet, 1, 5, "Becher immer glattstreichen, sonst leidet das Messer.");
}

/** The pastry cook of an inn. */
export const frostbecher: readonly Layout[] = [
  { name: "Landgasthof, Füllung in Anteilen für Frostbecher", language: "de", build: cups },
];
