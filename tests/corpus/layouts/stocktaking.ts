import { a1, addSheet, put, putRow, shown, span } from "../book";
import { note, tell, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { stock } from "../stock";
import { anchored, answer, asAnswerOnly, formulas, kilos, markRecipe, sumAt } from "./marking";

const SHELVES = ["Regal 1", "Regal 2", "Regal 3"];

/** What is in the house at the end of the month, more than the recipe needs; gives the list's address. */
function inventory(kit: Kit, needed: readonly string[]): string {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Inventur");
  put(sheet, 0, 0, "Inventur Ende Juli");
  putRow(sheet, 2, 0, [
    "Artikel",
    "Lagerort",
    "Gezählt (kg)",
    "Mindestbestand (kg)",
    "Gezählt von",
  ]);
  const others = stock.flatMap(({ lines }) => lines.map(({ de }) => de));
  const items = [...new Set([...needed, ...others.filter(() => random.next() < 0.3)])];
  items.sort((one, other) => one.localeCompare(other, "de"));
  items.forEach((item, index) => {
    const counted = shown(random.whole(10, 240) / 10, "0.0");
    const least = random.whole(1, 5);
    putRow(sheet, 3 + index, 0, [item, random.pick(SHELVES), counted, least]);
    put(sheet, 3 + index, 4, random.pick(["Frühschicht", "Spätschicht"]));
  });
  return `Inventur!$A$4:$C$${items.length + 3}`;
}

/** A recipe that looks up how far the stock reaches. */
function stockAndRecipe(kit: Kit): void {
  const [made] = kit.make(1);
  const range = inventory(kit, made!.names);
  const sheet = addSheet(kit.marked.book, "Rezept");
  putRow(sheet, 0, 0, ["Rezept", made!.title]);
  const heads = putRow(sheet, 2, 0, [
    ...["Zutat", "Menge (g)", "Im Haus (kg)", "Reicht für Ansätze", "Allergene"],
  ]);
  const names = made!.names.map((name, index) => put(sheet, 3 + index, 0, name));
  const amounts = made!.grams.map((grams, index) => put(sheet, 3 + index, 1, grams));
  const looked = names.map((name) => shown(`=VLOOKUP(${a1(name)},${range},3,FALSE)`, "0.0"));
  const start = { sheet: "Inventur", row: 3, column: 0 };
  const held = formulas(kit, heads[2]!, looked, { sheet, at: [3, 2], fixed: [start] });
  const reach = amounts.map((grams, index) =>
    shown(`=${a1(held[index]!)}*1000/${a1(grams)}`, "0.0"),
  );
  formulas(kit, heads[3]!, reach, { sheet, at: [3, 3] });
  const end = 3 + names.length;
  put(sheet, end, 0, "Summe");
  const total = sumAt(kit, sheet, [end, 1], amounts);
  const recipe = markRecipe(kit, made!, { names, amounts, total, amountLabel: heads[1]! });
  if (made!.flagged) {
    const allergens = made!.lines.map(({ allergen }, index) =>
      put(sheet, 3 + index, 4, allergen?.de),
    );
    recipe.flags.push(...allergens);
  }
  const below = end + 2;
  const freezing = { states: "freezing point", as: "formula" } as const;
  answer(sheet, recipe, ["Gefrierpunkt in °C", below, 0], [below, 1], freezing);
  const words = "Ausgefrorenes Wasser bei −18 °C in %";
  const frozen = { states: "ice of water", as: "typed", temperatureC: -18 } as const;
  answer(sheet, recipe, [words, below + 1, 0], [below + 1, 1], frozen);
  tell(kit, sheet, recipe, { row: below + 3, column: 0, as: "sentence" });
  note(kit, sheet, below + 6, 0, "Vor dem Ansatz nachzählen, was knapp ist.");
}

/** Answers on a sheet of their own, which read the lines by names. */
function namedAnswers(kit: Kit, recipe: MarkedRecipe): void {
  const { book } = kit.marked;
  const [items, weights] = [recipe.names, recipe.amounts].map(
    (spots) => `Plan!${anchored(span(spots))}`,
  );
  book.names.push(
    { name: "GoesIn", refersTo: items!, sheet: null },
    { name: "Weights", refersTo: weights!, sheet: null },
  );
  const answers = addSheet(book, "Answers");
  putRow(answers, 0, 0, ["For", recipe.made.title]);
  const freezing = { states: "freezing point", as: "formula" } as const;
  const kinds = [
    ["Freezing point", freezing, "°C"],
    ["Sugars, share of the mix", { states: "sugar share", as: "formula" } as const, "%"],
  ] as const;
  kinds.forEach(([label, plan, unit], index) => {
    const row = 2 + index;
    if (!answer(answers, recipe, [label, row, 0], [row, 1], plan, "GoesIn,Weights")) return;
    put(answers, row, 2, unit);
    asAnswerOnly(recipe);
  });
  note(kit, answers, 6, 0, "Weighed on the small scale, 1 g steps.");
}

/** Lines in groups, each group's sum beside its heading; the answers go by names. */
function groups(kit: Kit): void {
  const made = kilos(kit.make(1)[0]!, 4);
  const sheet = addSheet(kit.marked.book, "Plan");
  putRow(sheet, 0, 0, ["What goes in", "Weight (kg)", "Group (kg)"]);
  const middle = Math.ceil(made.names.length / 2);
  put(sheet, 1, 0, "The day before");
  put(sheet, middle + 2, 0, "On the day");
  const rows = made.names.map((_, index) => index + (index < middle ? 2 : 3));
  const names = made.names.map((name, index) => put(sheet, rows[index]!, 0, name));
  const amounts = made.grams.map((grams, index) =>
    put(sheet, rows[index]!, 1, shown(inUnit(grams, "kg"), "0.000")),
  );
  sumAt(kit, sheet, [1, 2], amounts.slice(0, middle), "0.000");
  sumAt(kit, sheet, [middle + 2, 2], amounts.slice(middle), "0.000");
  const end = rows.at(-1)! + 2;
  put(sheet, end, 0, "Whole batch");
  const total = sumAt(kit, sheet, [end, 1], amounts, "0.000");
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", total });
  tell(kit, sheet, recipe, { row: end + 2, column: 0, as: "sentence" });
  namedAnswers(kit, recipe);
}

/** Stock, groups and recipes that read them. */
export const stocktaking: readonly Layout[] = [
  { name: "Inventur und Rezept", language: "de", build: stockAndRecipe },
  { name: "groups with their sums above, answers by names", language: "en", build: groups },
];
