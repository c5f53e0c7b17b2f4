import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Place, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { ofAlcohol, readings } from "../pilgrims/words";
import { withLines, type MadeRecipe } from "../recipes";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Watch out:",
  honey: "Honey inside, no babies under 12 months!",
  alcohol: "Boozy: no children, nobody pregnant, nobody who drives.",
  nuts: "Whole nuts, under-fives could choke on them.",
  egg: "The yolks are raw: heat to 71 °C or buy pasteurised.",
};

const QUARTERS = ["", "1/4", "1/2", "3/4"];
const SPOONS = [
  ["cup", "cups"],
  ["tbsp", "tbsp"],
  ["tsp", "tsp"],
] as const;

interface Measure {
  readonly words: string;
  readonly grams: number;
}

const weightOf = (name: string, quantity: number, unit: string): number => {
  const grams = callFunction("GRAMS", name, quantity, unit)[0]?.[0];
  return typeof grams === "number" ? Math.round(grams) : 0;
};

/** The largest measure that holds it at least once, in quarters; grams where there is none. */
function measured(name: string, grams: number): Measure {
  for (const [unit, several] of SPOONS) {
    const one = weightOf(name, 100, unit) / 100;
    const quantity = one === 0 ? 0 : Math.round((4 * grams) / one) / 4;
    if (quantity < (unit === "cup" ? 0.25 : 1)) continue;
    const [whole, rest] = [Math.floor(quantity), QUARTERS[4 * (quantity % 1)]!];
    const words = [whole === 0 ? "" : String(whole), rest].filter((each) => each !== "").join(" ");
    return {
      words: `${words} ${quantity > 1 ? several : unit}`,
      grams: weightOf(name, quantity, unit),
    };
  }
  return { words: "on the scale", grams };
}

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "starts to freeze, °C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "how much of the whole is ice at −18 °C, %", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
  {
    label: "sugars to 100 g of water, g",
    states: "sugar per 100 g water",
    as: "formula",
    format: "0",
  },
  { label: "water in it, g", states: "water", as: "typed", decimals: 0 },
  ...ofAlcohol(made, { label: "alcohol in it, g" }),
];

const TIPS = [
  "levelled",
  "at room temperature",
  "fresh",
  "the one in the blue tin",
  "stir in last",
];

/** One recipe as it stands in the notebook; gives the row under it. */
function entry(kit: Kit, sheet: CorpusSheet, first: MadeRecipe, { row, column }: Place): number {
  const { random } = kit;
  const measures = first.names.map((name, index) => measured(name, first.grams[index]!));
  const lines = first.lines.map((each, index) => ({ ...each, grams: measures[index]!.grams }));
  const made = stillMet(withLines(first, lines));
  put(sheet, row, column, made.title);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column },
    {
      heads: ["by cup and spoon", "what", "on the scale (g)", "mind"],
      cells: (name, grams, index) => [
        ...[measures[index]!.words, name, grams],
        random.next() < 0.3 ? random.pick(TIPS) : undefined,
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, column + 1, "makes");
  const total = sumOf(kit, sheet, { row: end, column: column + 2 }, amounts);
  const cells = { names, amounts, unit: "g", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 1, column: column + 1 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: column + 1, label: "should be" });
  return tellIn(sheet, recipe, { row: next + 1, column }, VOICE);
}

const WHEN = ["first weekend", "birthday", "garden party", "rainy Sunday", "with the neighbours"];
const HOW = ["too hard", "just right", "a bit soft", "icy", "everyone had seconds"];

/** How it went each time. */
function diary(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 0, 0, ["When", "Freezer said (°C)", "Minutes out", "How it was"]);
  const rows = WHEN.map((when, index) =>
    putRow(sheet, 1 + index, 0, [
      ...[when, shown(-random.whole(30, 43) / 2, "0.0"), 5 * random.whole(1, 4), random.pick(HOW)],
    ]),
  );
  readings(kit, heads[1]!, rows, 1);
}

/** Four recipes two by two, cups and spoons before the weights. */
function notebook(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Frozen things");
  put(sheet, 0, 0, "My frozen things, by cup and weighed");
  const [one, two, three, four] = kit.make(4) as [MadeRecipe, MadeRecipe, MadeRecipe, MadeRecipe];
  const pair = (left: MadeRecipe, right: MadeRecipe, row: number): number =>
    Math.max(
      entry(kit, sheet, left, { row, column: 0 }),
      entry(kit, sheet, right, { row, column: 5 }),
    );
  const next = pair(three, four, pair(one, two, 2) + 2);
  note(kit, sheet, next + 1, 0, "A cup is a US cup, filled and levelled with a knife.");
  diary(kit, addSheet(book, "How it went"));
}

/** A home cook's notebook. */
export const notebooks: readonly Layout[] = [
  { name: "home cook, cups and weights, recipes two by two", language: "en", build: notebook },
];
