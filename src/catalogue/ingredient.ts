import * as z from "zod/mini";
import type { SourceKey } from "../foundation/bibliography";
import type { HowObtained } from "../foundation/figure";
import { bibliography } from "../foundation/bibliography";

export type IngredientGroup =
  | "water"
  | "sugars"
  | "honey"
  | "polyols and fibres"
  | "dairy"
  | "eggs"
  | "fruit"
  | "vegetables and herbs"
  | "cocoa and chocolate"
  | "nuts and seeds"
  | "plant drinks"
  | "biscuits"
  | "confectionery"
  | "alcohol"
  | "flavour"
  | "salts and acids"
  | "stabilisers"
  | "fats"
  | "finished"
  | "own";

/** The major allergens of 21 U.S.C. 343(w) as amended and of Regulation (EU) 1169/2011, Annex II. */
export const ALLERGENS = [
  "milk",
  "egg",
  "fish",
  "crustaceans",
  "molluscs",
  "tree nuts",
  "peanuts",
  "gluten cereals",
  "soy",
  "sesame",
  "celery",
  "mustard",
  "lupin",
  "sulphites",
] as const;
export type Allergen = (typeof ALLERGENS)[number];

/** What an ingredient asks to be said to the eater; the sentences are in cautions.ts. */
export const CAUTION_KEYS = [
  "honey and infants",
  "raw egg",
  "raw milk",
  "raw flour",
  "alcohol",
  "glycerol and children",
  "propylene glycol",
  "whole nuts and choking",
  "laxative polyols",
  "xylitol and dogs",
  "not food",
] as const;
export type CautionKey = (typeof CAUTION_KEYS)[number];

/** What 100 g of an ingredient is made of. All in g per 100 g; what is missing to 100 is inert. */
export interface Composition {
  readonly water: number;
  readonly fat?: number;
  readonly protein?: number;
  /** g of each catalogue solute, anhydrous: sucrose, lactose, ethanol, sodium chloride, milk salts… */
  readonly solutes?: Readonly<Record<string, number>>;
  /** Saccharides above maltose (DP 3 and up) taken together, with their number-average molar mass. */
  readonly higherSaccharides?: { readonly grams: number; readonly molarMassGPerMol: number };
  /** Minerals and the rest of the ash that is not counted as a solute above. */
  readonly ash?: number;
  /** Fibre, starch, cocoa solids, nut flesh: mass without effect on freezing. */
  readonly inert?: number;
}

/** An ingredient, many to a file by group under ingredients/. */
export interface Ingredient {
  /** Unique name by which recipes call it, lower case, e.g. "milk, whole 3.25 %". */
  readonly name: string;
  readonly group: IngredientGroup;
  readonly aliases: { readonly en: readonly string[]; readonly de: readonly string[] };
  readonly composition: Composition;
  /**
   * Natural or trade spread of a component, one standard deviation, g per 100 g. Keys: water, fat, protein,
   * higherSaccharides, or a solute of the composition.
   */
  readonly spread: Readonly<Record<string, number>>;
  readonly spreadBasis: string;
  readonly source: SourceKey;
  /** Where in the source: its record number or the heading there. */
  readonly sourceRecord?: string;
  readonly obtained: HowObtained;
  /** What it holds by its nature; "unknown" when nothing can be said without the label. */
  readonly allergens: readonly Allergen[] | "unknown";
  /** What it may hold besides, depending on the maker: to be read on the label. */
  readonly allergensByMaker?: readonly Allergen[];
  readonly cautions: readonly CautionKey[];
  /**
   * True when the ingredient's pieces do not dissolve (nuts, biscuit, chocolate pieces): all of it is inert for
   * freezing, water and sugars too. The composition is still the true one, for fat, protein and the label.
   */
  readonly inclusion?: boolean;
  /** Bulk density as measured by spoon and cup, g/mL, with its spread in the fraction. */
  readonly gramsPerMl?: { readonly value: number; readonly relativeSpread: number };
  readonly gramsPerPiece?: { readonly value: number; readonly piece: string };
  readonly measuresSource?: SourceKey;
  readonly abvPercent?: number;
  readonly note?: string;
}

const share = z.number().check(z.nonnegative(), z.lte(100));
const text = z.string().check(z.minLength(1));
const sourceKey = z.enum(Object.keys(bibliography) as [SourceKey, ...SourceKey[]]);

const compositionSchema = z.strictObject({
  water: share,
  fat: z.optional(share),
  protein: z.optional(share),
  solutes: z.optional(z.record(text, share)),
  higherSaccharides: z.optional(
    z.strictObject({ grams: share, molarMassGPerMol: z.number().check(z.gte(300)) }),
  ),
  ash: z.optional(share),
  inert: z.optional(share),
});

export const ingredientSchema = z.strictObject({
  name: text,
  group: text,
  aliases: z.strictObject({ en: z.array(text), de: z.array(text) }),
  composition: compositionSchema,
  spread: z.record(text, z.number().check(z.nonnegative())),
  spreadBasis: text,
  source: sourceKey,
  sourceRecord: z.optional(text),
  obtained: z.enum(["from the source", "computed here", "from memory", "common practice"]),
  allergens: z.union([z.array(z.enum(ALLERGENS)), z.literal("unknown")]),
  allergensByMaker: z.optional(z.array(z.enum(ALLERGENS))),
  cautions: z.array(z.enum(CAUTION_KEYS)),
  inclusion: z.optional(z.boolean()),
  gramsPerMl: z.optional(
    z.strictObject({
      value: z.number().check(z.positive()),
      relativeSpread: z.number().check(z.nonnegative()),
    }),
  ),
  gramsPerPiece: z.optional(z.strictObject({ value: z.number().check(z.positive()), piece: text })),
  measuresSource: z.optional(sourceKey),
  abvPercent: z.optional(share),
  note: z.optional(text),
});

/** Sum of all parts, g per 100 g. */
export function compositionTotal(composition: Composition): number {
  const { water, fat = 0, protein = 0, ash = 0, inert = 0, solutes = {} } = composition;
  const dissolved = Object.values(solutes).reduce((sum, grams) => sum + grams, 0);
  return (
    water + fat + protein + ash + inert + dissolved + (composition.higherSaccharides?.grams ?? 0)
  );
}

/** Checks an entry when the program loads: shape, and that its parts add up to 100 ± 0.2 g. */
export function defineIngredient(entry: Ingredient): Ingredient {
  ingredientSchema.parse(entry);
  const total = compositionTotal(entry.composition);
  if (Math.abs(total - 100) > 0.2) {
    throw new Error(`${entry.name}: the composition adds up to ${total.toFixed(2)}, not 100.`);
  }
  return entry;
}
