import { addSheet, put, putRow } from "../book";
import { grid, type GridPlan } from "../grid";
import { note, tell, type Layout } from "../kit";
import { perHundred } from "../recipes";
import type { Language } from "../stock";

interface GridSheet extends Omit<GridPlan, "unitLabel"> {
  readonly sheet: string;
  readonly title?: string;
  readonly count: number;
  readonly tells?: "below";
  readonly note?: string;
}

const gridLayout = (name: string, language: Language, plan: GridSheet): Layout => ({
  ...{ name, language },
  build: (kit) => {
    const sheet = addSheet(kit.marked.book, plan.sheet);
    const made = kit.make(plan.count);
    const unitLabel = plan.title === undefined ? undefined : put(sheet, 0, 0, plan.title);
    const recipes = grid(kit, sheet, plan.unit === "%" ? made.map(perHundred) : made, {
      ...plan,
      ...(unitLabel !== undefined && { unitLabel }),
    });
    let row = sheet.cells.length + 1;
    if (plan.tells === "below") {
      for (const recipe of recipes)
        row = tell(kit, sheet, recipe, { row, column: 0, as: "sentence" });
    }
    if (plan.note !== undefined) note(kit, sheet, row + 1, 0, plan.note);
  },
});

const typedFreezing = { states: "freezing point", as: "typed" } as const;
const freezing = { states: "freezing point", as: "formula" } as const;
const frozen = { states: "ice of water", as: "typed", temperatureC: -18 } as const;

/** Recipes in rows or in columns, their names along one side; some for 100 g. */
export const grids: readonly Layout[] = [
  gridLayout("recipes in rows, grams in the title", "en", {
    ...{ sheet: "All mixes", title: "All mixes, amounts in grams", top: 2, left: 0, count: 4 },
    ...{ recipesIn: "rows", unit: "g", corner: "Recipe", total: "Total" },
    ...{ results: [typedFreezing, frozen], allergens: "Allergens and cautions", target: "Target" },
  }),
  gridLayout("recipes in rows, grams in the corner", "en", {
    ...{ sheet: "Sheet1", top: 0, left: 0, count: 5, recipesIn: "rows", unit: "g" },
    ...{ corner: "Mix (g)", results: [freezing], tells: "below" },
  }),
  gridLayout("Rezepte in Zeilen", "de", {
    ...{ sheet: "Sorten", title: "Sorten (Mengen in g)", top: 1, left: 0, count: 3 },
    ...{ recipesIn: "rows", unit: "g", corner: "Sorte", total: "Summe" },
    ...{ results: [typedFreezing], allergens: "Allergene und Hinweise" },
  }),
  gridLayout("Rezepte in Zeilen, Kilogramm", "de", {
    ...{ sheet: "Produktion", top: 0, left: 1, count: 4, recipesIn: "rows", unit: "kg" },
    ...{ corner: "Menge (kg)", total: "Gesamt", format: "0.000", results: [freezing] },
    ...{ tells: "below", note: "Nur mit frischer Ware." },
  }),
  gridLayout("recipes in columns, grams", "en", {
    ...{ sheet: "Comparison", top: 0, left: 0, count: 3, recipesIn: "columns", unit: "g" },
    ...{
      corner: "Ingredient (g)",
      total: "Total",
      results: [typedFreezing, frozen],
      tells: "below",
    },
  }),
  gridLayout("recipes in columns with targets", "en", {
    ...{ sheet: "Menu", title: "Menu, all amounts in g", top: 2, left: 1, count: 4 },
    ...{ recipesIn: "columns", unit: "g", corner: "Ingredient", total: "Sum" },
    ...{ results: [freezing], target: "Serving target", allergens: "Allergens, cautions" },
  }),
  gridLayout("Rezepte in Spalten", "de", {
    ...{ sheet: "Übersicht", title: "Übersicht, Mengen in Gramm", top: 1, left: 0, count: 3 },
    ...{ recipesIn: "columns", unit: "g", corner: "Zutat", total: "Summe" },
    ...{
      results: [typedFreezing, { ...frozen, wording: 1 }],
      allergens: "Allergene",
      target: "Ziel",
    },
  }),
  gridLayout("per cent in rows", "en", {
    ...{ sheet: "Per cent", top: 0, left: 0, count: 4, recipesIn: "rows", unit: "%" },
    ...{ corner: "Recipe, % by mass", total: "Sum", results: [freezing], tells: "below" },
  }),
  gridLayout("Prozent in Spalten", "de", {
    ...{ sheet: "Prozente", title: "Angaben in Massen-%", top: 1, left: 0, count: 3 },
    ...{ recipesIn: "columns", unit: "%", corner: "Zutat", total: "Summe" },
    ...{ results: [typedFreezing], tells: "below" },
  }),
  {
    ...{ name: "recipes in columns on two sheets", language: "en" },
    build: (kit) => {
      for (const name of ["Spring", "Autumn"]) {
        const sheet = addSheet(kit.marked.book, name);
        putRow(sheet, 0, 0, [`${name} range`]);
        const plan = { top: 2, left: 0, recipesIn: "columns", unit: "g" } as const;
        grid(kit, sheet, kit.make(2), {
          ...{ ...plan, corner: "grams", total: "Total", results: [typedFreezing] },
          allergens: "Allergens/cautions",
        });
      }
    },
  },
];
