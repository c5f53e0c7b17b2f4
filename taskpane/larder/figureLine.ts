import type { HowObtained } from "../../src/foundation/figure";
import type { CellFormula } from "./cellFormula";

/** One fact of an entry as it is listed: the number, and why it may be believed. */
export interface FigureLine {
  readonly label: string;
  readonly value: number | string;
  readonly unit: string;
  /** One standard uncertainty, in the value's unit; null for what is no measurement. */
  readonly uncertainty: number | null;
  readonly source: string;
  readonly obtained: HowObtained | null;
  readonly basis: string;
  /** So many decimals mean something; as printed when absent. */
  readonly decimals?: number;
  /** What gives this value in a cell; null when no function does. */
  readonly cell: CellFormula | null;
}
