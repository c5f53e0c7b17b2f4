import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import type { Place } from "../recipeBlock";
import type { LabelledPair } from "./labelledPairs";
import { keyOf, type ClassRole } from "./rolesByFormula";

/** What a number of a class is worked out from, and where it stands. */
export type Sources = Map<ClassRole, Place>;

const MOST_STEPS = 40;
/** What is weighed and poured is where the calculation begins, be it worked out itself. */
const FIRST = new Set<ClassRole>(["mass", "water", "molar mass", "particles", "constant"]);

/** Follows the formulas behind a cell back to the masses and constants they begin with; null where two masses go in. */
export function sourcesOf(
  sheet: WorkbookSheet,
  pairs: ReadonlyMap<string, LabelledPair>,
  start: Place,
): Sources | null {
  const sources: Sources = new Map();
  const waiting: Place[] = [start];
  const seen = new Set<string>();
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const key = keyOf(place);
    if (seen.has(key) || seen.size > MOST_STEPS) continue;
    seen.add(key);
    const role = pairs.get(key)?.role ?? null;
    if (role === "mass" && sources.has(role)) return null;
    if (role !== null && !sources.has(role)) sources.set(role, place);
    if (role !== null && FIRST.has(role)) continue;
    for (const { sheet: other, range } of referencesOf(
      sheet.cellAt(place.row, place.column)?.formula ?? "",
    ))
      if (other === null && range.top === range.bottom && range.left === range.right)
        waiting.push({ row: range.top, column: range.left });
  }
  return sources;
}
