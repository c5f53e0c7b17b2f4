import type { Workbook } from "../../../src/workbook/model";
import type { Recalculation } from "../../../src/workbook/recalculation";
import type { Spot } from "../book";
import type { MarkedBook } from "../marks";

/** A corpus book as the audit gets it. */
export interface Restated {
  readonly workbook: Workbook;
  readonly recalculated: Recalculation;
  /** Where a cell of the restated book stood before; null for one that was put in. */
  readonly before?: (spot: Spot) => Spot | null;
}

/** Another way of putting down the same sheet, which no finding may depend on. */
export interface Restatement {
  readonly name: string;
  readonly restate: (book: Restated, marked: MarkedBook) => Restated;
}
