import { cellName, rangeName } from "../workbook/address";
import type { CellRange, WorkbookSheet } from "../workbook/model";
import type { CellEdit, Effect, Finding, Severity } from "./finding";
import type { Place } from "./recipes/recipeBlock";

/** What a rule says about a place; rule and severity are filled in from the rule. */
export interface Evidence {
  readonly message: string;
  readonly effect: Effect | null;
  readonly fix?: string;
  readonly edits?: readonly CellEdit[];
}

/** A name of two thousand letters is quoted by its beginning. */
const LONGEST = 400;
const LONGEST_WORD = 60;

const shortened = (message: string): string => {
  const words = message
    .split(" ")
    .map((word) => (word.length > LONGEST_WORD ? `${word.slice(0, LONGEST_WORD)}…` : word))
    .join(" ");
  return words.length > LONGEST ? `${words.slice(0, LONGEST - 1)}…` : words;
};

/** Amounts of 1e308 g have no effect that could be stated. */
const statable = (effect: Effect | null): Effect | null =>
  effect === null ||
  [effect.from, effect.to].some(
    (value) => value === Infinity || value === -Infinity || Number.isNaN(value),
  )
    ? null
    : effect;

/** −3.9, as it is printed; in "what to enter" the key that is typed stays. */
const withMinusSigns = (message: string): string =>
  message.replace(/(?<![\p{L}\p{N}"'-])-(?=\d)/gu, "−");

/** Makes a finding for a cell or a range. */
export function findingAt(
  rule: { readonly id: string; readonly severity: Severity },
  sheet: WorkbookSheet,
  place: Place | CellRange,
  { message, effect, fix, edits }: Evidence,
): Finding {
  const cell = "top" in place ? rangeName(place) : cellName(place.row, place.column);
  const { id, severity } = rule;
  return {
    rule: id,
    severity,
    sheet: sheet.name,
    cell,
    message: shortened(withMinusSigns(message)),
    effect: statable(effect),
    ...(fix !== undefined && { fix }),
    ...(edits !== undefined && edits.length > 0 && { edits }),
  };
}
