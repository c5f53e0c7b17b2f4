import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { desk, down, linesOn } from "./desk";
import { pounds, type PriceOf } from "./prices";

/** The cells of a flavour's sheet that the front page shows. */
interface Flavour {
  readonly sheet: string;
  readonly batch: Spot;
  readonly cost: Spot;
  readonly point: Spot | undefined;
}

const PER_SHEET: readonly Said[] = [
  { label: "Starts to freeze (°C)", states: "freezing point", as: "formula" },
  { label: "Water in the batch (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Sugars to 100 g of water (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  { label: "Dissolved in the batch (g)", states: "dissolved", as: "typed", decimals: 0 },
];

type Page = readonly [recipe: MarkedRecipe, cost: Spot];

/** The lines of a flavour with shares, prices and costs. */
function page(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, price: PriceOf): Page {
  const list = desk(kit, sheet, made, {
    ...{ row: 2, column: 0 },
    heads: ["Ingredient", "Grams", "% of the weight", "£/kg", "£"],
    cells: (at) => [made.names[at], made.grams[at], undefined, shown(price(made, at), "0.00")],
    ...{ name: 0, amount: 1, sum: "Batch" },
  });
  const { heads, amounts, total, end } = list;
  const shares = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, end, format: "0.0", fixed: [total] },
    formula: (cell) => `=${cell}*100/${fixed(total)}`,
  });
  const costs = down(kit, sheet, amounts, {
    ...{ heading: heads[4]!, format: "0.00" },
    formula: (cell) => `=${cell}*${cell.replace("B", "D")}/1000`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { ...linesOn(list), alsoAmounts: shares, unit: "g" } as const;
  return [markRecipe(kit, made, lines), cost];
}

interface Shop {
  readonly price: PriceOf;
  readonly temperatureC: number;
}

/** A flavour on a sheet of its own. */
function flavour(kit: Kit, given: MadeRecipe, { price, temperatureC }: Shop): Flavour {
  const made = called(given, { sugar: "caster sugar", "whole milk": "full-fat milk" });
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, made.title);
  const [recipe, cost] = page(kit, sheet, made, price);
  const words = { label: "Display freezer (°C)", bare: "Display freezer", value: temperatureC };
  const temperature = input(kit, sheet, { row: 0, column: 6 }, words);
  const next = say(sheet, recipe, { row: 2, column: 6 }, [
    ...PER_SHEET,
    {
      ...{ label: "Water frozen in the display freezer (%)", states: "ice of water" },
      ...{ as: "formula", format: "0", temperature, temperatureC },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "We serve it" });
  tell(kit, sheet, recipe, { row: cost.row + 2, column: 0, as: "pair" });
  const point = recipe.results.find(({ states }) => states === "freezing point")?.spot;
  return { sheet: made.title, batch: recipe.total!, cost, point };
}

const FACTS = ["Flavour", "Batch (g)", "Starts to freeze (°C)", "Batch costs (£)", "Tub costs (£)"];

/** The front page: facts down, flavours across. */
function frontPage(kit: Kit, sheet: CorpusSheet, flavours: readonly Flavour[]): void {
  const words = { label: "A take-home tub (g)", bare: "A take-home tub" };
  const value = kit.random.pick([350, 450, 500]);
  const tub = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  FACTS.forEach((fact, index) => put(sheet, 3 + index, 0, fact));
  flavours.forEach(({ sheet: from, batch, cost, point }, index) => {
    const at = (step: number, content: string, format = "0"): Spot =>
      put(sheet, 3 + step, 1 + index, shown(content, format));
    at(0, from);
    const grams = at(1, `='${from}'!${a1(batch)}`);
    if (point !== undefined) at(2, `='${from}'!${a1(point)}`, "0.0");
    const spent = at(3, `='${from}'!${a1(cost)}`, "0.00");
    at(4, `=${a1(spent)}/${a1(grams)}*${fixed(tub)}`, "0.00");
  });
}

/** A front page over the sheets of four flavours. */
function tearoom(kit: Kit): void {
  const front = addSheet(kit.marked.book, "Front page");
  put(front, 0, 0, "Tea room, ices this summer");
  const temperatureC = kit.random.pick([-14, -15, -16]);
  const shop = { price: pounds(kit.random), temperatureC };
  const flavours = kit.make(4).map((made) => flavour(kit, made, shop));
  frontPage(kit, front, flavours);
  note(kit, front, 9, 0, "Ask in the kitchen before you change a sheet.");
}

/** Sheets of a tea room. */
export const tearooms: readonly Layout[] = [
  { name: "tea room, a front page and four sheets", language: "en", build: tearoom },
];
