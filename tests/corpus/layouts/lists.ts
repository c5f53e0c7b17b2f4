import { addSheet } from "../book";
import type { Layout } from "../kit";
import { page, type PagePlan } from "../page";
import type { Language } from "../stock";

const single = (name: string, language: Language, sheetName: string, plan: PagePlan): Layout => ({
  ...{ name, language },
  build: (kit) => {
    page(kit, addSheet(kit.marked.book, sheetName), kit.make(1)[0]!, plan);
  },
});

const asCsv = (layout: Layout): Layout => ({ ...layout, isCsv: true });

/** One recipe a sheet, its lines one below the other. */
export const lists: readonly Layout[] = [
  single("plain list, results below", "en", "Mix", {
    list: {
      ...{ columns: ["name", "amount"], headings: { name: "Ingredient", amount: "Grams" } },
      ...{ unit: "g", total: "Total" },
    },
    results: {
      place: "below",
      plans: [
        { states: "freezing point", as: "typed" },
        { states: "ice of water", as: "typed", temperatureC: -18 },
      ],
    },
    tell: "sentence",
    target: "Serving target",
    note: "Strain twice, rest overnight.",
  }),
  single("numbered list, amounts first", "en", "Recipe", {
    titleGap: 1,
    list: {
      columns: ["number", "amount", "name", "remark"],
      headings: { number: "No.", amount: "Amount (g)", name: "What goes in", remark: "Remarks" },
      ...{ unit: "g", total: "Sum", gap: 1 },
    },
    results: {
      place: "below",
      gap: 1,
      unitCell: true,
      plans: [
        { states: "freezing point", as: "typed", decimals: 1 },
        { states: "water", as: "typed", decimals: 0 },
        { states: "sugar share", as: "typed", wording: 1 },
      ],
    },
    tell: "pair",
  }),
  single("unit in a column of its own", "en", "Sheet1", {
    top: 2,
    left: 1,
    titleGap: 0,
    list: {
      columns: ["name", "amount", "unit", "allergen"],
      headings: { name: "Item", amount: "Quantity", unit: "Unit", allergen: "Allergens" },
      ...{ unit: "g", total: "Batch total" },
    },
    results: {
      place: "right",
      plans: [
        { states: "freezing point", as: "formula" },
        { states: "dissolved", as: "formula" },
      ],
    },
    tell: "sentence",
  }),
  single("unit in the number format", "en", "Summer", {
    titleGap: 0,
    serving: ["Serving temperature (°C)", "Serving temperature"],
    list: {
      columns: ["name", "amount", "share"],
      headings: { name: "Ingredients", amount: "Weight", share: "Share" },
      ...{ unit: "g", format: '0" g"', total: "Total" },
    },
    results: {
      place: "below",
      plans: [
        { states: "freezing point", as: "formula", wording: 1 },
        { states: "ice of water", as: "formula", percent: "format" },
        { states: "ice of mix", as: "formula", percent: "format", wording: 1 },
      ],
    },
    tell: "sentence",
    target: "Target",
  }),
  single("kilograms with costs", "en", "Costs", {
    titleGap: 2,
    list: {
      columns: ["name", "amount", "price", "cost"],
      headings: {
        name: "Ingredient",
        amount: "kg",
        price: "Price per kg (EUR)",
        cost: "Cost (EUR)",
      },
      ...{ unit: "kg", format: "0.000", total: "Total" },
    },
    results: { place: "below", plans: [{ states: "freezing point", as: "typed" }] },
    tell: "sentence",
  }),
  single("a table with its name", "en", "Data", {
    list: {
      columns: ["name", "amount", "price", "cost", "remark"],
      headings: {
        ...{ name: "Ingredient", amount: "Amount (g)", price: "EUR per kg" },
        ...{ cost: "Cost (EUR)", remark: "Note" },
      },
      ...{ unit: "g", table: "Batch", total: "Total", gap: 1 },
    },
    results: {
      place: "right",
      unitCell: true,
      plans: [
        { states: "freezing point", as: "formula" },
        { states: "depression", as: "formula" },
      ],
    },
    tell: "pair",
  }),
  single("results above the lines", "en", "Bench card", {
    titleGap: 0,
    list: {
      ...{ columns: ["name", "amount"], headings: { name: "Component", amount: "Mass, g" } },
      ...{ unit: "g", total: "Total mass" },
    },
    results: {
      place: "above",
      plans: [
        { states: "freezing point", as: "typed", wording: 1 },
        { states: "ice of mix", as: "typed", temperatureC: -14 },
        { states: "alcohol", as: "typed", decimals: 1 },
      ],
    },
    tell: "sentence",
  }),
  single("Liste mit Summe", "de", "Rezept", {
    titleGap: 1,
    list: {
      ...{ columns: ["name", "amount"], headings: { name: "Zutat", amount: "Menge (g)" } },
      ...{ unit: "g", total: "Summe" },
    },
    results: {
      place: "below",
      plans: [
        { states: "freezing point", as: "typed" },
        { states: "ice of water", as: "typed", temperatureC: -18 },
        { states: "sugar per 100 g water", as: "typed", decimals: 1 },
      ],
    },
    tell: "sentence",
    target: "Ziel",
    note: "Über Nacht reifen lassen.",
  }),
  single("Liste mit Preisen", "de", "Kalkulation", {
    titleGap: 1,
    list: {
      columns: ["number", "name", "amount", "unit", "price", "cost"],
      headings: {
        ...{ number: "Pos.", name: "Rohstoff", amount: "Menge", unit: "Einheit" },
        ...{ price: "Preis je kg (€)", cost: "Kosten (€)" },
      },
      ...{ unit: "g", total: "Gesamt" },
    },
    results: { place: "below", gap: 1, plans: [{ states: "freezing point", as: "formula" }] },
    tell: "pair",
  }),
  single("Liste mit Anteilen", "de", "Blatt1", {
    serving: ["Serviertemperatur (°C)", "Serviertemperatur"],
    list: {
      columns: ["amount", "name", "share"],
      headings: { amount: "g", name: "Zutaten", share: "Anteil" },
      ...{ unit: "g", total: "Summe" },
    },
    results: {
      place: "right",
      plans: [
        { states: "freezing point", as: "formula", wording: 1 },
        { states: "ice of mix", as: "formula" },
      ],
    },
    tell: "sentence",
    target: "Serviervorgabe",
  }),
  single("Kilogramm, Einheit im Format", "de", "Charge", {
    titleGap: 0,
    left: 1,
    list: {
      columns: ["name", "amount", "remark"],
      headings: { name: "Bezeichnung", amount: "Einwaage", remark: "Bemerkung" },
      ...{ unit: "kg", format: '0.000" kg"', total: "Gesamtmenge" },
    },
    results: {
      place: "below",
      unitCell: true,
      plans: [
        { states: "freezing point", as: "typed", decimals: 1 },
        { states: "depression", as: "typed", decimals: 1 },
      ],
    },
    tell: "sentence",
  }),
  single("Allergene je Zeile", "de", "Kurs", {
    titleGap: 1,
    list: {
      columns: ["name", "amount", "allergen", "remark"],
      headings: { name: "Zutat", amount: "Menge in g", allergen: "Allergene", remark: "Hinweis" },
      unit: "g",
    },
    results: {
      place: "below",
      plans: [
        { states: "water", as: "typed", decimals: 0, wording: 1 },
        { states: "dissolved", as: "typed", decimals: 0 },
        { states: "ice of water", as: "typed", temperatureC: -12, percent: "format" },
      ],
    },
    tell: "sentence",
  }),
  asCsv(
    single("Werte mit Dezimalkomma", "de", "Export", {
      list: {
        ...{ columns: ["name", "amount"], headings: { name: "Zutat", amount: "Menge (kg)" } },
        ...{ unit: "kg", total: "Summe" },
      },
      results: { place: "below", plans: [{ states: "freezing point", as: "typed" }] },
      tell: "sentence",
      target: "Ziel",
    }),
  ),
  asCsv(
    single("Werte mit Dezimalkomma und Preisen", "de", "Export", {
      titleGap: 1,
      list: {
        columns: ["number", "name", "amount", "price", "cost"],
        headings: {
          ...{ number: "Nr.", name: "Zutat", amount: "Menge (g)" },
          ...{ price: "Preis je kg (EUR)", cost: "Kosten (EUR)" },
        },
        ...{ unit: "g", total: "Summe" },
      },
      results: {
        place: "below",
        plans: [
          { states: "freezing point", as: "typed" },
          { states: "ice of water", as: "typed", temperatureC: -18 },
        ],
      },
      tell: "sentence",
    }),
  ),
];
