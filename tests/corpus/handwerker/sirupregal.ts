import { a1, addSheet, put, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { AUSTRIAN, VOICE_OF_A_TEACHER, table } from "./words";

const SYRUPS = ["Läuterzucker dünn", "Läuterzucker mittel", "Läuterzucker dick", "zum Tränken"];

const HEADS = [
  ...["Sirup", "Saccharose (g)", "Wasser (g)", "Saccharose auf 100 g Wasser (g)"],
  ...["Saccharose im Sirup (%)", "friert ab (°C)"],
];

/** Syrups by strength, told both ways; gives the next free row. */
function shelf(kit: Kit, sheet: CorpusSheet): number {
  const { random, marked } = kit;
  const mixes = SYRUPS.map((name, index) => {
    const waterGrams = 100 * random.whole(3, 8);
    const sugarGrams = Math.round((waterGrams * (0.3 + 0.25 * index)) / 10) * 10;
    const point = shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0");
    return [name, sugarGrams, waterGrams, undefined, undefined, point];
  });
  const [heads, ...rows] = table(sheet, { row: 2, column: 0 }, HEADS, mixes);
  const [sugars, waters, points] = [columnOf(rows, 1), columnOf(rows, 2), columnOf(rows, 5)];
  const plan = { sheet, format: "0.0" };
  const perWater = beside(kit, heads![3]!, sugars, {
    ...plan,
    content: (spot, index) => `=${a1(spot)}/${a1(waters[index]!)}*100`,
  });
  const shares = beside(kit, heads![4]!, sugars, {
    ...plan,
    content: (spot, index) => `=${a1(spot)}/(${a1(spot)}+${a1(waters[index]!)})*100`,
  });
  sugars.forEach((sugar, index) => {
    const [water, share] = [waters[index]!, shares[index]!];
    marked.strengths.push({ sugar, water, perWater: perWater[index]!, share });
  });
  temperatures(kit, heads![5]!, points);
  return 4 + SYRUPS.length;
}

const ANSWERS: readonly Said[] = [
  ...([
    { label: "Zucker auf 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
    { label: "Zucker in der Masse (%)", states: "sugar share", as: "typed" },
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
    { label: "unter dem von Wasser (K)", states: "depression", as: "formula" },
  ] as const),
  { label: "gelöste Stoffe (g)", states: "dissolved", as: "typed", decimals: 0 },
];

/** A mix for a kilogram beside others; gives the row after it. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, column: number): number {
  put(sheet, row, column, made.title);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column },
    { heads: ["Zutat", "g auf 1 kg"], cells: (name, grams) => [name, grams] },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, column, "Kontrolle");
  const total: Spot = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  const lines = { names, amounts, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column, label: "passt für" });
  return tellIn(sheet, recipe, { row: next + 1, column }, VOICE_OF_A_TEACHER);
}

/** The shelf of syrups, and three mixes beside each other under it. */
function regal(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zucker");
  put(sheet, 0, 0, "Fachunterricht Patisserie, Zuckerstärken");
  const top = shelf(kit, sheet);
  const mades = kit.make(3).map((made) => called(perKilogram(made), AUSTRIAN));
  const ends = mades.map((made, index) => mix(kit, sheet, made, top, 3 * index));
  note(kit, sheet, Math.max(...ends) + 1, 0, "Vergleicht immer Gleiches: je Wasser oder je Masse!");
}

/** A patissier's lessons on sugar. */
export const sirupregale: readonly Layout[] = [
  { name: "Patisserie, Zuckerstärken und drei Massen daneben", language: "de", build: regal },
];
