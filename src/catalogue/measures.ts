import type { SourceKey } from "../foundation/bibliography";

/** A unit in which a recipe may give an amount. */
export type Measure = {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly source: SourceKey;
} & (
  | { readonly kind: "mass"; readonly grams: number }
  | { readonly kind: "volume"; readonly millilitres: number }
  | { readonly kind: "piece" }
);

// one US gallon is 231 cubic inches, and an inch 2.54 cm, both exactly
const US_GALLON_ML = 231 * 2.54 ** 3;
const UK_GALLON_ML = 4546.09;
const US = { kind: "volume", source: "nistHandbook44" } as const;
const SI = { kind: "volume", source: "siBrochure2019" } as const;
const CUSTOM = { kind: "volume", source: "commonPractice" } as const;

/**
 * Units of mass, volume and count. Unmarked cups and spoons are US customary. A German EL is 15 mL and a TL
 * 5 mL; a Tasse (125 to 250 mL) and a pinch are not units and are left out.
 */
export const measures: readonly Measure[] = [
  {
    name: "g",
    aliases: ["gram", "grams", "gramme", "grammes", "Gramm"],
    kind: "mass",
    grams: 1,
    source: "siBrochure2019",
  },
  {
    name: "kg",
    aliases: ["kilogram", "kilograms", "kilo", "Kilogramm"],
    kind: "mass",
    grams: 1000,
    source: "siBrochure2019",
  },
  {
    name: "mg",
    aliases: ["milligram", "milligrams", "Milligramm"],
    kind: "mass",
    grams: 0.001,
    source: "siBrochure2019",
  },
  {
    name: "oz",
    aliases: ["ounce", "ounces", "Unze", "Unzen"],
    kind: "mass",
    grams: 453.59237 / 16,
    source: "nistHandbook44",
  },
  {
    name: "lb",
    aliases: ["lbs", "pound", "pounds"],
    kind: "mass",
    grams: 453.59237,
    source: "nistHandbook44",
  },
  { name: "Pfund", aliases: ["metric pound"], kind: "mass", grams: 500, source: "commonPractice" },
  {
    ...SI,
    name: "mL",
    aliases: ["millilitre", "milliliter", "millilitres", "milliliters", "cc"],
    millilitres: 1,
  },
  { ...SI, name: "cL", aliases: ["centilitre", "centiliter", "Zentiliter"], millilitres: 10 },
  { ...SI, name: "dL", aliases: ["decilitre", "deciliter", "Deziliter"], millilitres: 100 },
  { ...SI, name: "L", aliases: ["litre", "liter", "litres", "liters"], millilitres: 1000 },
  {
    ...US,
    name: "tsp",
    aliases: ["teaspoon", "teaspoons", "US tsp"],
    millilitres: US_GALLON_ML / 768,
  },
  {
    ...US,
    name: "tbsp",
    aliases: ["tablespoon", "tablespoons", "US tbsp"],
    millilitres: US_GALLON_ML / 256,
  },
  {
    ...US,
    name: "fl oz",
    aliases: ["fluid ounce", "fluid ounces", "US fl oz"],
    millilitres: US_GALLON_ML / 128,
  },
  { ...US, name: "cup", aliases: ["cups", "US cup"], millilitres: US_GALLON_ML / 16 },
  { ...US, name: "pint", aliases: ["pints", "US pint", "pt"], millilitres: US_GALLON_ML / 8 },
  { ...US, name: "quart", aliases: ["quarts", "US quart", "qt"], millilitres: US_GALLON_ML / 4 },
  { ...US, name: "gallon", aliases: ["gallons", "US gallon", "gal"], millilitres: US_GALLON_ML },
  {
    kind: "volume",
    source: "cfr101_9",
    name: "label cup",
    aliases: ["US legal cup"],
    millilitres: 240,
  },
  {
    kind: "volume",
    source: "nistSp811",
    name: "UK fl oz",
    aliases: ["imperial fl oz"],
    millilitres: UK_GALLON_ML / 160,
  },
  {
    kind: "volume",
    source: "nistSp811",
    name: "UK pint",
    aliases: ["imperial pint"],
    millilitres: UK_GALLON_ML / 8,
  },
  { ...CUSTOM, name: "metric cup", aliases: ["metric cups", "AU cup"], millilitres: 250 },
  { ...CUSTOM, name: "AU tbsp", aliases: ["Australian tablespoon"], millilitres: 20 },
  { ...CUSTOM, name: "metric tbsp", aliases: ["EL", "Esslöffel", "UK tbsp"], millilitres: 15 },
  { ...CUSTOM, name: "metric tsp", aliases: ["TL", "Teelöffel", "UK tsp"], millilitres: 5 },
  {
    name: "piece",
    aliases: ["pieces", "pc", "pcs", "Stück", "Stk", "St"],
    kind: "piece",
    source: "commonPractice",
  },
];
