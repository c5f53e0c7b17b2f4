import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { usualPrice } from "../unseen/shared";
import { alcoholIn, asked, counted, warnAt } from "./words";

const HEADS = ["Goes in", "Case (kg)", "Case price (£)", "£ per kg", "Tub mix (g)", "Cost (£)"];

const CASES = [1, 2.5, 5, 10, 12.5];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** The lines with the cases they come in. */
const cases = ({ random }: Kit, sheet: CorpusSheet, made: MadeRecipe) =>
  listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: HEADS,
      cells: (item, grams, index) => {
        const size = random.pick(CASES);
        const price = Math.round(100 * size * usualPrice(random, made.lines[index]!.en)) / 100;
        return [item, shown(size, "0.0"), shown(price, "0.00"), undefined, grams];
      },
      ...{ name: 0, amount: 4 },
    },
  );

/** The lines from the case price to what each costs. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Costed {
  const { heads, rows, names, amounts, end } = cases(kit, sheet, made);
  const content = (spot: Spot, index: number) => `=${a1(spot)}/${a1(rows[index]![1]!)}`;
  const kilo = beside(kit, heads[3]!, columnOf(rows, 2), { sheet, format: "0.00", content });
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(kilo[index]!)}*${a1(spot)}/1000`,
  });
  put(sheet, end, 1, "Whole tub");
  const total = sumOf(kit, sheet, { row: end, column: 5 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 6 }, costs, "0.00");
  const lines = { names, amounts, unit: "g", amountLabel: heads[4]!, total } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost };
}

/** From the tub to what is left of a scoop's price. */
function scoops(kit: Kit, sheet: CorpusSheet, { total, cost }: Costed, row: number): number {
  const { random } = kit;
  const scoop = asked(kit, sheet, [row, 1], ["One scoop", "g", random.pick([55, 60, 65])]);
  const money = (at: number, label: string, pounds: number) =>
    putRow(sheet, row + at, 1, [label, shown(pounds, "0.00")])[1]!;
  const cone = money(1, "Wafer cone and napkin (£)", random.whole(11, 19) / 100);
  const sold = money(2, "Gate price for one (£)", random.whole(11, 15) / 4);
  const vat = counted(sheet, [row + 3, 1], ["VAT (%)", 20]);
  const line = (at: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row + at, 1, [label, shown(formula, format)])[1]!;
  const count = line(4, "Scoops out of the tub", `=${a1(total)}/${a1(scoop)}`, "0");
  const inside = `=${a1(cost)}/${a1(count)}+${a1(cone)}`;
  const each = line(5, "One scoop in its cone costs (£)", inside, "0.00");
  const net = line(6, "Price without VAT (£)", `=${a1(sold)}/(1+${a1(vat)}/100)`, "0.00");
  line(7, "Left for the zoo (£)", `=${a1(net)}-${a1(each)}`, "0.00");
  return row + 9;
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Mix starts to freeze at", inCell: "°C", states: "freezing point", as: "formula" },
  {
    ...{ label: "Frozen part of the water at −14 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "Water in the tub", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars in the tub mix (%)", states: "sugar share", as: "typed" },
  ...alcoholIn(made, "Alcohol in the tub (g)"),
];

/** A tub on its own sheet. */
function tub(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Tub ${at + 1}`);
  put(sheet, 0, 1, `Kiosk by the penguins: ${made.title}`);
  put(sheet, 1, 1, "Case prices from the spring order, delivery not in it");
  const list = costed(kit, sheet, made);
  const { recipe, total } = list;
  const next = scoops(kit, sheet, list, total.row + 2);
  const below = say(sheet, recipe, { row: next, column: 1 }, answers(made));
  nameTarget(sheet, recipe, { row: below, column: 1, label: "Made to be" });
  const last = warnAt(sheet, recipe, { row: below + 1, column: 1 }, "Allergy board: contains");
  note(kit, sheet, last + 1, 1, "Broken cones go to the goats, count them as sold.");
  put(sheet, total.row + 1, 1, "Pence for 100 g");
  const pence = `=${fixed(list.cost)}*100/${fixed(total)}*100`;
  put(sheet, total.row + 1, 6, shown(pence, "0"));
}

/** Two tubs of the season. */
function zooCafe(kit: Kit): void {
  const mades = kit.make(2).map((made) => called(made, { sugar: "granulated sugar" }));
  mades.forEach((made, index) => tub(kit, made, index));
}

/** The kiosk of a zoo. */
export const zooCafes: readonly Layout[] = [
  { name: "zoo kiosk, from the case to the cone", language: "en", build: zooCafe },
];
