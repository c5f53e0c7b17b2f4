import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, type CorpusSheet } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { withLines, type MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Sign for the table: has",
  honey: "honey in it, none for babies under 1 year",
  alcohol: "a drop of alcohol in it, grown-ups only, not for drivers or expectant mothers",
  nuts: "whole nuts, tiny ones under 5 could choke",
  egg: "raw egg yolk, heat to 71 °C or use pasteurised",
};

interface Scoop {
  readonly quantity: number;
  readonly unit: string;
  readonly each: number;
}

/** Cups and spoons where they come out in quarters and halves, the scales where not. */
function scoop(name: string, grams: number): Scoop {
  for (const [unit, steps] of [
    ["cup", 4],
    ["tbsp", 1],
    ["tsp", 2],
  ] as const) {
    const one = callFunction("GRAMS", name, 1, unit)[0]?.[0];
    if (typeof one !== "number") continue;
    const each = Math.round(one);
    const quantity = Math.round((grams / each) * steps) / steps;
    if (quantity > 0 && quantity <= 12) return { quantity, unit, each };
  }
  return { quantity: grams, unit: "g", each: 1 };
}

function inScoops(made: MadeRecipe): { made: MadeRecipe; scoops: readonly Scoop[] } {
  const scoops = made.lines.map(({ en, grams }) => scoop(en, grams));
  const lines = made.lines.map((each, index) => ({
    ...{ ...each, grams: scoops[index]!.quantity * scoops[index]!.each },
  }));
  return { made: { ...withLines(made, lines), target: null }, scoops };
}

const known = (made: MadeRecipe): readonly Said[] => [
  {
    ...{ label: "Goes slushy at (°C)", states: "freezing point" },
    ...{ as: "formula", format: "0.0" },
  },
  { label: "Water altogether (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Water frozen in the hall freezer, −17 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -17, decimals: 0 },
  },
  ...ofAlcohol(made, "Alcohol (g)"),
];

/** A flavour in the helpers' measures, what is known of it at the right; gives the next free row. */
function flavour(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, row: number): number {
  const { made, scoops } = inScoops(given);
  put(sheet, row, 0, made.title);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["How many", "Of these", "What", "One weighs (g)", "Together (g)"],
      cells: (name, _, index) => {
        const { quantity, unit, each } = scoops[index]!;
        return [quantity, unit, name, each];
      },
      ...{ name: 2, amount: 0 },
    },
  );
  const { heads, rows, names, end } = list;
  const amounts = beside(kit, heads[4]!, columnOf(rows, 0), {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}`,
  });
  put(sheet, end, 2, "One bowl");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts, "0");
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[4]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const said = say(sheet, recipe, { row: row + 2, column: 6 }, known(made));
  tellBy(sheet, recipe, { row: said, column: 6 }, VOICE);
  return Math.max(end, said) + 3;
}

/** Three bowls for the afternoon, for helpers without kitchen scales. */
function hallCups(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "For the helpers");
  put(sheet, 0, 0, "Ice-cream afternoon at the village hall: what each of you makes");
  note(kit, sheet, 1, 0, "Saturday, doors open at half past two");
  let row = 3;
  for (const made of madeOf(kit, 3, (each) => !isAlcoholic(each))) {
    row = flavour(kit, sheet, made, row);
  }
  note(kit, sheet, row, 0, "Cups are American cups, level, please. Bring them frozen by noon.");
}

/** An organiser's sheet for helpers at home. */
export const hallHelpers: readonly Layout[] = [
  { name: "village afternoon, cups and spoons for helpers", language: "en", build: hallCups },
];
