import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, madeOf, temperatures } from "../strollers/words";
import { syrupShelf } from "./syrupShelf";
import { tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Has in it",
  honey: "Honey: nothing for babies under 12 months",
  alcohol: "Alcohol: adults only, not pregnant, not driving",
  nuts: "Whole nuts: under-fives may choke",
  egg: "Raw yolk: heat to 71 °C or use pasteurised",
};

/** A mix in shares, the batch in grams beside it; gives the recipe and the next free row. */
function mix(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, row: number, batch: Spot) {
  const made = called(largestFirst(given), { water: "spring water", sugar: "caster sugar" });
  put(sheet, row, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Part", "Share by weight", "Batch (g)"],
      cells: (name, grams) => [name, shown(inUnit(grams, "fraction"), "0.0%")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}*1000`,
  });
  put(sheet, end, 0, "Whole");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "fraction", amountLabel: heads[1]! },
  });
  const next = tellBy(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  return { recipe, next: next + 1 };
}

const HEADS = [
  ...["Ice", "First crystals (°C)", "Frozen water at −13 °C", "Sugars in the mix (%)"],
  ...["Sugars per 100 g of water (g)", "Alcohol in 100 g (g)", "Style", "Slab read (°C)"],
];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "ice of water", as: "typed", temperatureC: -13, percent: "format" },
  { states: "sugar share", as: "typed" },
  { states: "sugar per 100 g water", as: "typed", decimals: 1 },
];
const ETHANOL: ResultPlan = { states: "alcohol", as: "typed", decimals: 1 };

/** One ice on the board by the slab; gives the slab's reading. */
function onBoard(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, row: number, heads: Spot[]) {
  put(sheet, row, 0, recipe.made.title);
  const lines = `Mixes!${span(recipe.names)},Mixes!${span(recipe.amounts)}`;
  PLANS.forEach((plan, index) => {
    const at = { row, column: 1 + index };
    resultAt(sheet, recipe, heads[1 + index]!, at, plan, () => lines);
  });
  if (isAlcoholic(recipe.made)) resultAt(sheet, recipe, heads[5]!, { row, column: 5 }, ETHANOL);
  nameTarget(sheet, recipe, { row, column: 6 });
  return put(sheet, row, 7, shown(-kit.random.whole(21, 28) / 2, "0.0"));
}

const hasMilk = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ allergen }) => allergen?.en === "milk");

/** Four ices without milk, those with a spirit before others; one with a mistake is always among them. */
function withoutMilk(kit: Kit): MadeRecipe[] {
  const mades = madeOf(kit, 6, (made) => !hasMilk(made));
  const rank = (made: MadeRecipe) => (made.seeded !== undefined ? 0 : isAlcoholic(made) ? 1 : 2);
  return mades.sort((one, other) => rank(one) - rank(other)).slice(0, 4);
}

/** A press house's ices in shares, read on a board of their own. */
function pressRange(kit: Kit): void {
  const { marked, random } = kit;
  const mixes = addSheet(marked.book, "Mixes");
  put(mixes, 0, 0, "Ices of the press house, shares by weight");
  const value = random.pick([2.5, 3, 4]);
  const words = { label: "We churn (kg)", bare: "We churn", value };
  const batch = input(kit, mixes, { row: 1, column: 0 }, words);
  const board = addSheet(marked.book, "Board");
  put(board, 0, 0, "By the slab");
  const heads = putRow(board, 2, 0, HEADS);
  let row = 3;
  const slab = withoutMilk(kit).map((made, index) => {
    const { recipe, next } = mix(kit, mixes, made, row, batch);
    row = next;
    return onBoard(kit, board, recipe, 3 + index, heads);
  });
  temperatures(kit, heads[7]!, slab);
  note(kit, board, 8, 0, "Slab is wiped down at six, prices on the blackboard.");
  syrupShelf(kit, addSheet(marked.book, "Syrups"));
}

/** A cider and perry maker's range. */
export const pressRanges: readonly Layout[] = [
  { name: "cider house, shares, board and syrups", language: "en", build: pressRange },
];
