import { a1, addSheet, fixed, put, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { madeOf, temperatures } from "../strollers/words";
import { alsoAlcohol, halfDegrees, table } from "../settled/words";

const OWN = { water: "tap water", sugar: "caster sugar", "brewed coffee": "filter coffee" };

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "With honey, so not for babies under 12 months.",
  alcohol: "With alcohol: over-18s only, not in pregnancy, not before driving.",
  nuts: "Whole nuts, a choking risk for under-5s.",
  egg: "Raw egg yolk: cook the mix to 71 °C or use pasteurised.",
};

const SAID: readonly Said[] = [
  {
    label: "starts to freeze at",
    inCell: "°C",
    states: "freezing point",
    as: "typed",
    decimals: 1,
  },
  { label: "water, all told", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "sugars to 100 g of water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "water turned to ice at −6 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -6, decimals: 0 },
  },
];

const ALCOHOL: Said = {
  ...{ label: "alcohol in the bowl", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
};

const STEPS = ["stir in", "last", "sieve first", "warm, then cool", undefined, undefined];

/** Weights first, then what it is; the shares at the right. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row, column: 0 },
    {
      heads: ["g", "what", "how", "% of the bowl"],
      cells: (name, grams) => [grams, name, kit.random.pick(STEPS)],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "in the bowl");
  const shares = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=100*${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, shares, "0.0");
  const marks = { names, amounts, alsoAmounts: shares, amountLabel: heads[0]!, total } as const;
  return markRecipe(kit, made, { ...marks, unit: "g" });
}

/** What the two bowls read through the day. */
function bowls(kit: Kit, sheet: CorpusSheet, row: number): number {
  const hours = ["10:00", "12:00", "14:00", "16:00", "18:00"];
  const { heads, rows, end } = table(
    sheet,
    { row, column: 0 },
    ["time", "left bowl (°C)", "right bowl (°C)", "by"],
    hours.map((hour) => [
      ...[hour, ...[0, 1].map(() => shown(halfDegrees(kit, -5, -2), "0.0"))],
      kit.random.pick(["Jo", "Mina", "Lee"]),
    ]),
  );
  [1, 2].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
  return end;
}

/** Two mixes below each other, what is known of each at the right, the bowls at the foot. */
function bar(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Slush machine");
  put(sheet, 0, 0, "Frozen side of the coffee bar, this month's two");
  let row = 2;
  const isClear = ({ names }: MadeRecipe) => !names.some((name) => /milk|cream|nut/.test(name));
  for (const made of madeOf(kit, 2, isClear).map((each) => called(each, OWN))) {
    put(sheet, row, 0, made.title);
    const recipe = mix(kit, sheet, made, row + 1);
    const said = alsoAlcohol(made, SAID, ALCOHOL);
    const next = say(sheet, recipe, { row: row + 1, column: 5 }, said);
    nameTarget(sheet, recipe, { row: next, column: 5, label: "made to be" });
    const end = Math.max(recipe.total!.row, next) + 1;
    tellIn(sheet, recipe, { row: end, column: 0 }, VOICE);
    row = end + 2;
  }
  put(sheet, row, 0, "Bowls, Saturday");
  const end = bowls(kit, sheet, row + 1);
  note(kit, sheet, end + 1, 0, "Drip trays out every night, paddles on Sundays.");
}

/** A coffee bar with a slush machine. */
export const granitaBars: readonly Layout[] = [
  { name: "coffee bar, two mixes and the bowls of the machine", language: "en", build: bar },
];
