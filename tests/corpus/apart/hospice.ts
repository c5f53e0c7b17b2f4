import { addSheet, put, putRow, span, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { answer } from "../layouts/marking";
import type { MarkedRecipe } from "../marks";
import type { ResultPlan } from "../results";
import { readings, soberOnes } from "./words";

const VOICE: Voice = {
  lead: "Allergens for the ward list:",
  honey: "Honey: never for an infant under 12 months.",
  alcohol: "Contains alcohol: not for children, pregnant visitors or anyone driving home.",
  nuts: "Whole nuts: choking risk, not for children under 5 or for soft diets.",
  egg: "Raw yolk: heat to 71 °C, otherwise pasteurised yolk only.",
};

const METHOD = [
  "Scales to zero with the bowl on.",
  "Dry things first, stir, then the wet.",
  "Stick blender, one minute, no more.",
  "Chill overnight with a lid on.",
  "Churn until it stands, about half an hour.",
  "Spoon into the small pots, label, freeze.",
];

const FACTS: readonly (readonly [string, ResultPlan, string])[] = [
  ["Begins to set at", { states: "freezing point", as: "formula", format: "0.0" }, "°C"],
  ["Water in the bowl, for the fluid charts", { states: "water", as: "typed", decimals: 0 }, "g"],
  ["Sugars in 100 g", { states: "sugar share", as: "typed", decimals: 1 }, "g"],
  [
    "Of the water, frozen when served at −10 °C",
    { states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
    "%",
  ],
  [
    "Of the water, frozen in the store at −18 °C",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
    "%",
  ],
];

/** The number first, what it says after it. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): void {
  let next = row;
  for (const [words, plan, unit] of FACTS) {
    const isThere = answer(sheet, recipe, [words, next, 2], [next, 0], plan);
    if (isThere) put(sheet, next++, 1, unit);
  }
}

/** The card: grams, unit, ingredient; the method at its right. */
function card(kit: Kit, sheet: CorpusSheet): number {
  const made = called(soberOnes(kit, 1)[0]!, {
    ...{ "whole milk": "full-fat milk", sugar: "caster sugar", water: "tap water" },
    ...{ "skim milk powder": "skimmed milk powder", honey: "runny honey" },
  });
  put(sheet, 0, 0, `${made.title}, in small pots`);
  const [amountLabel] = putRow(sheet, 2, 0, ["How much", undefined, "What", undefined, "How"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 3 + index, 0, [made.grams[index], "g", name]),
  );
  METHOD.forEach((step, index) => putRow(sheet, 3 + index, 4, [`${index + 1}. ${step}`]));
  const [amounts, unitCells, names] = [0, 1, 2].map((at) => columnOf(rows, at));
  const end = 3 + Math.max(rows.length, METHOD.length);
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts!);
  putRow(sheet, end, 1, ["g", "whole bowl"]);
  const cells = { names: names!, amounts: amounts!, unitCells: unitCells!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: amountLabel!, total });
  facts(sheet, recipe, end + 2);
  nameTarget(sheet, recipe, { row: end + 8, column: 0 });
  tellIn(sheet, recipe, { row: end + 9, column: 0 }, VOICE);
  return end;
}

const JARS = ["plum compote from the garden", "stewed rhubarb, strained", "elderflower cordial"];

/** What volunteers cook, by weight in 100 g, and a spoonful frozen of all of them. */
function jars(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Volunteers' jars, g in 100 g");
  const heads = putRow(sheet, 2, 0, ["name", "water", "sugars", "inert", "allergens"]);
  const rows = JARS.map((jar, index) => {
    const [sugars, inert] = [random.whole(20, 45), random.whole(0, 3)];
    return putRow(sheet, 3 + index, 0, [jar, 100 - sugars - inert, sugars, inert, "none"]);
  });
  for (const [name, water, sugars, , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  putRow(sheet, 7, 0, ["Sorbet of jars", "g"]);
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  const lines = [...JARS.map((jar) => [jar, 10 * random.whole(8, 20)]), ["tap water", 150]];
  const list = lines.map((each, index) => putRow(sheet, 8 + index, 0, each));
  const amounts = columnOf(list, 1);
  put(sheet, 12, 0, "bowl");
  sumOf(kit, sheet, { row: 12, column: 1 }, amounts);
  const call = `=RIME.FREEZINGPOINT(${span(columnOf(list, 0))},${span(amounts)},${own})`;
  putRow(sheet, 13, 0, ["begins to set at (°C)", shown(call, "0.0")]);
}

function hospice(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Card 12");
  const end = card(kit, sheet);
  readings(
    kit,
    sheet,
    { row: end, column: 4 },
    {
      heads: ["Pantry freezer", "°C", "read by"],
      when: ["Sunday night", "Monday night", "Tuesday night", "Wednesday night"],
      tenths: [-204, -178],
      rest: () => [kit.random.pick(["sister in charge", "night nurse", "volunteer"])],
    },
  );
  note(kit, sheet, end + 7, 4, "Ask first what the guest fancies; card 14 has the sour ones.");
  jars(kit, addSheet(kit.marked.book, "Jars"));
}

/** A hospice kitchen's card. */
export const hospices: readonly Layout[] = [
  { name: "hospice kitchen card, amounts first, method beside", language: "en", build: hospice },
];
