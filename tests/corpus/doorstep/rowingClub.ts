import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { FRIENDLY, perKilo, rowsAt, thermometer } from "./words";

interface Tray {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** One tray: a blank column between names and weights, packs and money after it. */
function tray(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number): Tray {
  put(sheet, 0, column, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column },
    {
      heads: ["To buy", undefined, "Grams", "Pack (g)", "Pack (£)", "Ours (£)"],
      cells: (item, grams) => {
        const pack = kit.random.pick([250, 500, 1000]);
        const paid = Math.round(perKilo(kit, item) * (pack / 10)) / 100;
        return [item, undefined, grams, pack, shown(paid, "0.00")];
      },
      amount: 2,
    },
  );
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => {
      const [pack, paid] = [1, 2].map((step) => a1({ ...spot, column: spot.column + step }));
      return `=${a1(spot)}/${pack}*${paid}`;
    },
  });
  put(sheet, end, column, "Tray");
  const total = sumOf(kit, sheet, { row: end, column: column + 2 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: column + 5 }, costs, "0.00");
  const lines = { names, amounts, amountLabel: heads[2]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  tellIn(sheet, recipe, { row: end + 2, column }, FRIENDLY);
  return { recipe, cost };
}

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Depression of freezing point, K", { states: "depression", as: "formula" }],
  ["Water in the tray, g", { states: "water", as: "formula", format: "0" }],
  [
    "Share of water frozen at −10 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  ],
];

/** What the science people among us asked for, one column a tray. */
function facts(sheet: CorpusSheet, trays: readonly Tray[], row: number): void {
  FACTS.forEach(([words, plan], index) => {
    const label = put(sheet, row + 1 + index, 0, words);
    trays.forEach(({ recipe }, at) => {
      const lines = `Trays!${span(recipe.names)},Trays!${span(recipe.amounts)}`;
      resultAt(sheet, recipe, label, { row: label.row, column: 1 + at }, plan, () => lines);
    });
  });
  put(sheet, row + 4, 0, "Style");
  trays.forEach(({ recipe }, at) => {
    put(sheet, row, 1 + at, recipe.made.title);
    nameTarget(sheet, recipe, { row: row + 4, column: 1 + at });
  });
}

/** The treasurer's page: in, out, and what is left for the boat. */
function treasurer(kit: Kit, sheet: CorpusSheet, trays: readonly Tray[]): void {
  const { random } = kit;
  const money = (value: number | string) => shown(value, "0.00");
  put(sheet, 0, 0, "Regatta day, treasurer's page");
  const part = (
    row: number,
    word: string,
    lines: readonly (readonly [string, number | string])[],
  ) => {
    const parts = lines.map(
      ([words, value], index) => putRow(sheet, row + index, 0, [words, money(value)])[1]!,
    );
    put(sheet, row + lines.length, 0, word);
    return sumOf(kit, sheet, { row: row + lines.length, column: 1 }, parts, "0.00");
  };
  const taken = part(2, "In (£)", [
    ["Ices, card", random.whole(90, 190)],
    ["Ices, coins", random.whole(120, 260) / 2],
    ["Teas", random.whole(60, 120)],
    ["Raffle", random.whole(80, 150)],
  ]);
  const spent = part(8, "Out (£)", [
    ...trays.map(({ recipe, cost }) => [recipe.made.title, `=Trays!${a1(cost)}`] as const),
    ["Dry ice", random.whole(12, 20)],
    ["Licence", 21],
  ]);
  putRow(sheet, 14, 0, ["For the new boat (£)", money(`=${a1(taken)}-${a1(spent)}`)]);
  facts(sheet, trays, 17);
}

/** The stall's trays beside each other, the treasurer's page, who stands where. */
function rowingClub(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trays");
  const own = { sugar: "caster sugar", "dextrose monohydrate": "glucose monohydrate" };
  const trays = kit
    .make(2)
    .map((made, index) => tray(kit, sheet, called(upTo(made, 2500), own), 7 * index));
  treasurer(kit, addSheet(kit.marked.book, "Treasurer"), trays);
  const helpers = addSheet(kit.marked.book, "Helpers");
  rowsAt(helpers, { row: 0, column: 0 }, [
    [undefined, "scooping", "till"],
    ["11–12", "Priya", "Tom"],
    ["12–13", "Ed", "Priya"],
    ["13–14", "Joan", "Tom"],
    ["14–15", "Joan", "Ed"],
  ]);
  const plan = { heading: "cool box (°C)", count: 4, range: [-16, -12] } as const;
  thermometer(kit, helpers, { row: 0, column: 3 }, plan);
  note(kit, helpers, 7, 0, "Bring own apron. Boathouse key is with Joan.");
}

/** A rowing club. */
export const rowingClubs: readonly Layout[] = [
  { name: "rowing club, trays and the treasurer's page", language: "en", build: rowingClub },
];
