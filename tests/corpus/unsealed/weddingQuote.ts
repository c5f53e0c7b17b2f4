import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol } from "../strollers/words";
import { clock, costsBeside, fact, paid } from "../counters/words";

const VOICE: Voice = {
  lead: "Tell the couple it contains:",
  honey: "Made with honey: none for babies below 12 months.",
  alcohol: "Alcohol: not for the children's table, pregnant guests or anyone driving.",
  nuts: "Whole nuts: choking hazard for little ones under 5.",
  egg: "Raw egg yolk: bring to 71 °C or switch to pasteurised yolk.",
};

const WORDS = {
  ...{ sugar: "white sugar", "whole milk": "fresh whole milk", "egg yolk": "egg yolks" },
  ...{ banana: "ripe bananas", "orange juice": "fresh orange juice" },
};

const SAID: readonly Said[] = [
  { label: "Freezes at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in recipe (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved in recipe (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Sugars (g per 100 g water)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "Water frozen in the van at −16 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

const TIMES = [
  [clock(12.5), "load boxes, dry ice last"],
  [clock(15), "set up behind the marquee"],
  [clock(19.75), "move tubs to the front fridge's ice box"],
  [clock(20.25), "serve"],
] as const;

/** Guests and helpings, and by how much the recipe has to be multiplied. */
function helpings(kit: Kit, sheet: CorpusSheet): readonly [guests: Spot, portion: Spot] {
  const { random } = kit;
  const guests = fact(sheet, { row: 2, column: 0 }, "Guests", random.whole(12, 34) * 5);
  const portion = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    { label: "Helping each (g)", bare: "Helping each", value: random.pick([70, 85, 100]) },
  );
  return [guests, portion];
}

/** What the event costs and what is asked for it. */
function quote(sheet: CorpusSheet, row: number, cost: Spot, guests: Spot): void {
  const hire = fact(sheet, { row, column: 0 }, "Bowls and spoons, hire ($)", 48, "0.00");
  const all = `=${a1(cost)}+${a1(hire)}`;
  const sum = fact(sheet, { row: row + 1, column: 0 }, "Our cost for the ice ($)", all, "0.00");
  const head = `=${a1(sum)}/${a1(guests)}`;
  fact(sheet, { row: row + 2, column: 0 }, "Cost a head ($)", head, "0.00");
  fact(sheet, { row: row + 3, column: 0 }, "Quoted a head ($)", 6.5, "0.00");
}

/** One ice for one wedding: recipe, event, cost. */
function weddingQuote(kit: Kit): void {
  const made = called(kit.make(1)[0]!, WORDS);
  const sheet = addSheet(kit.marked.book, "Sept 20");
  put(sheet, 0, 0, `Wedding, barn at the mill: ${made.title.toLowerCase()}`);
  const [guests, portion] = helpings(kit, sheet);
  const list = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Ingredient", "Recipe (g)", "Event (g)", "$ per kg", "$ for event", "Bought"],
      cells: (name, grams, index) => [
        ...[name, grams, undefined, shown(paid(kit, made.lines[index]!.en), "0.00")],
        ...[undefined, kit.random.next() < 0.5 ? "x" : undefined],
      ],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 0, "Total");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const times = `=${a1(guests)}*${a1(portion)}/${a1(total)}`;
  const factor = fact(sheet, { row: 4, column: 0 }, "Times the recipe", times, "0.00");
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const costs = costsBeside(kit, sheet, heads[4]!, alsoAmounts, { column: 3 });
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { names, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  quote(sheet, end + 2, cost, guests);
  const said = [...SAID, ...ofAlcohol(made, "Pure alcohol in recipe (g)")];
  const next = say(sheet, recipe, { row: 6, column: 7 }, said);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Should be" });
  tellIn(sheet, recipe, { row: end + 7, column: 0 }, VOICE);
  putRow(sheet, end + 9, 0, ["On the day"]);
  TIMES.forEach((cells, index) => putRow(sheet, end + 10 + index, 0, cells));
  note(kit, sheet, end + 15, 0, "Bride's aunt pays the deposit, see mail of 3 May.");
}

/** A caterer's quotations. */
export const weddingQuotes: readonly Layout[] = [
  { name: "caterer's quote, one ice for so many guests", language: "en", build: weddingQuote },
];
