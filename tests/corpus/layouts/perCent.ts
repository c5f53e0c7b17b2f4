import { addSheet } from "../book";
import type { Kit, Layout } from "../kit";
import { page, type PagePlan } from "../page";
import { perHundred } from "../recipes";

const typed = { states: "freezing point", as: "typed" } as const;

function perCentPage(kit: Kit, name: string, plan: PagePlan): void {
  const sheet = addSheet(kit.marked.book, name);
  page(kit, sheet, perHundred(kit.make(1)[0]!), plan);
  for (const { amounts, amountLabel, total } of kit.marked.recipes) {
    if (amountLabel === null) continue;
    kit.marked.numberColumns.push({
      spots: amounts,
      heading: amountLabel,
      total,
      kind: "per cent",
    });
  }
}

/** Recipes whose amounts are per cent. */
export const perCent: readonly Layout[] = [
  {
    ...{ name: "per cent list", language: "en" },
    build: (kit) =>
      perCentPage(kit, "Percent", {
        titleGap: 1,
        list: {
          ...{ columns: ["name", "amount"], headings: { name: "Ingredient", amount: "%" } },
          ...{ unit: "%", total: "Total" },
        },
        results: {
          place: "below",
          plans: [typed, { states: "sugar share", as: "typed" }],
        },
        tell: "sentence",
        target: "Target",
      }),
  },
  {
    ...{ name: "share of the mix with remarks", language: "en" },
    build: (kit) =>
      perCentPage(kit, "Formula", {
        list: {
          columns: ["number", "name", "amount", "remark"],
          headings: {
            number: "#",
            name: "Component",
            amount: "Share (% by mass)",
            remark: "Remark",
          },
          ...{ unit: "%", total: "Sum", gap: 1 },
        },
        results: { place: "right", plans: [{ ...typed, as: "formula" }] },
        tell: "pair",
      }),
  },
  {
    ...{ name: "Prozentliste", language: "de" },
    build: (kit) =>
      perCentPage(kit, "Prozentrezept", {
        titleGap: 0,
        list: {
          ...{ columns: ["name", "amount"], headings: { name: "Zutat", amount: "Anteil (%)" } },
          ...{ unit: "%", total: "Summe" },
        },
        results: {
          place: "below",
          plans: [typed, { states: "ice of water", as: "typed", temperatureC: -18 }],
        },
        tell: "sentence",
      }),
  },
  {
    ...{ name: "Massenprozent mit Preisen", language: "de" },
    build: (kit) =>
      perCentPage(kit, "Rezeptur", {
        titleGap: 1,
        list: {
          columns: ["name", "amount", "allergen"],
          headings: { name: "Bestandteil", amount: "Massen-%", allergen: "Allergene" },
          ...{ unit: "%", format: "0.0", total: "Summe" },
        },
        results: { place: "below", gap: 1, plans: [{ ...typed, as: "formula" }] },
        tell: "sentence",
      }),
  },
  {
    ...{ name: "fractions shown as per cent", language: "en" },
    build: (kit) =>
      perCentPage(kit, "Shares", {
        titleGap: 1,
        list: {
          ...{
            columns: ["name", "amount"],
            headings: { name: "Ingredient", amount: "Share of the mix" },
          },
          ...{ unit: "fraction", format: "0.0%", total: "Total" },
        },
        results: { place: "below", plans: [typed] },
        tell: "sentence",
      }),
  },
  {
    ...{ name: "Anteile im Prozentformat", language: "de" },
    build: (kit) =>
      perCentPage(kit, "Anteile", {
        list: {
          columns: ["number", "name", "amount", "remark"],
          headings: { number: "Nr.", name: "Zutat", amount: "Anteil", remark: "Bemerkung" },
          ...{ unit: "fraction", format: "0.0 %", total: "Summe" },
        },
        results: { place: "right", plans: [{ ...typed, as: "formula" }] },
        tell: "sentence",
      }),
  },
];
