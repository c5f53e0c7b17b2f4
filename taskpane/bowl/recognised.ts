import type { BlockValue } from "../host";

/** One row of the recipe as it was read. */
export interface RecipeLine {
  readonly name: BlockValue;
  readonly amount: BlockValue;
  readonly unit: string;
  /** A1 name of the cell with the name. */
  readonly cell: string;
  /** And of the one with the amount. */
  readonly amountCell: string;
  readonly known: boolean;
}

/** Where the unit of the amounts came from. */
export type UnitOrigin = "header" | "number format" | "unit column" | "assumed" | "chosen";

export interface RecognisedRecipe {
  readonly kind: "recipe";
  readonly sheet: string;
  readonly title: string;
  readonly direction: "down" | "across";
  readonly lines: readonly RecipeLine[];
  /** A1 ranges on the sheet. */
  readonly nameRange: string;
  readonly amountRange: string;
  readonly amountHeader: string;
  readonly unit: string; // "mixed" when each row has its own
  readonly unitOrigin: UnitOrigin;
  /** Texts in the line of the amounts: a serving target may be among them. */
  readonly texts: readonly string[];
  /** Rows that are no ingredients: results of our own functions, what lies below the total. */
  readonly leftOut: readonly { readonly cell: string; readonly text: string }[];
}

/** One column (or row, across) that could hold names or amounts. */
export interface ColumnOffer {
  readonly index: number;
  /** Column letter or row number with its header: "B, Grams". */
  readonly label: string;
}

/** The block could not be read without the user: what to ask. */
export interface ColumnQuestion {
  readonly kind: "question";
  readonly sheet: string;
  readonly address: string;
  readonly why: "several amounts" | "no amounts" | "several names" | "few known";
  readonly direction: "down" | "across";
  readonly columns: readonly ColumnOffer[];
  readonly guess: { readonly names: number; readonly amounts: number | null };
}

export interface NoRecipe {
  readonly kind: "none";
  readonly why: "blank" | "no names" | "own ingredients";
  readonly sheet: string;
  readonly address: string;
}

export type Recognition = RecognisedRecipe | ColumnQuestion | NoRecipe;

/** The user's answer to a question. */
export interface ColumnChoice {
  readonly direction: "down" | "across";
  readonly names: number;
  readonly amounts: number;
  readonly unit: string | null;
}
