import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf, type Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { larder } from "./larder";
import { tellAt } from "./words";

const TOP = 4;

const PROPERTIES: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing point in °C", { states: "freezing point", as: "formula" }],
  ["Water in 100 g (g)", { states: "water", as: "typed", decimals: 1 }],
  ["Dissolved in 100 g (g)", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Sugar for 100 g of water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

/** The list on the label, most first. */
const ingredients = ({ names, grams }: MadeRecipe): string =>
  names
    .map((name, index) => ({ name, grams: grams[index]! }))
    .sort((one, other) => other.grams - one.grams)
    .map(({ name }) => name)
    .join(", ");

/** The words for the label: what is in it, and what some must not eat. */
function wording(sheet: CorpusSheet, recipe: MarkedRecipe, { row, column }: Place): void {
  const { made, flags } = recipe;
  if (made.flagged) flags.push(put(sheet, row, column, `Ingredients: ${ingredients(made)}.`));
  tellAt(sheet, recipe, { row: row + 1, column }, "Allergy advice: contains");
}

/** One ice down its column: per cent, properties, words for the label. */
function ice(kit: Kit, made: MadeRecipe, column: number, items: readonly Spot[]): void {
  const sheet = kit.marked.book.sheets[0]!;
  const title = put(sheet, TOP - 1, column, made.title);
  const at = made.names.map((name) =>
    items.find(({ row }) => sheet.cells[row]![0]!.content === name),
  ) as Spot[];
  const amounts = at.map(({ row }, index) =>
    put(sheet, row, column, shown(made.grams[index]!, "0.0")),
  );
  const all = items.map((spot) => ({ ...spot, column }));
  const row = TOP + items.length;
  const total = sumOf(kit, sheet, { row, column }, all, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names: at, amounts, unit: "%", total, shared: true },
    amountLabel: { ...title, row: TOP - 2, column: 0 },
  });
  PROPERTIES.forEach(([, plan], index) => {
    const label = { sheet: sheet.name, row: row + 2 + index, column: 0 };
    const lines = `${absolute(span(items))},${span(all)}`;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: row + 6, column });
  wording(sheet, recipe, { row: row + 8, column });
  put(sheet, row + 10, column, kit.random.pick(["420 g", "380 g", "190 g"]));
}

const JAMS = [
  { name: "farmhouse gooseberry jam", sugars: 58, fat: 0, protein: 0.4, inert: 1.6 },
  { name: "orchard damson cheese", sugars: 55, fat: 0, protein: 0.5, inert: 2.5 },
] as const;

/** Our own jam in a ripple, by what its label says. */
function ripple(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random } = kit;
  put(sheet, top, 0, "Ripple made with our own jams (values from our lab sheet, g in 100 g)");
  const own = larder(kit, sheet, { row: top + 1, column: 0 }, JAMS);
  putRow(sheet, top + 5, 0, ["Into the ripple", "grams"]);
  const rows = [
    putRow(sheet, top + 6, 0, [JAMS[0].name, 10 * random.whole(30, 50)]),
    putRow(sheet, top + 7, 0, [JAMS[1].name, 10 * random.whole(10, 25)]),
    putRow(sheet, top + 8, 0, ["water", 10 * random.whole(4, 9)]),
  ];
  const [names, grams] = [0, 1].map((at) => rows.map((cells) => cells[at]!)) as [Spot[], Spot[]];
  put(sheet, top + 9, 0, "all");
  sumOf(kit, sheet, { row: top + 9, column: 1 }, grams);
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(grams)},${own})`;
  putRow(sheet, top + 10, 0, ["Freezing point of the ripple (°C)", shown(call, "0.0")]);
}

/** Ices in columns by per cent with what their labels have to say. */
export function freezerLabels(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Labels");
  put(sheet, 0, 0, "Text for the tub labels");
  put(sheet, 2, 0, "% of the mix");
  const mades = kit.make(3).map((made) => stillMet(perHundred(made)));
  const names = [...new Set(mades.flatMap((made) => made.names))];
  put(sheet, 3, 0, "Ingredient");
  const items = names.map((name, index) => put(sheet, TOP + index, 0, name));
  const row = TOP + items.length;
  [
    ...["All together", undefined, ...PROPERTIES.map(([label]) => label), "Made to be"],
    ...[undefined, "Front and back", undefined, "Net weight"],
  ].forEach((label, index) => put(sheet, row + index, 0, label));
  mades.forEach((made, index) => ice(kit, made, 1 + index, items));
  note(kit, sheet, row + 12, 0, "Keep frozen at −18 °C or colder. Do not refreeze once thawed.");
  ripple(kit, sheet, row + 14);
}
