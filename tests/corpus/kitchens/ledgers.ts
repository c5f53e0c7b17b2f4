import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { labelWords, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { columnOf } from "./hand";

interface Ledger {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly portion: Spot;
  readonly title: Spot;
}

const DAYS = ["3 May", "9 May", "17 May", "24 May"];

/** One batch of the ledger in its row; gives the cells with its portions and its cabinet. */
function batch(kit: Kit, made: MadeRecipe, row: number, ledger: Ledger): [Spot, Spot] {
  const { items, heads, portion, title } = ledger;
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, row, 0, [DAYS[row - 4], made.title]);
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((item, index) => put(sheet, row, 2 + item, made.grams[index]));
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: 2 + item }));
  const end = 2 + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all);
  const portions = put(sheet, row, end + 1, shown(`=${a1(total)}/${fixed(portion)}`, "0.0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => heads[2 + item]!), amounts, unit: "g", amountLabel: title, total },
    shared: true,
  });
  const lines = `${absolute(span(heads.slice(2, end)))},${span(all)}`;
  const plans = [
    { states: "freezing point", as: "formula" },
    { states: "ice of water", as: "typed", temperatureC: -14 },
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ] as const;
  plans.forEach((plan, index) => {
    const column = end + 2 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row, column: end + 5 });
  const words = [...labelWords(made, "allergen"), ...labelWords(made, "caution")].join("; ");
  if (made.flagged && words !== "") recipe.flags.push(put(sheet, row, end + 6, words));
  const cabinet = put(sheet, row, end + 7, shown(-kit.random.whole(30, 38) / 2, "0.0"));
  return [portions, cabinet];
}

/** Every batch a row: what went into it, what it gave. */
function ledger(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Ledger");
  const title = put(sheet, 0, 0, "Batch ledger, all weights in g");
  const place = { row: 1, column: 0 };
  const words = { label: "One portion (g)", bare: "One portion", value: random.pick([50, 65, 80]) };
  const portion = input(kit, sheet, place, words);
  const mades = kit.make(4);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const heads = putRow(sheet, 3, 0, [
    ...["Date", "Recipe", ...items, "Batch", "Portions", "Freezing point (°C)"],
    ...[
      "Water frozen at −14 °C (%)",
      "Sugars per 100 g water (g)",
      "Served as",
      "Allergens etc.",
      "Cabinet (°C)",
    ],
  ]);
  const rows = mades.map((made, index) =>
    batch(kit, made, 4 + index, { items, heads, portion, title }),
  );
  const [portions, cabinets] = [columnOf(rows, 0), columnOf(rows, 1)];
  const heading = heads[3 + items.length]!;
  marked.formulaColumns.push({ spots: portions, heading, fixed: [portion] });
  marked.numberColumns.push({
    ...{ spots: cabinets, heading: heads[9 + items.length]!, total: null, kind: "temperature" },
  });
  note(kit, sheet, 9, 1, "Thermometer in the cabinet checked on 1 May.");
}

/** A ledger with recipes in rows. */
export const ledgers: readonly Layout[] = [
  { name: "batch ledger, a row a batch", language: "en", build: ledger },
];
