import { addSheet, a1, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { itemsOf, temperatures } from "../strollers/words";
import type { MadeRecipe } from "../recipes";
import { block, table, voice } from "./words";

const VOICE = voice(
  "Tell parents, it has:",
  "Honey, so no tasting for baby brothers and sisters under 12 months.",
  "Alcohol, so this one is for the grown-ups: no children, nobody pregnant, nobody driving.",
  "Whole nuts: small children (under 5) may choke.",
  "Raw yolk: Ms K heats it to 71 °C first, or use the pasteurised carton.",
);

const SAID: readonly Said[] = [
  { label: "Starts freezing (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water altogether (g)", states: "water", as: "formula", format: "0" },
  {
    label: "% of that water frozen at −13 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
  {
    label: "Sugars to 100 g of water (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
];

const COLUMN = 5;

/** What each pack costs and how many are bought. */
function shopping(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): void {
  const { random } = kit;
  const items = itemsOf(mades).filter((item) => item !== "water");
  put(sheet, 2, 0, "SHOPPING (treasurer)");
  const price = () => shown(random.whole(8, 60) / 10, "0.00");
  const [heads, ...rows] = table(sheet, { row: 3, column: 0 }, [
    ["To buy", "packs", "£ each", "£"],
    ...[...items, "paper cups", "cling film"].map((item) => [item, random.whole(1, 2), price()]),
  ]);
  const paid = beside(kit, heads![3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const row = 4 + rows.length;
  put(sheet, row, 0, "spent");
  sumOf(kit, sheet, { row, column: 3 }, paid, "0.00");
}

/** One ice of the afternoon; gives the first row under all of it. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, COLUMN, made.title.toUpperCase());
  const at = { row: top + 1, column: COLUMN };
  const { recipe, end } = block(kit, sheet, made, at, {
    heads: ["grams", undefined, "into the bowl"],
    cells: (item, grams) => [grams, "g", item],
    ...{ name: 2, amount: 0, unitAt: 1, unit: "g" },
  });
  const right = { row: top + 1, column: COLUMN + 4 };
  const next = say(sheet, recipe, right, SAID);
  nameTarget(sheet, recipe, { ...right, row: next, label: "Should come out" });
  return Math.max(tellIn(sheet, recipe, { row: end, column: COLUMN }, VOICE), next + 1) + 1;
}

/** Who does what, and the freezer as it was read. */
function duties(kit: Kit, sheet: CorpusSheet, row: number): void {
  const rota = [
    ["ROTA", "stir", "wash up"],
    ["2.00", "Amira", "Theo"],
    ["2.30", "Theo", "Bea"],
    ["3.00", "Bea", "Amira"],
  ];
  table(sheet, { row, column: COLUMN }, rota);
  const read = (at: string, degrees: number) => [at, shown(degrees, "0.0")];
  const [heads, ...rows] = table(sheet, { row, column: COLUMN + 4 }, [
    ["Freezer read at", "°C"],
    ...[read("1.45", -19.5), read("2.30", -16), read("3.15", -kit.random.whole(34, 37) / 2)],
  ]) as [Spot[], ...Spot[][]];
  temperatures(kit, heads[1]!, columnOf(rows, 1));
}

/** The sheet of a club's afternoon: shopping at the left, two ices and the rota at the right. */
function clubAfternoon(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sat 14th");
  const mades = kit.make(2).map((made) => called(made, { sugar: "granulated sugar" }));
  put(sheet, 0, 0, "Saturday science club. Why is ice cream soft and an ice cube not?");
  putRow(sheet, 1, 0, ["Doors", "1.45 to 3.30 pm"]);
  shopping(kit, sheet, mades);
  let row = 2;
  for (const made of mades) row = ice(kit, sheet, made, row);
  duties(kit, sheet, row + 1);
  note(
    kit,
    sheet,
    row + 6,
    COLUMN,
    "Spoons back in the drawer under the fume cupboard? No! Kitchen only.",
  );
}

/** A science club on Saturdays. */
export const clubAfternoons: readonly Layout[] = [
  {
    name: "Saturday club, shopping left, two ices and a rota",
    language: "en",
    build: clubAfternoon,
  },
];
