import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { upTo } from "../strollers/words";
import { lineup, readings, SCHLICHT } from "./words";

interface Month {
  readonly name: string;
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

const ANSWERS: readonly Said[] = [
  { label: "fängt an zu gefrieren", inCell: "°C", states: "freezing point", as: "typed" },
  { label: "Eis in der Masse bei −15 °C", inCell: "%", states: "ice of mix", ...typedAt(-15) },
  { label: "davon Wasser (aus allem)", inCell: "g", states: "water", as: "typed", decimals: 0 },
];

function typedAt(temperatureC: number) {
  return { as: "typed", temperatureC, decimals: 0 } as const;
}

/** What a kilogram costs here, in euros, the same every month. */
function euros(prices: Map<string, number>, kit: Kit, name: string): number {
  const price = prices.get(name) ?? (/wasser/i.test(name) ? 0 : kit.random.whole(90, 1400) / 100);
  prices.set(name, price);
  return price;
}

/** A month's sheet; the one before was copied and changed a little. */
function month(
  kit: Kit,
  prices: Map<string, number>,
  [name, made, remark]: readonly [string, MadeRecipe, string],
): Month {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 2, `${made.title} ${name}`);
  note(kit, sheet, 1, 2, remark);
  const { recipe, heads, rows, end } = lineup(kit, sheet, made, {
    ...{ row: 3, column: 0, heads: ["€ je kg", "Zutat", "Menge", undefined, "macht €"] },
    cells: (item, amount) => [shown(euros(prices, kit, item), "0.00"), item, amount, "kg"],
    ...{ name: 1, amount: 2, unitAt: 3, unit: "kg", format: "0.000" },
    total: { label: "Kübel" },
  });
  const costs = beside(kit, heads[4]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 0 })}*${a1(spot)}`,
  });
  const cost = sumOf(kit, sheet, { row: end - 1, column: 4 }, costs, "0.00");
  put(sheet, end - 1, 3, "kg");
  const next = say(sheet, recipe, { row: end + 1, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "so soll es werden" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, SCHLICHT);
  const weeks = [1, 2, 3, 4].map((week) => `${week}. Woche`);
  const words = ["Truhe", "vorn °C", "hinten °C"];
  readings(kit, sheet, { row: 3, column: 7 }, words, weeks, [-21, -16]);
  return { name, recipe, cost };
}

/** The season on one page, with nothing but what came out. */
function season(kit: Kit, sheet: CorpusSheet, months: readonly Month[]): void {
  const { row } = put(sheet, 9, 4, "Saison, alle Monate");
  const heads = putRow(sheet, row + 1, 4, [
    ...["Monat", "kg gemacht", "€ gekostet", "Gefrierpunkt °C", "Erniedrigung (K)", "gelöst (g)"],
  ]);
  const spots = months.map(({ name, recipe, cost }, index) => {
    const at = row + 2 + index;
    const [kilos, price] = [recipe.total!, cost].map((spot) => `='${name}'!${a1(spot)}`);
    const cells = [name, shown(kilos!, "0.000"), shown(price!, "0.00")];
    const [, made, paid] = putRow(sheet, at, 4, cells);
    const lines = () => `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, heads[3]!, { row: at, column: 7 }, point, lines);
    const depression = { states: "depression", as: "typed", decimals: 1 } as const;
    resultAt(sheet, recipe, heads[4]!, { row: at, column: 8 }, depression);
    const solids = { states: "dissolved", as: "typed", decimals: 0 } as const;
    resultAt(sheet, recipe, heads[5]!, { row: at, column: 9 }, solids);
    return [made!, paid!];
  });
  const under = row + 2 + months.length;
  put(sheet, under, 4, "zusammen");
  sumOf(kit, sheet, { row: under, column: 5 }, columnOf(spots, 0), "0.000");
  sumOf(kit, sheet, { row: under, column: 6 }, columnOf(spots, 1), "0.00");
}

/** Three months of the same ice, and the season. */
function hofcafe(kit: Kit): void {
  const first = upTo(plainOf(kit), 3000);
  const plain = upTo(sound(kit, first), 3000);
  const own = { Zucker: "Rübenzucker", Wasser: "Leitungswasser" };
  const mades: readonly (readonly [string, MadeRecipe, string])[] = [
    ["Mai", first, "wie letztes Jahr"],
    ["Juni", changed(plain, 0.9), "Tante Gerda: war zu süß, Zucker runter"],
    ["Juli", changed(plain, 0.8, "dextrose monohydrate"), "Zucker zum Teil getauscht, weil Hitze"],
  ];
  const prices = new Map<string, number>();
  const months = mades.map(([name, made, remark]) =>
    month(kit, prices, [name, called(made, own), remark]),
  );
  season(kit, addSheet(kit.marked.book, "Saison"), months);
}

/** A café on a farm. */
export const hofcafes: readonly Layout[] = [
  { name: "Hofcafé, ein Blatt je Monat und die Saison", language: "de", build: hofcafe },
];
