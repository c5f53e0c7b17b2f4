import { a1, addSheet, fixed, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { down, given } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf } from "../strollers/words";
import { OURS } from "./words";

const FACTS: readonly Fact[] = [
  ["freezes from, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["lowered by, K", { states: "depression", as: "formula" }],
  ["sugars in it, % by mass", { states: "sugar share", as: "typed" }],
  [
    "water turned to ice at −14 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

interface Master {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  /** Names and amounts of all mixes, as a formula calls it. */
  readonly table: string;
}

/** The lines of a ticket, looked up by name and multiplied: the same recipe, so many times. */
function lookedUp(
  kit: Kit,
  ticket: CorpusSheet,
  made: MadeRecipe,
  [table, at]: readonly [table: string, at: number],
): MarkedRecipe {
  const perGram = kit.random.pick([2, 3, 5]);
  const kilos = given(kit, ticket, [2, 0], ["Tub size", "kg", perGram]);
  const heads = putRow(ticket, 4, 0, ["put in", "weigh, g", "done"]);
  const names = down(ticket, [5, 0], made.names);
  const amounts = names.map((name) =>
    put(ticket, name.row, 1, {
      content: `=VLOOKUP(${a1(name)},${table},${at + 2},FALSE)*${fixed(kilos)}`,
      format: "0",
    }),
  );
  kit.marked.formulaColumns.push({ spots: amounts, heading: heads[1]!, fixed: [kilos] });
  const row = 5 + amounts.length;
  put(ticket, row, 0, "in the tub");
  const total = sumOf(kit, ticket, { row, column: 1 }, amounts, "0");
  const lines = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe: MarkedRecipe = { ...markRecipe(kit, made, lines), perGram };
  kit.marked.recipes.splice(-1, 1, recipe);
  return recipe;
}

/** A ticket for the scales, with what is known of the mix beside the lines. */
function ticket(
  kit: Kit,
  made: MadeRecipe,
  at: number,
  { sheet: book, items, table }: Master,
): void {
  const sheet = addSheet(kit.marked.book, `Ticket ${"ABCD"[at]}`);
  put(sheet, 0, 0, made.title);
  const recipe = lookedUp(kit, sheet, made, [table, at]);
  FACTS.forEach(([words, plan], index) => {
    const label = put(sheet, 5 + index, 4, words);
    resultAt(sheet, recipe, label, { row: label.row, column: 5 }, plan);
  });
  nameTarget(sheet, recipe, { row: 9, column: 4, label: "wanted" });
  tellIn(sheet, recipe, { row: 11, column: 4 }, OURS);
  const amountLabel = { ...items[0]!, row: items[0]!.row - 1, column: 1 + at };
  downColumn(kit, book, made, at, { items, left: 1, unit: "g", format: "0", amountLabel });
}

/** The formulas for a kilogram on one sheet, tickets that look them up on others. */
function weighTickets(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Formula book");
  const own = {
    sugar: "household sugar",
    salt: "cooking salt",
    "lemon juice": "fresh lemon juice",
  };
  const mades = kit.make(3).map((made) => called(perKilogram(made), own));
  put(sheet, 0, 0, "Formula book, everything in g per kg of mix");
  putRow(sheet, 3, 0, ["material", ...mades.map(({ title }) => `${title}, g`)]);
  const items = down(sheet, [4, 0], itemsOf(mades));
  const last = items.at(-1)!;
  put(sheet, last.row + 1, 0, "control");
  const corner = { ...last, column: mades.length };
  const table = `'Formula book'!${absolute(span([items[0]!, corner]))}`;
  mades.forEach((made, at) => ticket(kit, made, at, { sheet, items, table }));
  note(kit, sheet, 1, 0, "Change a formula here only; the tickets follow.");
}

/** Somebody whose scales get tickets. */
export const weighTicketBooks: readonly Layout[] = [
  { name: "formula book and tickets that look it up", language: "en", build: weighTickets },
];
