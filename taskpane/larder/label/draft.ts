import type { Allergen } from "../../../src/catalogue/ingredient";

/** What a label prints, g per 100 g or 100 mL; alcohol is % by volume. In the order of the form. */
export const PRINTED = [
  ...(["fat", "carbohydrate", "sugars", "polyols", "fibre", "protein", "salt", "abv"] as const),
] as const;

/** What it seldom prints. */
export const SELDOM_PRINTED = ["water", "acids", "ash"] as const;

export type PartKey = (typeof PRINTED)[number] | (typeof SELDOM_PRINTED)[number];

export const SUGARS = ["sucrose", "glucose", "fructose", "lactose", "maltose"] as const;

export const SPLITS = ["unsaid", "milk", "invert", "like", "each"] as const;
export type Split = (typeof SPLITS)[number];

type Grams<Key extends string> = Readonly<Partial<Record<Key, number | null>>>;

/** The form as it is filled in. */
export interface LabelDraft {
  readonly name: string;
  readonly isSame: boolean;
  readonly sameAs: string;
  /** The amount that the figures are for. */
  readonly per: number;
  readonly perUnit: "g" | "mL";
  readonly gramsPerMl: number | null;
  /** What is absent or null was left empty. */
  readonly parts: Grams<PartKey>;
  readonly isFibreInside: boolean;
  readonly split: Split;
  /** The entry of the larder whose sugars it has, for "like". */
  readonly splitLike: string;
  readonly each: Grams<(typeof SUGARS)[number]>;
  readonly polyol: string;
  /** Null while nothing is known of them. */
  readonly allergens: readonly Allergen[] | null;
  readonly cautions: string;
  readonly source: string;
}

export const emptyDraft = (source: string): LabelDraft => ({
  name: "",
  isSame: false,
  sameAs: "",
  per: 100,
  perUnit: "g",
  gramsPerMl: null,
  parts: {},
  isFibreInside: false,
  split: "unsaid",
  splitLike: "",
  each: {},
  polyol: "",
  allergens: null,
  cautions: "",
  source,
});

/** Sugars as the label has them: their sum, or where that was left empty what was entered one by one. */
export const sugarsOf = ({ parts, split, each }: LabelDraft): number =>
  parts.sugars ??
  (split === "each" ? SUGARS.reduce((total, name) => total + (each[name] ?? 0), 0) : 0);
