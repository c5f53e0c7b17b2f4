import { cellName, rangeName } from "../workbook/address";
import type { CellRange, WorkbookSheet } from "../workbook/model";
import type { Effect, Finding, Severity } from "./finding";
import type { Place } from "./recipes/recipeBlock";

/** What a rule says about a place; rule and severity are filled in from the rule. */
export interface Evidence {
  readonly message: string;
  readonly effect: Effect | null;
  readonly fix?: string;
}

/** Makes a finding for a cell or a range. */
export function findingAt(
  rule: { readonly id: string; readonly severity: Severity },
  sheet: WorkbookSheet,
  place: Place | CellRange,
  { message, effect, fix }: Evidence,
): Finding {
  const cell = "top" in place ? rangeName(place) : cellName(place.row, place.column);
  const { id, severity } = rule;
  return {
    rule: id,
    severity,
    sheet: sheet.name,
    cell,
    message,
    effect,
    ...(fix !== undefined && { fix }),
  };
}
