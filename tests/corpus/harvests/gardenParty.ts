import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { costsUnder, labelled, numbersUnder, pricesOf, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Tell the host it contains",
  honey: "Honey: none for babies under 12 months.",
  alcohol: "Alcohol: keep from children, pregnant guests and drivers.",
  nuts: "Whole nuts: children under 5 could choke.",
  egg: "Raw egg yolk: heat to 71 °C when cooking the mix, or buy pasteurised yolk.",
};

const SAID: readonly Said[] = [
  { label: "Depression, K", states: "depression", as: "formula" },
  { label: "Freezes at, °C", states: "freezing point", as: "typed", decimals: 2 },
  {
    label: "Ice in the mix at −16 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
  { label: "Dissolved in a portion, g", states: "dissolved", as: "typed", decimals: 1 },
];

interface Job {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly guests: Spot;
  readonly end: number;
}

/** One portion, all portions, their price; the sums stand over the lines. */
function portions(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Job {
  const guests = putRow(sheet, 2, 0, ["Guests", kit.random.pick([45, 60, 80, 120])])[1]!;
  const spare = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "Spare (%)", bare: "Spare", value: kit.random.pick([5, 10]) },
    },
  );
  const prices = pricesOf(kit, made);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Ingredient", "One portion, g", "To order, kg", "per kg, €", "Cost, €"],
      cells: (item, grams, index) => [
        ...[item, shown(grams, "0.0"), undefined, shown(prices[index]!, "0.00")],
      ],
    },
  );
  const order = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [guests, spare] },
    content: (spot) => `=${a1(spot)}*${fixed(guests)}*(1+${fixed(spare)}/100)/1000`,
  });
  put(sheet, 5, 0, "Everything");
  const total = sumOf(kit, sheet, { row: 5, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: 5, column: 2 }, order, "0.00");
  const { total: cost } = costsUnder(kit, sheet, heads[4]!, order, { price: 3, totalRow: 5 });
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: order });
  return { recipe, cost, guests, end };
}

const ROTA = [
  ["Friday 3 pm", "Churn, fill the tins", "Rosa"],
  ["Saturday 9 am", "Load the cold boxes", "Emil"],
  ["Saturday 2 pm", "Plates and spoons", "Rosa"],
  ["Saturday 4 pm", "Serve", "all"],
] as const;

/** How cold the boxes stayed on the way. */
function boxes(kit: Kit, sheet: CorpusSheet, row: number): void {
  const [one, two] = [readings(kit, 3, [-22, -17]), readings(kit, 3, [-22, -17])];
  const stops = ["Kitchen", "Van", "Garden"];
  const { heads, columns } = table(
    sheet,
    { row, column: 7 },
    ["Last party", "Box 1, °C", "Box 2, °C"],
    stops.map((stop, index) => [stop, one[index], two[index]]),
  );
  for (const at of [1, 2]) numbersUnder(kit, heads[at]!, columns[at]!, "temperature");
}

/** What a garden party orders: a portion of 100 g, and all of them. */
function party(kit: Kit): void {
  const words = { water: "tap water", honey: "runny honey", "cocoa powder": "cocoa" };
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), words);
  const sheet = addSheet(kit.marked.book, "Job 14");
  put(sheet, 0, 0, `Garden party, dessert: ${made.title.toLowerCase()}, 100 g a head`);
  const { recipe, cost, guests, end } = portions(kit, sheet, made);
  const row = end + 1;
  const each = labelled(sheet, { row, column: 0 }, "Mix per head, €", `=${a1(cost)}/${a1(guests)}`);
  const bowl = labelled(sheet, { row: row + 1, column: 0 }, "Bowl and biscuit, €", 0.65);
  const dish = `=${a1(each)}+${a1(bowl)}`;
  labelled(sheet, { row: row + 2, column: 0 }, "Dessert per head, €", dish);
  put(sheet, 1, 7, "About the mix");
  const next = say(sheet, recipe, { row: 2, column: 7 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Served" });
  boxes(kit, sheet, next + 2);
  const told = tellIn(sheet, recipe, { row: row + 4, column: 0 }, VOICE);
  table(sheet, { row: told + 1, column: 0 }, ["When", "What", "Who"], ROTA);
  note(kit, sheet, told + 7, 0, "Host pays half beforehand.");
}

/** Somebody who caters for parties. */
export const gardenParties: readonly Layout[] = [
  { name: "garden party job sheet, a portion and all guests", language: "en", build: party },
];
