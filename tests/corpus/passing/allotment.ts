import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { declare } from "./words";

interface Page {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
}

/** A flavour on a sheet of its own, grams before names. */
function flavour(kit: Kit, made: MadeRecipe): Page {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 1, made.title);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Grams", "Put in", "Share of it"],
      cells: (name, grams) => [grams, name],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "makes");
  const whole = absolute(a1(total));
  const shares = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${whole}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, shares, "0.0%");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[0]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, [
    { label: "Depression (K)", states: "depression", as: "formula" },
    { label: "Solids in solution (g)", states: "dissolved", as: "formula", format: "0" },
    { label: "Water, fruit's own included (g)", states: "water", as: "typed", decimals: 0 },
    {
      ...{ label: "Sugars for every 100 g of water (g)", decimals: 1 },
      ...{ states: "sugar per 100 g water", as: "typed" },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Meant to be" });
  declare(sheet, recipe, { row: next + 2, column: 0 }, "On the board: contains");
  return { recipe, total };
}

const FRONT = [
  "Flavour",
  "Batch (g)",
  "Freezes at (°C)",
  "Ice at −16 °C (% of its water)",
  "Tubs sold",
];

/** The front page, a row for each flavour. */
function front(kit: Kit, sheet: CorpusSheet, pages: readonly Page[]): void {
  put(sheet, 0, 0, "Allotment fête, our ices at a glance");
  const heads = putRow(sheet, 2, 0, FRONT);
  const batches = pages.map(({ recipe, total }, index) => {
    const row = 3 + index;
    const { title } = recipe.made;
    put(sheet, row, 0, title);
    const lines = `'${title}'!${span(recipe.names)},'${title}'!${span(recipe.amounts)}`;
    resultAt(
      ...([sheet, recipe, heads[2]!, { row, column: 2 }] as const),
      { states: "freezing point", as: "formula" },
      () => lines,
    );
    const ice = { states: "ice of water", as: "typed", temperatureC: -16 } as const;
    resultAt(sheet, recipe, heads[3]!, { row, column: 3 }, ice);
    put(sheet, row, 4, kit.random.whole(9, 40));
    return put(sheet, row, 1, `='${title}'!${a1(total)}`);
  });
  const row = 3 + pages.length;
  put(sheet, row, 0, "All flavours");
  sumOf(kit, sheet, { row, column: 1 }, batches);
  note(kit, sheet, row + 2, 0, "Cash box and float: see the treasurer.");
}

const JARS = ["quince preserve, plot 12", "elder cordial, plot 7", "rhubarb compote, plot 3"];
const LABEL = ["name", "sugars", "water", "fat", "protein", "inert", "allergens"];

/** What members bring in jars, by the member's own reckoning; one trial with all three. */
function jars(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Members' jars");
  put(sheet, 0, 0, "Jars brought along, g in 100 g");
  const heads = putRow(sheet, 2, 0, LABEL);
  const rows = JARS.map((jar, index) => {
    const [sugars, protein, inert] = [random.whole(18, 48), random.whole(0, 1), random.whole(0, 2)];
    const water = 100 - sugars - protein - inert;
    return putRow(sheet, 3 + index, 0, [jar, sugars, water, 0, protein, inert, "none"]);
  });
  for (const [name, sugars, water, , , , allergens] of rows) {
    const line = { name: name!, water: water!, sugars: sugars!, allergens: allergens! };
    marked.ownLines.push(line);
  }
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 8, 0, ["Mixed jar ice", "g"]);
  const lines = [...JARS.map((jar) => [jar, 10 * random.whole(10, 25)]), ["water", 250]];
  const trial = lines.map((each, index) => putRow(sheet, 9 + index, 0, each));
  const call = `${span(columnOf(trial, 0))},${span(columnOf(trial, 1))},${own}`;
  putRow(sheet, 14, 0, ["Freezes at (°C)", shown(`=RIME.FREEZINGPOINT(${call})`, "0.0")]);
}

/** Three flavours, a front page before them and the members' jars behind. */
function allotment(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Front page");
  const mades = kit.make(3).map((made) => called(made, { water: "tap water" }));
  const pages = mades.map((made) => flavour(kit, made));
  front(kit, sheet, pages);
  jars(kit);
}

/** A club with a stall. */
export const allotments: readonly Layout[] = [
  { name: "allotment fête, flavour sheets behind a front page", language: "en", build: allotment },
];
