import type { Matrix } from "../../foundation/cell";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import type { MixCall } from "./mixCalls";
import type { ItemCheck } from "./names/knownItems";

/** What the finders of one sheet work from. */
export interface FinderContext {
  readonly workbook: Workbook;
  readonly sheet: WorkbookSheet;
  readonly ownIngredients: Matrix | null;
  readonly check: ItemCheck;
  /** What recipe functions, on whichever sheet, are given from this one. */
  readonly calls: readonly MixCall[];
  /** What the workbook calls its sums, in plain words. */
  readonly sumLabels: ReadonlySet<string>;
}
