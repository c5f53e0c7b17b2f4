import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import { input } from "../page";
import { labelWords, perHundred, type MadeRecipe } from "../recipes";
import { labelFor, resultAt } from "../results";
import { absolute, markRecipe, say, sumOf } from "./parts";

const FRUIT = ["pineapple", "apricot", "mango", "raspberries", "strawberries", "banana"];

/** A base, and what is made of it with one fruit each. */
function baseAndFruit(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Variations");
  const made = kit.make(1)[0]!;
  const fruit = FRUIT.filter((each) => !made.names.includes(each)).slice(0, 3);
  put(sheet, 0, 0, `${made.title} as a base, and what we make of it`);
  putRow(sheet, 2, 0, ["Share of the base used"]);
  const heads = putRow(sheet, 3, 0, [
    ...["Ingredient (g)", "Base", ...fruit.map((each) => `with ${each}`)],
  ]);
  const names = [...made.names, ...fruit].map((each, index) => put(sheet, 4 + index, 0, each));
  const amounts = made.grams.map((grams, index) => put(sheet, 4 + index, 1, grams));
  const last = 4 + names.length;
  put(sheet, last, 0, "Total");
  put(sheet, last + 1, 0, labelFor({ states: "freezing point", as: "formula" }, "en"));
  const total = sumOf(kit, sheet, { row: last, column: 1 }, amounts);
  const alsoAmounts = fruit.flatMap((_, at) => {
    const column = 2 + at;
    const factor = put(sheet, 2, column, shown(random.pick([0.6, 0.7, 0.75, 0.8]), "0%"));
    const spots = amounts.map((spot) =>
      put(sheet, spot.row, column, shown(`=${a1(spot)}*${fixed(factor)}`, "0")),
    );
    put(sheet, 4 + amounts.length + at, column, random.whole(12, 30) * 10);
    const all = names.map((spot) => ({ ...spot, column }));
    sumOf(kit, sheet, { row: last, column }, all, "0");
    const call = `=RIME.FREEZINGPOINT(${absolute(span(names))},${span(all)})`;
    put(sheet, last + 1, column, shown(call, "0.00"));
    marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: [factor] });
    return spots;
  });
  const recipe = markRecipe(kit, made, {
    ...{ names: names.slice(0, amounts.length), amounts, alsoAmounts, unit: "g", total },
    ...{ shared: true, amountLabel: heads[0]! },
  });
  const label = { sheet: sheet.name, row: last + 1, column: 0 };
  const lines = `${absolute(span(names))},${span(names.map((spot) => ({ ...spot, column: 1 })))}`;
  resultAt(
    sheet,
    recipe,
    label,
    { row: last + 1, column: 1 },
    {
      ...{ states: "freezing point", as: "formula" },
    },
    () => lines,
  );
  let next = say(sheet, recipe, { row: last + 3, column: 0 }, [
    {
      label: "The base alone: water frozen at −18 °C (%)",
      states: "ice of water",
      as: "typed",
      temperatureC: -18,
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "The base alone is for" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next + 1, 0, "Fruit is weighed after washing and stoning.");
}

interface TwoRows {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly batch: Spot;
}

function twoRows(kit: Kit, made: MadeRecipe, top: number, { items, heads, batch }: TwoRows): void {
  const sheet = kit.marked.book.sheets[0]!;
  const [, label] = putRow(sheet, top, 0, [made.title, "%"]);
  put(sheet, top + 1, 1, "g");
  const at = made.names.map((name) => 2 + items.indexOf(name));
  const amounts = at.map((column, index) =>
    put(sheet, top, column, inUnit(made.grams[index]!, "%")),
  );
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, top + 1, spot.column, shown(`=${a1(spot)}/100*${fixed(batch)}`, "0")),
  );
  const end = 2 + items.length;
  const all = (row: number): Spot[] => heads.map((spot) => ({ ...spot, row }));
  const total = sumOf(kit, sheet, { row: top, column: end }, all(top), "0.0");
  sumOf(kit, sheet, { row: top + 1, column: end }, all(top + 1), "0");
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((column) => heads[column - 2]!), amounts, alsoAmounts, unit: "%", total },
    ...{ shared: true, amountLabel: label! },
  });
  const lines = `${absolute(span(heads))},${span(all(top))}`;
  const over = { sheet: sheet.name, row: 3, column: end + 1 };
  const plan = { states: "freezing point", as: "formula" } as const;
  resultAt(sheet, recipe, over, { row: top, column: end + 1 }, plan, () => lines);
  nameTarget(sheet, recipe, { row: top, column: end + 2 });
  const words = [...labelWords(made, "allergen"), ...labelWords(made, "caution")].join("; ");
  if (made.flagged && words !== "") recipe.flags.push(put(sheet, top, end + 3, words));
}

/** Ingredients across the top; each mix has a row of per cent and a row of grams, then a blank. */
function percentOverGrams(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Range");
  const mades = kit.make(3).map(perHundred);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  put(sheet, 0, 0, "The range, per cent by mass over grams for one batch");
  const batch = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "One batch (g)", bare: "One batch", value: kit.random.pick([900, 1200, 2000]) },
    },
  );
  const [, , ...heads] = putRow(sheet, 3, 0, [
    ...["Mix", "in", ...items, "Sum", "Freezing point (°C)", "Served", "Allergens, cautions"],
  ]);
  const plan = { items, heads: heads.slice(0, items.length), batch };
  mades.forEach((made, index) => twoRows(kit, made, 4 + 3 * index, plan));
}

/** One mix in several forms. */
export const variations: readonly Layout[] = [
  { name: "a base with three fruits", language: "en", build: baseAndFruit },
  { name: "per cent over grams, two rows a mix", language: "en", build: percentOverGrams },
];
