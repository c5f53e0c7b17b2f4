import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { Chance } from "../random";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { hasSpirit, lineRows, summed, usualPrice } from "./shared";

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** What was paid for a line, for how many kilograms, and how much of it goes in. */
function bought(random: Chance, { lines, names, grams }: MadeRecipe, index: number): Content[] {
  const size = random.pick([0.5, 1, 2, 5, 10]);
  const paid = Math.max(0.01, usualPrice(random, lines[index]!.en) * size);
  return [names[index], shown(Number(paid.toFixed(2)), "0.00"), size, grams[index]];
}

/** The lines with what was paid for them, what they cost, and their shares of the cost. */
function costedLines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Costed {
  const { marked, random } = kit;
  const heads = putRow(sheet, 3, 0, [
    ...["Item", "Bought for ($)", "Size (kg)", "Used (g)", "Cost ($)", "% of the cost"],
  ]);
  const place = { row: 4, column: 0 };
  const rows = lineRows(sheet, place, made, (index) => bought(random, made, index));
  const list = summed(kit, sheet, rows, { name: 0, amount: 3, heads, word: "Whole batch" });
  const { row } = list.total;
  const costs = rows.map(([, paid, size, used]) =>
    put(sheet, used!.row, 4, shown(`=${a1(paid!)}/${a1(size!)}*${a1(used!)}/1000`, "0.00")),
  );
  const cost = sumOf(kit, sheet, { row, column: 4 }, costs, "0.00");
  const shares = costs.map((spot) =>
    put(sheet, spot.row, 5, shown(`=${a1(spot)}/${fixed(cost)}*100`, "0.0")),
  );
  sumOf(kit, sheet, { row, column: 5 }, shares, "0.0");
  marked.formulaColumns.push({ spots: costs, heading: heads[4]!, fixed: [] });
  marked.formulaColumns.push({ spots: shares, heading: heads[5]!, fixed: [cost] });
  return { recipe: markRecipe(kit, made, { ...list, unit: "g" }), cost };
}

/** From the batch to the cup that is sold; gives the next free row. */
function perCup(kit: Kit, sheet: CorpusSheet, { recipe, cost }: Costed): number {
  const { random } = kit;
  const { row } = recipe.total!;
  const at = (step: number) => ({ row: row + 2 + step, column: 0 });
  const cup = input(kit, sheet, at(0), {
    ...{ label: "A cup holds (g)", bare: "A cup holds", value: random.pick([90, 110, 125]) },
  });
  const money = (step: number, label: string, dollars: number): Spot =>
    putRow(sheet, at(step).row, 0, [label, shown(dollars, "0.00")])[1]!;
  const paper = money(1, "Cup, lid and spoon ($)", random.whole(14, 32) / 100);
  const price = money(2, "Price on the board ($)", random.whole(12, 22) / 4);
  const line = (step: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, at(step).row, 0, [label, shown(formula, format)])[1]!;
  const cups = line(3, "Cups from the batch", `=${a1(recipe.total!)}/${a1(cup)}`, "0.0");
  const inside = `=${a1(cost)}/${a1(cups)}+${a1(paper)}`;
  const each = line(4, "One cup costs us ($)", inside, "0.00");
  line(5, "Left over from each cup ($)", `=${a1(price)}-${a1(each)}`, "0.00");
  return at(7).row;
}

const ALCOHOL_IN_IT: Said = {
  ...{ label: "Pure alcohol in the batch (g)", states: "alcohol", as: "typed", decimals: 1 },
};

/** What a cup of ice costs a café. */
function cafe(kit: Kit): void {
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar", water: "tap water" });
  const sheet = addSheet(kit.marked.book, "Cup cost");
  put(sheet, 0, 0, `${made.title} for the counter`);
  put(sheet, 1, 0, "Prices from last week's receipts");
  const costed = costedLines(kit, sheet, made);
  const { recipe } = costed;
  const next = perCup(kit, sheet, costed);
  const below = say(sheet, recipe, { row: recipe.total!.row + 2, column: 3 }, [
    { label: "Freezes from (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Water in the batch (g)", states: "water", as: "typed", decimals: 0 },
    ...(hasSpirit(made) ? [ALCOHOL_IN_IT] : []),
    {
      label: "Ice in the mix at −14 °C (%)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: below, column: 3, label: "Goes out as" });
  const last = tell(kit, sheet, recipe, { row: next, column: 0, as: "pair" });
  note(kit, sheet, last + 1, 0, "Ask for the bigger box next time.");
}

/** What it costs to make and to sell. */
export const costs: readonly Layout[] = [
  { name: "what a cup costs the café", language: "en", build: cafe },
];
