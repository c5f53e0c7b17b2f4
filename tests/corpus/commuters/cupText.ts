import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, put, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { withLines, type MadeRecipe } from "../recipes";
import { alcoholIn, asBefore, asked, warnAt } from "./words";

const PARTS = ["", "1/4", "1/2", "3/4"];

/** A count as it is written on a card, "1 1/2". */
function inQuarters(count: number): string {
  const whole = Math.floor(count);
  return [...(whole > 0 ? [String(whole)] : []), PARTS[Math.round(4 * (count - whole))]!]
    .join(" ")
    .trim();
}

interface Scooped {
  readonly words: string;
  readonly grams: number;
}

/** As many cups or spoons as there are, and what they weigh; weighed where no cup is known. */
function scooped(en: string, grams: number): Scooped {
  for (const [unit, one, many, least] of [
    ["cup", "cup", "cups", 0.25],
    ["tbsp", "tablespoon", "tablespoons", 1],
    ["tsp", "teaspoon", "teaspoons", 0.25],
  ] as const) {
    const each = callFunction("GRAMS", en, 1, unit)[0]?.[0];
    if (typeof each !== "number") continue;
    const count = Math.round((4 * grams) / each) / 4;
    if (count < least) continue;
    const words = `${inQuarters(count)} ${count > 1 ? many : one}`;
    return { words, grams: Math.max(1, Math.round(count * each)) };
  }
  return { words: "on the scale", grams };
}

/** The recipe as its cups weigh. */
function inCups(made: MadeRecipe) {
  const cups = made.lines.map(({ en, grams }) => scooped(en, grams));
  const lines = made.lines.map((each, index) => ({ ...each, grams: cups[index]!.grams }));
  return { cups, made: asBefore(made, withLines(made, lines)) };
}

const answers = (freezer: Pick<Said, "temperature" | "temperatureC">): readonly Said[] => [
  { label: "Begins to freeze, °C", states: "freezing point", as: "formula", format: "0.0" },
  {
    ...{ label: "Water turned to ice in our freezer, %", states: "ice of water", as: "formula" },
    ...{ format: "0", ...freezer },
  },
  { label: "Water in the bowl, g", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars, g to every 100 g of water", states: "sugar per 100 g water", as: "typed" },
];

/** The lines, in words and weighed. */
function lines(kit: Kit, sheet: CorpusSheet, { cups, made }: ReturnType<typeof inCups>) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["On the card", "What", "Weighs, g"],
      cells: (name, grams, index) => [cups[index]!.words, name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "Altogether");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const list = { names, amounts, unit: "g", amountLabel: heads[2]!, total } as const;
  return { recipe: markRecipe(kit, made, list), end };
}

/** One card of the box. */
function card(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): void {
  const own = inCups(given);
  const { made } = own;
  put(sheet, 0, 0, made.title);
  put(sheet, 1, 0, "from Grandpa's card box, weighed again this winter");
  const { recipe, end } = lines(kit, sheet, own);
  const value = -kit.random.whole(16, 20);
  const temperature = asked(kit, sheet, [end + 2, 1], ["Our freezer", "°C", value]);
  const plans = [...answers({ temperature, temperatureC: value })];
  const all = [...plans, ...alcoholIn(made, "Alcohol, g")];
  const next = say(sheet, recipe, { row: end + 3, column: 1 }, all);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Should turn out" });
  const last = warnAt(sheet, recipe, { row: next + 1, column: 1 }, "Tell visitors: there is");
  note(kit, sheet, last + 1, 1, "Cups are the 8 oz ones, spooned in and levelled.");
}

/** Three cards, a sheet each. */
function cardBox(kit: Kit): void {
  kit.make(3).forEach((made, index) => {
    const own = called(made, { sugar: "granulated sugar" });
    card(kit, addSheet(kit.marked.book, `Card ${index + 1}`), own);
  });
}

/** A family's card box. */
export const cardBoxes: readonly Layout[] = [
  { name: "card box, cups in words beside the scale", language: "en", build: cardBox },
];
