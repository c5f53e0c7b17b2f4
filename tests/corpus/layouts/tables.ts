import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, tell, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import { input } from "../page";
import { labelWords, perHundred } from "../recipes";
import { resultAt } from "../results";
import { absolute, markRecipe, say, sumOf } from "./parts";

const LONG = [
  ...["Recipe", "Ingredient", "Amount (g)", "Batch (g)", "Freezing point (°C)"],
  ...["Water frozen at −15 °C (%)", "For", "Allergens and cautions"],
];

/** All recipes in one list, the recipe's name in each line, what is said of it in its first. */
function oneLongList(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "All recipes");
  const heads = putRow(sheet, 0, 0, LONG);
  let row = 1;
  for (const made of kit.make(4)) {
    const first = row;
    const lines = made.names.map((name, index) =>
      putRow(sheet, row++, 0, [made.title, name, made.grams[index]]),
    );
    const amounts = lines.map((cells) => cells[2]!);
    const total = sumOf(kit, sheet, { row: first, column: 3 }, amounts);
    const recipe = markRecipe(kit, made, {
      ...{ names: lines.map((cells) => cells[1]!), amounts, unit: "g" },
      ...{ amountLabel: heads[2]!, total },
    });
    resultAt(
      sheet,
      recipe,
      heads[4]!,
      { row: first, column: 4 },
      {
        ...{ states: "freezing point", as: "typed" },
      },
    );
    resultAt(
      sheet,
      recipe,
      heads[5]!,
      { row: first, column: 5 },
      {
        ...{ states: "ice of water", as: "typed", temperatureC: -15 },
      },
    );
    nameTarget(sheet, recipe, { row: first, column: 6 });
    const words = [...labelWords(made, "allergen"), ...labelWords(made, "caution")].join("; ");
    if (made.flagged && words !== "") recipe.flags.push(put(sheet, first, 7, words));
    row += 1;
  }
}

/** Prices on a sheet of their own; gives the ranges of the names and of the prices. */
function priceList({ random, marked }: Kit, wanted: readonly string[]): string[] {
  const sheet = addSheet(marked.book, "Preise");
  putRow(sheet, 0, 0, ["Ware", "EUR je kg", "Stand"]);
  const items = [...new Set([...wanted, "Vollmilch", "Zucker", "Wasser"])];
  const rows = items.map((item, index) =>
    putRow(sheet, 1 + index, 0, [
      item,
      shown(item === "Wasser" ? 0.01 : random.whole(80, 1900) / 100, "0.00"),
      "Juni",
    ]),
  );
  return [0, 1].map((at) => `Preise!${absolute(span(rows.map((cells) => cells[at]!)))}`);
}

/** One recipe lying down: per cent, grams, prices and cost in rows. */
function lying(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Quer");
  const made = perHundred(kit.make(1)[0]!);
  put(sheet, 0, 1, made.title);
  const batch = input(
    kit,
    sheet,
    { row: 1, column: 1 },
    {
      ...{
        label: "Chargengröße (g)",
        bare: "Chargengröße",
        value: random.pick([1000, 1800, 3000]),
      },
    },
  );
  ["Zutat", "Anteil (%)", "Einwaage (g)", "Preis (EUR/kg)", "Kosten (EUR)"].forEach((label, at) =>
    put(sheet, 3 + at, 1, label),
  );
  const column = (index: number): number => 2 + index;
  const names = made.names.map((name, index) => put(sheet, 3, column(index), name));
  const amounts = made.grams.map((grams, index) =>
    put(sheet, 4, column(index), shown(inUnit(grams, "%"), "0.0")),
  );
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, 5, spot.column, shown(`=${a1(spot)}*${fixed(batch)}/100`, "0")),
  );
  const [listed, values] = priceList(kit, made.names) as [string, string];
  const costs = alsoAmounts.map((spot) => {
    const found = `MATCH(${a1({ ...spot, row: 3 })},${listed},0)`;
    const price = put(sheet, 6, spot.column, shown(`=INDEX(${values},${found})`, "0.00"));
    return put(sheet, 7, spot.column, shown(`=${a1(spot)}*${a1(price)}/1000`, "0.00"));
  });
  const end = column(names.length);
  put(sheet, 3, end, "Summe");
  const total = sumOf(kit, sheet, { row: 4, column: end }, amounts, "0.0");
  sumOf(kit, sheet, { row: 5, column: end }, alsoAmounts, "0");
  sumOf(kit, sheet, { row: 7, column: end }, costs, "0.00");
  const amountLabel: Spot = { sheet: sheet.name, row: 4, column: 1 };
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "%", amountLabel, total, shared: true },
  });
  let next = say(sheet, recipe, { row: 9, column: 1 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Gefrierpunktserniedrigung", inCell: "K", states: "depression", as: "typed" },
    {
      label: "Zucker je 100 g Wasser",
      inCell: "g",
      states: "sugar per 100 g water",
      as: "typed",
      decimals: 1,
    },
    {
      label: "Eisanteil der Mischung bei −12 °C",
      inCell: "%",
      states: "ice of mix",
      as: "typed",
      temperatureC: -12,
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Ziel" });
  tell(kit, sheet, recipe, { row: next + 1, column: 1, as: "pair" });
  marked.book.names.push({
    ...{ name: "Einwaagen", refersTo: `${sheet.name}!${span(alsoAmounts)}`, sheet: null },
  });
  const check = "=SUM(Einwaagen)/1000";
  putRow(sheet, 1, 4, ["Charge (kg)", shown(check, "0.000")]);
}

/** Recipes as a list of lines, and as a table on its side. */
export const tables: readonly Layout[] = [
  { name: "all recipes in one long list", language: "en", build: oneLongList },
  { name: "Rezept liegend", language: "de", build: lying },
];
