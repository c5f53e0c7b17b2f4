import type { Matrix } from "../foundation/cell";
import type { Component } from "../recipe/components";
import type { IceBasis } from "../recipe/freezing";

/** From and to, either null when that side is open. */
export interface Window {
  readonly from: number | null;
  readonly to: number | null;
}

/** What the changed recipe is to be. */
export type AdjustWish = Window &
  (
    | { readonly kind: "ice fraction"; readonly temperatureC: number; readonly basis: IceBasis } // 0–1
    | { readonly kind: "freezing point" } // °C
    | { readonly kind: "sweetness" } // g of sucrose per 100 g of mix
    | { readonly kind: "component"; readonly component: Component } // g per 100 g of mix
    | { readonly kind: "total" } // g
    | { readonly kind: "cost" } // price of 1 kg of mix, in the unit of pricesPerKg
  );

/** How far the grams of an ingredient may go; `toGrams` null: as far as ten times the recipe. */
export interface GramRange {
  readonly fromGrams: number;
  readonly toGrams: number | null;
}

/** A recipe and how it may change. All lists lie along `items`. */
export interface AdjustQuestion {
  readonly items: readonly string[];
  /** 0 for an ingredient that is not in the recipe but may be added. */
  readonly grams: readonly number[];
  /** The user's own ingredients with their header row. */
  readonly own: Matrix | null;
  /** Null: stays as it is. Nothing is ever added that is not listed here. */
  readonly mayChange: readonly (GramRange | null)[];
  readonly pricesPerKg?: readonly (number | null)[];
  readonly wishes: readonly AdjustWish[];
  /** Changed amounts are whole multiples of this, e.g. 1 g; null or absent: any amount. */
  readonly stepGrams?: number | null;
}

export const WAYS = [
  ...(["smallest change", "fewest ingredients", "water untouched", "other ingredients"] as const),
];
export type Way = (typeof WAYS)[number];

/** How a wish came out. `miss` is 0 when it is met; in whole grams at most what half a step of each moves. */
export interface WishOutcome {
  readonly value: number;
  readonly miss: number;
}

/** A changed recipe. */
export interface AdjustedRecipe {
  readonly way: Way;
  readonly grams: readonly number[];
  readonly outcomes: readonly WishOutcome[]; // along the wishes
}

/** The wish that cannot be met together with the others. */
export interface Obstacle {
  readonly wish: number; // which of the wishes
  readonly side: "from" | "to"; // which end is out of reach
  readonly wanted: number;
  /** The nearest value it can have when the others in `kept` are met. */
  readonly reachable: number;
  readonly kept: readonly number[];
}

/** One to three ways, the smallest change first, or what stands in the way. */
export type Adjustment =
  | { readonly kind: "adjusted"; readonly recipes: readonly AdjustedRecipe[] }
  | { readonly kind: "obstacle"; readonly obstacle: Obstacle };
