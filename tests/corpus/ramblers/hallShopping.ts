import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, itemsOf, madeOf, temperatures } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { wordsBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Made with",
  honey: "Honey inside, please not for under-ones",
  alcohol: "Alcohol inside, adults only, not if you are pregnant or driving",
  nuts: "Whole nuts, choking danger below 5 years",
  egg: "Raw egg yolk, cook to 71 °C or use pasteurised",
};

const TOP = 4;
const COLD = -15;

interface Plan {
  readonly names: readonly Spot[];
  readonly items: readonly string[];
  /** The headings after the ingredients. */
  readonly after: readonly Spot[];
  readonly title: Spot;
}

const AFTER = [
  ...["One pan (g)", "Starts to freeze (°C)", "Sugars in it (% of the weight)"],
  ...[`Water that is ice in the cool box at ${COLD} °C (%)`.replace("-", "−"), "How it should be"],
  ...["For the card on the table", "Box when it came (°C)"],
];

const TOLD: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "sugar share", as: "typed", decimals: 0 },
  { states: "ice of water", as: "typed", temperatureC: COLD, decimals: 0 },
];

/** One flavour along its row; gives the box's temperature. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, plan: Plan): Spot {
  const { names, items, after, title } = plan;
  putRow(sheet, row, 0, [made.title, kit.random.whole(1, 4)]);
  const own = made.names.map((name) => names[items.indexOf(name)]!);
  const amounts = own.map(({ column }, index) => put(sheet, row, column, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, row }));
  const at = (index: number) => ({ row, column: after[index]!.column });
  const total = sumOf(kit, sheet, at(0), all);
  const recipe = markRecipe(kit, made, {
    ...{ names: own, amounts, total, unit: "g", amountLabel: title, shared: true },
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  TOLD.forEach((each, index) => {
    resultAt(sheet, recipe, after[1 + index]!, at(1 + index), each, () => lines);
  });
  nameTarget(sheet, recipe, at(4));
  const words = wordsBy(made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, row, at(5).column, words));
  return put(sheet, row, at(6).column, shown(-kit.random.whole(24, 33) / 2, "0.0"));
}

/** Under the flavours, what to buy of each thing and what that comes to. */
function shopping(kit: Kit, sheet: CorpusSheet, plan: Plan, count: number): void {
  const [first, last] = [TOP + 1, TOP + count];
  const end = last + 2;
  ["Buy altogether (g)", "Village shop (£ a kilo)", "Till (£)"].forEach((label, index) =>
    put(sheet, end + index, 0, label),
  );
  const tills = plan.names.map(({ column }, index) => {
    const [top, bottom] = [first, last].map((row) => a1({ sheet: "", row, column }));
    const pans = `$B$${first + 1}:$B$${last + 1}`;
    const need = put(sheet, end, column, `=SUMPRODUCT(${pans},${top!}:${bottom!})`);
    const item = plan.items[index]!;
    const price = item.includes("water") ? 0 : usualPrice(kit.random, item);
    const perKilo = put(sheet, end + 1, column, shown(price, "0.00"));
    const cost = `=${a1(need)}/1000*${a1(perKilo)}`;
    return put(sheet, end + 2, column, shown(cost, "0.00"));
  });
  const column = plan.after[0]!.column;
  sumOf(kit, sheet, { row: end + 2, column }, tills, "0.00");
  note(kit, sheet, end + 4, 0, "Cones and napkins come out of the hall's own money.");
}

/** Five flavours in rows, and what to buy for them. */
function hallShopping(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Shopping");
  put(sheet, 0, 0, "Ice-cream afternoon, everything we have to buy");
  const title = put(sheet, 2, 0, "Grams for one pan of each");
  const mades = madeOf(kit, 5, (each) => !isAlcoholic(each));
  const items = itemsOf(mades);
  const heads = putRow(sheet, TOP, 0, ["Flavour", "Pans", ...items, ...AFTER]);
  const names = heads.slice(2, 2 + items.length);
  const after = heads.slice(2 + items.length);
  const plan = { names, items, after, title };
  const boxes = mades.map((made, index) => flavour(kit, sheet, made, TOP + 1 + index, plan));
  temperatures(kit, after[6]!, boxes);
  shopping(kit, sheet, plan, mades.length);
}

/** An organiser's shopping. */
export const hallShops: readonly Layout[] = [
  { name: "village afternoon, flavours in rows and shopping", language: "en", build: hallShopping },
];
