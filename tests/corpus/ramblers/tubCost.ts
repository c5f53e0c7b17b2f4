import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol, upTo } from "../strollers/words";
import type { MadeRecipe } from "../recipes";
import { caseLog, sacks } from "./invoices";
import { fact, tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Sticker: contains",
  honey: "Honey, not to be given to babies under 12 months",
  alcohol: "Alcohol, over-18s only, not in pregnancy or before driving",
  nuts: "Whole nuts, choking hazard, not under 5",
  egg: "Raw yolk, heat mix to 71 °C or buy pasteurised yolk",
};

interface Churned {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** One batch with its cost. */
function churned(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, goods: string): Churned {
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Goods in the batch", "kg", "£ per kg", "£ in the batch", "of the cost"],
      cells: (name, grams, index) => [
        ...[name, shown(inUnit(grams, "kg"), "0.000")],
        shown(`=VLOOKUP(A${4 + index},${goods},4,FALSE)`, "0.00"),
      ],
    },
  );
  const { heads, rows, names, amounts, end } = list;
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 2), heading: heads[2]!, fixed: [] });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, end, 0, "Batch");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const shares = beside(kit, heads[4]!, costs, {
    ...{ sheet, format: "0%", fixed: [cost] },
    content: (spot) => `=${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: end, column: 4 }, shares, "0%");
  const lines = { names, amounts, total, unit: "kg", amountLabel: heads[1]! } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost };
}

/** From the batch to the tub on the shelf; gives the next free row. */
function tubs(kit: Kit, sheet: CorpusSheet, { total, cost }: Churned): number {
  const { random } = kit;
  const at = (step: number) => ({ row: total.row + 2 + step, column: 0 });
  const asked = (step: number, bare: string, unit: string, value: number, format: string) =>
    input(kit, sheet, at(step), { ...{ label: `${bare} (${unit})`, bare }, value, format });
  const fill = asked(0, "Into each tub", "g", random.pick([380, 420, 450]), "0");
  const lost = asked(1, "Left on the paddle", "%", random.pick([2, 3, 4]), "0");
  const pack = asked(2, "Tub, lid, sticker", "£", random.whole(28, 55) / 100, "0.00");
  const wages = asked(3, "Wages for a batch", "£", random.whole(12, 24), "0.00");
  const price = asked(4, "Price on the freezer case", "£", random.whole(9, 16) / 2, "0.00");
  const line = (step: number, label: string, formula: string, format: string) =>
    fact(sheet, at(step), label, shown(formula, format));
  const count = `=${a1(total)}*1000*(1-${a1(lost)}/100)/${a1(fill)}`;
  const made = line(6, "Tubs from the batch", count, "0.0");
  const each = line(
    7,
    "A tub costs (£)",
    `=(${a1(cost)}+${a1(wages)})/${a1(made)}+${a1(pack)}`,
    "0.00",
  );
  line(8, "Earned on a tub (£)", `=${a1(price)}-${a1(each)}`, "0.00");
  return at(10).row;
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Mix freezes from (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Lowered by (K)", states: "depression", as: "formula" },
  { label: "Water in the batch (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved in the batch (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Tub straight from the case, −18 °C: part of its weight that is ice (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ofAlcohol(made, "Alcohol in the batch (g)"),
];

/** A bakery that prices its tubs. */
function tubCost(kit: Kit): void {
  const made = upTo(kit.make(1)[0]!, 6000);
  const sheet = addSheet(kit.marked.book, "Tub");
  const goods = sacks(kit, addSheet(kit.marked.book, "Invoices"), made.names);
  put(sheet, 0, 0, `${made.title} in tubs, what one costs us`);
  const batch = churned(kit, sheet, made, goods);
  caseLog(kit, sheet);
  const next = tubs(kit, sheet, batch);
  const { recipe, total } = batch;
  const said = say(sheet, recipe, { row: Math.max(total.row, 8) + 2, column: 3 }, answers(made));
  nameTarget(sheet, recipe, { row: said, column: 3, label: "Sold as" });
  tellBy(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
}

/** A bakery with a freezer case. */
export const tubCosts: readonly Layout[] = [
  { name: "bakery freezer case, a tub from the invoices", language: "en", build: tubCost },
];
