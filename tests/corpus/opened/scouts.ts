import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { about, declare, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Tell the parents: contains",
  honey: "Honey in it, so none for baby brothers and sisters under 12 months.",
  alcohol: "Alcohol in it: leaders' evening only, no children, nobody pregnant or driving.",
  nuts: "Whole nuts in it, could choke under-fives.",
  egg: "Raw egg yolk in it, heat to 71 °C or use pasteurised.",
};

const STEPS = [
  ["cup", 4],
  ["tbsp", 1],
  ["tsp", 2],
] as const;

interface Scoop {
  readonly count: number;
  readonly unit: string;
  readonly grams: number;
}

const weightOf = (name: string, count: number, unit: string): number => {
  const grams = callFunction("GRAMS", name, count, unit)[0]?.[0];
  return typeof grams === "number" ? grams : 0;
};

/** The nearest scoop that the store tent has; the spring scale where none fits. */
function scoop(name: string, grams: number): Scoop {
  for (const [unit, parts] of STEPS) {
    const one = weightOf(name, 1, unit);
    const count = one === 0 ? 0 : Math.round((grams / one) * parts) / parts;
    if (count > 0) return { count, unit, grams: weightOf(name, count, unit) };
  }
  return { count: grams, unit: "g", grams };
}

/** The recipe as its scoops weigh. */
function scooped(made: MadeRecipe) {
  const scoops = made.names.map((name, index) => scoop(name, made.grams[index]!));
  const lines = made.lines.map((each, index) => ({ ...each, grams: scoops[index]!.grams }));
  const names = made.names;
  return { scoops, made: stillMet({ ...withLines(made, lines), names }) };
}

const answers = (made: MadeRecipe, bath: Spot, temperatureC: number): readonly Said[] => [
  { label: "Freezes from (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in one lot (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Sugars to every 100 g of water (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 0 },
  },
  {
    label: "Frozen at that cold, part of its water (%)",
    ...{ states: "ice of water", as: "formula", format: "0" },
    ...{ temperature: bath, temperatureC },
  },
  ...ofAlcohol(made, "Alcohol in one lot (g)"),
];

/** Scoops, what they weigh, and the weight for all patrols. */
function list(
  kit: Kit,
  sheet: CorpusSheet,
  { scoops, made }: ReturnType<typeof scooped>,
  patrols: Spot,
): MarkedRecipe {
  const place = { row: 4, column: 0 };
  const { heads, rows, names, end } = listed(sheet, made, place, {
    heads: ["How many", "Which scoop", "Of what", "Weighs (g)", "All patrols (g)"],
    cells: (name, _grams, index) => [scoops[index]!.count, scoops[index]!.unit, name],
    ...{ name: 2, amount: 0 },
  });
  const amounts = beside(kit, heads[3]!, columnOf(rows, 0), {
    ...{ sheet, format: "0" },
    content: (spot) =>
      `=RIME.GRAMS(${a1({ ...spot, column: 2 })},${a1(spot)},${a1({ ...spot, column: 1 })})`,
  });
  const alsoAmounts = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0", fixed: [patrols] },
    content: (spot) => `=${a1(spot)}*${fixed(patrols)}`,
  });
  put(sheet, end, 2, "One lot");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0");
  sumOf(kit, sheet, { row: end, column: 4 }, alsoAmounts, "0");
  const amountLabel = heads[3]!;
  return markRecipe(kit, made, { names, amounts, total, alsoAmounts, amountLabel, unit: "g" });
}

/** A scout leader: shaken ice on camp, cups and spoons turned to grams. */
function scouts(kit: Kit): void {
  const { marked, random } = kit;
  const base = called(about(kit.make(1)[0]!, 900), {
    sugar: "granulated sugar",
    salt: "table salt",
  });
  const whole = scooped(base);
  const sheet = addSheet(marked.book, "Camp ice");
  put(sheet, 0, 0, `Camp ice: ${whole.made.title}`);
  put(sheet, 1, 0, "US cups and spoons, level");
  const words = { label: "Patrols", bare: "Patrols", value: random.whole(3, 6) };
  const patrols = put(sheet, 2, 1, words.value);
  put(sheet, 2, 0, words.label);
  const recipe = list(kit, sheet, whole, patrols);
  const bare = "Bag comes out at";
  const value = -random.whole(14, 18);
  const bath = input(kit, sheet, { row: 2, column: 6 }, { label: `${bare} (°C)`, bare, value });
  const next = say(sheet, recipe, { row: 5, column: 6 }, answers(whole.made, bath, value));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Aim" });
  const row = Math.max(recipe.total!.row, next) + 2;
  const last = declare(sheet, recipe, { row, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Gloves for the bags, the salty ice is far colder than ice.");
}

export const scoutCamps: readonly Layout[] = [
  { name: "scout camp, scoops weighed for all patrols", language: "en", build: scouts },
];
