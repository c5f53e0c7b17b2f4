import { addSheet, put, span, a1 } from "../book";
import type { Kit, Layout } from "../kit";
import { page, type PagePlan } from "../page";

const threeBelow: PagePlan = {
  titleGap: 0,
  list: {
    ...{ columns: ["name", "amount"], headings: { name: "Ingredient", amount: "g" } },
    ...{ unit: "g", total: "Total" },
  },
  results: {
    place: "below",
    plans: [
      { states: "freezing point", as: "typed", decimals: 1 },
      { states: "ice of water", as: "typed", temperatureC: -15, wording: 1 },
    ],
  },
  tell: "sentence",
};

const besides: PagePlan = {
  titleGap: 0,
  top: 1,
  list: {
    ...{ columns: ["name", "amount"], headings: { name: "Zutat", amount: "Gramm" } },
    ...{ unit: "g", total: "Summe" },
  },
  results: { place: "below", plans: [{ states: "freezing point", as: "typed" }] },
  tell: "sentence",
  target: "Ziel",
};

const ownSheet: PagePlan = {
  titleGap: 1,
  list: {
    columns: ["name", "amount", "unit"],
    headings: { name: "Ingredient", amount: "Amount", unit: "Unit" },
    ...{ unit: "g", total: "Total" },
  },
  results: {
    place: "below",
    plans: [
      { states: "freezing point", as: "formula" },
      { states: "water", as: "formula" },
    ],
  },
  tell: "pair",
};

function scaled(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Production");
  put(sheet, 0, 0, "Batches");
  const factor = put(sheet, 0, 1, kit.random.whole(2, 9));
  page(kit, sheet, kit.make(1)[0]!, {
    top: 2,
    list: {
      columns: ["name", "amount", "scaled", "price", "cost"],
      headings: {
        ...{ name: "Ingredient", amount: "One batch (g)", scaled: "All batches (g)" },
        ...{ price: "EUR/kg", cost: "Cost of one batch (EUR)" },
      },
      ...{ unit: "g", total: "Total", factor },
    },
    results: { place: "below", plans: [{ states: "freezing point", as: "formula" }] },
    tell: "sentence",
  });
}

function subtotals(kit: Kit): void {
  const [language, [made]] = [kit.language, kit.make(1)];
  const sheet = addSheet(kit.marked.book, language === "en" ? "Phases" : "Phasen");
  const words =
    language === "en"
      ? {
          name: "Ingredient",
          amount: "Amount (g)",
          total: "Sum of the base",
          all: "Grand total (g)",
        }
      : { name: "Zutat", amount: "Menge (g)", total: "Zwischensumme", all: "Gesamtsumme (g)" };
  page(kit, sheet, made!, {
    titleGap: 0,
    list: {
      ...{ columns: ["name", "amount"], headings: words, unit: "g", total: words.total },
    },
    results: { place: "right", plans: [{ states: "freezing point", as: "typed" }] },
    tell: "sentence",
  });
  const { total } = kit.marked.recipes[0]!;
  const row = sheet.cells.length + 1;
  put(sheet, row, 0, language === "en" ? "Sticks (g)" : "Stiele (g)");
  const sticks = put(sheet, row, 1, kit.random.whole(20, 60));
  put(sheet, row + 1, 0, words.all);
  put(sheet, row + 1, 1, `=${a1(total!)}+${span([sticks])}`);
}

/** Several recipes in a book, or a recipe with more than its lines. */
export const several: readonly Layout[] = [
  {
    ...{ name: "three recipes one below the other", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Class of May");
      let top = 0;
      for (const made of kit.make(3)) top = page(kit, sheet, made, { ...threeBelow, top }) + 1;
    },
  },
  {
    ...{ name: "zwei Rezepte nebeneinander", language: "de" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Vergleich");
      kit.make(2).forEach((made, index) => page(kit, sheet, made, { ...besides, left: index * 4 }));
    },
  },
  {
    ...{ name: "a sheet for each recipe and an overview", language: "en" },
    build: (kit) => {
      const overview = addSheet(kit.marked.book, "Overview");
      const mades = kit.make(3);
      mades.forEach((made) => page(kit, addSheet(kit.marked.book, made.title), made, ownSheet));
      put(overview, 0, 0, "Recipe");
      put(overview, 0, 1, "Batch (g)");
      kit.marked.recipes.forEach(({ made, total }, index) => {
        put(overview, index + 1, 0, made.title);
        put(overview, index + 1, 1, `='${made.title}'!${a1(total!)}`);
      });
    },
  },
  {
    ...{ name: "ein Blatt je Rezept", language: "de" },
    build: (kit) => {
      for (const made of kit.make(2)) {
        page(kit, addSheet(kit.marked.book, made.title), made, {
          ...besides,
          titleGap: 2,
          results: {
            place: "below",
            unitCell: true,
            plans: [
              { states: "freezing point", as: "typed" },
              { states: "ice of mix", as: "typed", temperatureC: -12 },
            ],
          },
        });
      }
    },
  },
  { name: "batches by a factor", language: "en", build: scaled },
  { name: "base, sticks and a grand total", language: "en", build: subtotals },
  { name: "Masse, Stiele und Gesamtsumme", language: "de", build: subtotals },
];
