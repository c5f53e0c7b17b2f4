import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { hasSpirit } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { packets, small, ENGLISH } from "../layouts/packets";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { given, warnIn, type Cautions } from "./words";
import { withMilk } from "./herd";

const OWN: Cautions = {
  honey: "Honey in this one, so not for babies under 12 months.",
  alcohol: "Alcohol in this one: no children, nobody expecting, nobody driving.",
  nuts: "Whole nuts in this one: choking hazard, not for children under 5.",
  egg: "Yolks go in raw: heat to 71 °C, or pasteurised yolk.",
};

const SHEETS = ["Tub A", "Tub B", "Tub C", "Tub D"];

/** What we know of it, and what goes on its lid; gives the row after. */
function sticker(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const next = say(sheet, recipe, { row, column: 1 }, [
    { label: "freezing from (°C)", states: "freezing point", as: "formula", format: "0.0" },
    {
      label: "share of the gelato that is ice at −13 °C (%)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -13 },
    },
    { label: "sugars to every 100 g of water (g)", states: "sugar per 100 g water", as: "typed" },
    ...(hasSpirit(recipe.made)
      ? [{ label: "alcohol in the tub (g)", states: "alcohol", as: "typed", decimals: 1 } as const]
      : []),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "we like it" });
  warnIn(sheet, recipe, { row: next + 1, column: 1 }, ["Sticker: contains", OWN]);
  return next;
}

/** One flavour on a sheet of its own; gives what the front page reads. */
function tub(kit: Kit, made: MarkedRecipe["made"], name: string): readonly [Spot, Spot | null] {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 1, made.title);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 1 },
    { heads: ["grams", "of this"], name: 1, amount: 0, cells: (item, grams) => [grams, item] },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts);
  put(sheet, end + 1, 2, "all in");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[0]!, total },
  });
  const next = sticker(sheet, recipe, end + 3);
  note(kit, sheet, next + 3, 1, kit.random.pick(["Gran's favourite.", "Sold out by three."]));
  const point = recipe.results.find(({ states }) => states === "freezing point");
  return [total, point?.spot ?? null];
}

/** A row of the front page for each tub, read from its sheet. */
function front(
  kit: Kit,
  sheet: CorpusSheet,
  rows: readonly (readonly [string, Spot, Spot | null])[],
) {
  const { marked, random } = kit;
  const scoop = given(kit, sheet, [1, 0], ["One scoop", "g", random.pick([65, 70, 75])]);
  const heads = putRow(sheet, 3, 0, ["Flavour", "Tub (g)", "Scoops", "Freezes (°C)", "Tubs made"]);
  const cells = rows.map(([title, total, point], index) => {
    const row = 4 + index;
    const mass = `='${total.sheet}'!${a1(total)}`;
    const [, grams] = putRow(sheet, row, 0, [title, mass]) as [Spot, Spot];
    const scoops = put(sheet, row, 2, shown(`=${a1(grams)}/${fixed(scoop)}`, "0"));
    if (point !== null) put(sheet, row, 3, shown(`='${point.sheet}'!${a1(point)}`, "0.0"));
    put(sheet, row, 4, random.whole(1, 4));
    return [grams, scoops] as const;
  });
  const spots = cells.map(([, scoops]) => scoops);
  marked.formulaColumns.push({ spots, heading: heads[2]!, fixed: [scoop] });
  put(sheet, 4 + rows.length, 0, "Scoops to sell, a tub of each");
  sumOf(kit, sheet, { row: 4 + rows.length, column: 2 }, spots, "0");
}

/** What we cook ourselves, by 100 g, and a swirl tried with it. */
function kitchenTable(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Mum's pans");
  put(sheet, 0, 0, "What we boil up ourselves, grams in 100 g");
  const items = ["hedgerow jelly", "windfall jam", "rhubarb pan"];
  const own = packets(kit, sheet, 2, { headings: ENGLISH, items, none: "none" });
  const lines = [
    [items[kit.random.whole(0, 2)]!, 10 * kit.random.whole(12, 25)],
    ["water", 350],
    ["sugar", 90],
  ] as const;
  small(sheet, 8, ["Swirl idea", "Grams (g)", "Freezes from (°C)"], lines, own);
  note(kit, sheet, 14, 0, "Label the jars with the date, whoever fills them.");
}

/** A front page, a sheet for each tub, and what we cook ourselves. */
function tubs(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Hatch");
  put(sheet, 0, 0, "Gelato hatch, this month's tubs");
  const mades = withMilk(kit, SHEETS.length);
  const rows = mades.map((made, index) => [made.title, ...tub(kit, made, SHEETS[index]!)] as const);
  front(kit, sheet, rows);
  kitchenTable(kit);
}

/** The family's book of tubs. */
export const hatchBooks: readonly Layout[] = [
  { name: "dairy farm hatch, tubs of the month", language: "en", build: tubs },
];
