import { parseRangeName } from "../address";
import type { CellRange } from "../model";
import type { Attributes } from "./readXml";

/** Hears the tags of a sheet or a table and keeps the blocks whose filter has a condition set. */
export class SetFilters {
  readonly ranges: CellRange[] = [];
  private reference = "";

  readonly open = (name: string, { ref }: Attributes): void => {
    if (name === "autoFilter") this.reference = ref ?? "";
    // Buttons alone hide nothing: it takes a column with a condition.
    if (name !== "filterColumn") return;
    const range = parseRangeName(this.reference);
    this.reference = "";
    if (range !== null) this.ranges.push(range);
  };
}
