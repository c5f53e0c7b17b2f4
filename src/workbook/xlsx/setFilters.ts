import { parseRangeName } from "../address";
import type { CellRange } from "../model";
import type { Attributes } from "./readXml";

/** What a column's filter keeps by; a column without any of them has a button only. ECMA-376, 18.3.2.7. */
const CONDITIONS = new Set([
  ...["filters", "customFilters", "dynamicFilter", "top10", "colorFilter", "iconFilter"],
]);

/** Hears the tags of a sheet or a table and keeps the blocks whose filter has a condition set. */
export class SetFilters {
  readonly ranges: CellRange[] = [];
  private reference = "";

  readonly open = (name: string, { ref }: Attributes): void => {
    if (name === "autoFilter") this.reference = ref ?? "";
    // Buttons alone hide nothing: it takes a column with a condition.
    if (!CONDITIONS.has(name)) return;
    const range = parseRangeName(this.reference);
    this.reference = "";
    if (range !== null) this.ranges.push(range);
  };
}
