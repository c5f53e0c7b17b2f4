import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { page } from "../page";
import { stock } from "../stock";

const words = (kit: Kit, en: string, de: string): string => (kit.language === "en" ? en : de);

/** Prices of everything in the kitchen, on a sheet of their own. */
function priceSheet(kit: Kit): {
  sheet: CorpusSheet;
  range: string;
  names: Spot[];
  prices: Spot[];
} {
  const sheet = addSheet(kit.marked.book, words(kit, "Prices", "Preise"));
  putRow(sheet, 0, 0, [...[words(kit, "Item", "Artikel"), words(kit, "EUR per kg", "EUR je kg")]]);
  const items = [...new Set(stock.flatMap(({ lines }) => lines.map((each) => each[kit.language])))];
  const names = items.map((item, index) => put(sheet, index + 1, 0, item));
  const prices = items.map((_, index) =>
    put(sheet, index + 1, 1, shown(Math.round(kit.random.between(60, 1500)) / 100, "0.00")),
  );
  const range = `${sheet.name}!$A$2:$B$${items.length + 1}`;
  return { sheet, range, names, prices };
}

function costing(kit: Kit, lookUp: "VLOOKUP" | "INDEX"): void {
  const sheet = addSheet(kit.marked.book, words(kit, "Costing", "Kalkulation"));
  const { range, names, prices } = priceSheet(kit);
  const [list, values] = [names, prices].map((spots) => `${sheet2(kit)}!${absolute(span(spots))}`);
  page(kit, sheet, kit.make(1)[0]!, {
    titleGap: 1,
    list: {
      columns: ["name", "amount", "price", "cost"],
      headings: {
        name: words(kit, "Ingredient", "Zutat"),
        amount: words(kit, "Amount (g)", "Menge (g)"),
        price: words(kit, "Price (EUR/kg)", "Preis (EUR/kg)"),
        cost: words(kit, "Cost (EUR)", "Kosten (EUR)"),
      },
      ...{ unit: "g", total: words(kit, "Total", "Summe") },
      priceOf: (name) =>
        lookUp === "VLOOKUP"
          ? shown(`=VLOOKUP(${a1(name)},${range},2,FALSE)`, "0.00")
          : shown(`=INDEX(${values},MATCH(${a1(name)},${list},0))`, "0.00"),
    },
    results: { place: "below", plans: [{ states: "freezing point", as: "formula" }] },
    tell: "sentence",
  });
}

const sheet2 = (kit: Kit): string => words(kit, "Prices", "Preise");
const absolute = (range: string): string => range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** A freezer's temperatures over the days. */
function log(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, words(kit, "Freezer log", "Gefrierprotokoll"));
  putRow(sheet, 0, 0, [words(kit, "Freezer in the cellar", "Gefrierschrank im Keller")]);
  const heads = putRow(sheet, 2, 0, [
    ...[words(kit, "Day", "Tag"), words(kit, "Morning (°C)", "Morgens (°C)")],
    ...[words(kit, "Evening (°C)", "Abends (°C)"), words(kit, "Remarks", "Bemerkung")],
  ]);
  const rows = Array.from({ length: 14 }, (_, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[index + 1, Math.round(random.between(-22, -16) * 2) / 2],
      Math.round(random.between(-21, -15) * 2) / 2,
    ]),
  );
  [1, 2].forEach((column) => {
    const spots = rows.map((row) => row[column]!);
    marked.numberColumns.push({ spots, heading: heads[column]!, total: null, kind: "temperature" });
  });
  note(kit, sheet, 5, 3, words(kit, "door open for long", "Tür lange offen"));
  page(kit, addSheet(marked.book, words(kit, "Recipe", "Rezept")), kit.make(1)[0]!, {
    titleGap: 0,
    list: {
      columns: ["name", "amount"],
      headings: { name: words(kit, "Ingredient", "Zutat"), amount: words(kit, "Grams", "Gramm") },
      unit: "g",
    },
    results: { place: "right", plans: [{ states: "freezing point", as: "typed" }] },
    tell: "sentence",
  });
}

