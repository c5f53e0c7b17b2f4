import type { Lattice } from "../../recipe/lattice";
import type { OwnIngredients } from "../../recipe/namedItem";
import type { Parameter } from "../worksheetFunction";
import type { Given } from "./hostValue";

/** What every argument may need to know of the call. */
export interface CallContext {
  readonly own: OwnIngredients;
}

/** How a function takes one argument: what the user sees of it, and how its cells become values. */
export interface Argument<T> {
  /** The cells' parameters it takes, in order; the key in `args` names a single one. */
  readonly parameters: (key: string) => readonly Parameter[];
  /** Reads the parameters' matrices; null stands for one left out. */
  readonly read: (key: string, given: readonly Given[], context: CallContext) => Lattice<T>;
  /** Set on the argument that holds the user's own ingredients. */
  readonly readsOwn?: (given: Given) => import("../../foundation/result").Result<OwnIngredients>;
}

/** The value types of a set of arguments. */
export type ValuesOf<Args> = {
  readonly [Key in keyof Args]: Args[Key] extends Argument<infer T> ? T : never;
};
