/** What is known of the cells after a writing that failed. */
export type WrittenState =
  | {
      readonly kind: "cells";
      readonly written: readonly string[];
      readonly missing: readonly string[];
    }
  | { readonly kind: "unknown"; readonly places: readonly string[] }
  | { readonly kind: "unverified"; readonly places: readonly string[] }
  | { readonly kind: "sheet"; readonly name: string };

/** A fault after which something stands in the workbook, or nobody knows: it is told by name, never hushed up. */
export class HalfWritten extends Error {
  readonly code = "HalfWritten";

  constructor(
    readonly state: WrittenState,
    override readonly cause: unknown,
  ) {
    super(`Written in part: ${JSON.stringify(state)}`);
  }
}