/** Syrups by hand, their strength given both ways. */
function strengths(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, words(kit, "Syrups", "Sirupe"));
  putRow(sheet, 0, 0, [
    ...[words(kit, "Syrup", "Sirup"), words(kit, "Sucrose (g)", "Saccharose (g)")],
    ...[words(kit, "Water (g)", "Wasser (g)")],
    words(kit, "g sugar per 100 g water", "g Zucker je 100 g Wasser"),
    words(kit, "Sugar, % by mass", "Zucker, Massen-%"),
    words(kit, "Freezing point (°C)", "Gefrierpunkt (°C)"),
  ]);
  for (let index = 0; index < 6; index += 1) {
    const row = index + 1;
    const [sugarGrams, waterGrams] = [random.whole(8, 45) * 5, random.whole(4, 12) * 50];
    const point = callFunction(
      "FREEZINGPOINT",
      [["sucrose"], ["water"]],
      [[sugarGrams], [waterGrams]],
    )[0]![0]!;
    const [, sugar, water, perWater, share] = putRow(sheet, row, 0, [
      ...[`${words(kit, "Syrup", "Sirup")} ${"ABCDEF"[index]}`, sugarGrams, waterGrams],
      Number(((100 * sugarGrams) / waterGrams).toFixed(1)),
      Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)),
      shown(Number((point as number).toFixed(1)), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

/** Drinks in a mix, with the alcohol they bring. */
function alcohol(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, words(kit, "Drinks", "Spirituosen"));
  const heads = putRow(sheet, 0, 0, [
    ...[words(kit, "Drink", "Getränk"), words(kit, "Amount (g)", "Menge (g)")],
    ...[
      words(kit, "Alcohol (% vol)", "Alkohol (% vol)"),
      words(kit, "Pure alcohol (g)", "Reiner Alkohol (g)"),
    ],
  ]);
  const drinks = [
    ...([["vodka 40 %", "Wodka 37,5 %", 40, 37.5]] as const),
    ...([["vodka 37.5 %", "Spirituose 40 % vol", 37.5, 40]] as const),
    ...([["liqueur 25 %", "Likör 25 %", 25, 25]] as const),
  ];
  const lines = drinks.map(([en, de, abvEn, abvDe], index) => {
    const row = index + 1;
    const [, grams, abv] = putRow(sheet, row, 0, [
      ...[words(kit, en, de), random.whole(20, 120), kit.language === "en" ? abvEn : abvDe],
    ]) as [Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    return { grams, abv, alcohol: put(sheet, row, 3, shown(content, "0.0")) };
  });
  marked.alcohols.push(...lines);
  marked.formulaColumns.push({
    spots: lines.map((line) => line.alcohol),
    heading: heads[3]!,
    fixed: [],
  });
  note(
    kit,
    sheet,
    6,
    0,
    words(
      kit,
      "Contains alcohol: not for children, not in pregnancy, not before driving.",
      "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.",
    ),
  );
}

/** Ingredients by their labels, and a recipe that uses one of them. */
function own(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, words(kit, "Own ingredients", "Eigene Zutaten"));
  const headings = ["name", "water", "sugars", "fat", "protein", "inert", "allergens"];
  putRow(sheet, 0, 0, headings);
  const brands = [
    words(kit, "village fruit base", "Dorf-Fruchtgrundlage"),
    words(kit, "house fudge", "Hausfudge"),
  ];
  brands.forEach((name, index) => {
    const [fat, protein, sugars] = [random.whole(0, 6), random.whole(1, 4), random.whole(18, 40)];
    const inert = random.whole(1, 4);
    const cells = putRow(sheet, index + 1, 0, [
      ...[name, 100 - fat - protein - sugars - inert, sugars, fat, protein, inert],
      words(kit, "none", "keine"),
    ]);
    marked.ownLines.push(Object.fromEntries(headings.map((heading, at) => [heading, cells[at]!])));
  });
  const recipeSheet = addSheet(marked.book, words(kit, "Mix", "Mischung"));
  const lines = [
    ...([[brands[0]!, random.whole(200, 400)]] as const),
    ...([[words(kit, "water", "Wasser"), random.whole(300, 500)]] as const),
    ...([[words(kit, "sugar", "Zucker"), random.whole(80, 150)]] as const),
  ];
  putRow(recipeSheet, 0, 0, [
    words(kit, "Ingredient", "Zutat"),
    words(kit, "Amount (g)", "Menge (g)"),
  ]);
  const names = lines.map(([name], index) => put(recipeSheet, index + 1, 0, name));
  const grams = lines.map(([, amount], index) => put(recipeSheet, index + 1, 1, amount));
  put(recipeSheet, 5, 0, words(kit, "Freezing point (°C)", "Gefrierpunkt (°C)"));
  const table = `'${sheet.name}'!$A$1:$G$3`;
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(grams)},${table})`;
  put(recipeSheet, 5, 1, shown(call, "0.00"));
}

/** Costs through names instead of addresses. */
function named(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week");
  putRow(sheet, 0, 0, ["Wage (EUR/h)", shown(kit.random.whole(16, 24), "0.00")]);
  putRow(sheet, 1, 0, ["Hours (h)", kit.random.whole(2, 6)]);
  const at = `${sheet.name}!`;
  kit.marked.book.names.push(
    { name: "HourlyWage", refersTo: `${at}$B$1`, sheet: null },
    { name: "HoursWorked", refersTo: `${at}$B$2`, sheet: null },
  );
  putRow(sheet, 2, 0, ["Labour (EUR)", shown("=HourlyWage*HoursWorked", "0.00")]);
  page(kit, sheet, kit.make(1)[0]!, {
    top: 4,
    titleGap: 0,
    list: {
      columns: ["name", "amount", "price", "cost"],
      headings: { name: "Ingredient", amount: "g", price: "EUR/kg", cost: "EUR" },
      ...{ unit: "g", total: "Total" },
    },
    results: { place: "below", plans: [{ states: "freezing point", as: "formula" }] },
    tell: "sentence",
  });
  const { amounts } = kit.marked.recipes[0]!;
  kit.marked.book.names.push({
    name: "BatchGrams",
    refersTo: `${at}${absolute(span(amounts))}`,
    sheet: null,
  });
  put(sheet, 0, 3, "Batch (g)");
  put(sheet, 0, 4, "=SUM(BatchGrams)");
}

const both = (name: string, build: (kit: Kit) => void): Layout[] =>
  (["en", "de"] as const).map((language) => ({ name: `${name}, ${language}`, language, build }));

/** Costing, logs, syrups, drinks, own ingredients, names. */
export const others: readonly Layout[] = [
  { name: "costing by VLOOKUP", language: "en", build: (kit) => costing(kit, "VLOOKUP") },
  { name: "Kalkulation mit INDEX", language: "de", build: (kit) => costing(kit, "INDEX") },
  ...both("freezer log", log),
  ...both("syrups both ways", strengths),
  ...both("drinks", alcohol),
  ...both("own ingredients", own),
  { name: "names in formulas", language: "en", build: named },
];
