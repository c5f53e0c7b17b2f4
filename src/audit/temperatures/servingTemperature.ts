import type { AuditContext } from "../context";
import { rangesRead } from "../formulas/rangesRead";
import { labelledNumbers, type LabelledNumber } from "../labels";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { labelledTemperatureC, resultUnit, fahrenheitToC } from "../answers/resultLabel";
import { plainWords } from "../recipes/headings/plainWords";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import { temperatureAskedC } from "./temperatureAsked";
import { wordsAbove } from "../answers/wordsAbove";
import type { StatedResult } from "../answers/statedResults";

const saysServing = (label: string): boolean => temperatureWords.ofServing.test(plainWords(label));

/** Whether an answer's formula asks for the ice at a temperature that stands in no cell of a column. */
function asksElsewhere({ workbook }: AuditContext, result: StatedResult, column: number): boolean {
  const { sheet, row } = result;
  const formula = sheet.cellAt(row, result.column)?.formula;
  if (formula === undefined || temperatureAskedC(workbook, sheet, formula) === null) return false;
  return rangesRead(workbook)(sheet, formula).every(
    ({ sheet: home, range: { left, right } }) =>
      home !== result.block.sheet || column < left || column > right,
  );
}

/** The temperature in the same row of an across block: "at, °C"; what is read in it the next day is none. */
function temperatureInRowC(context: AuditContext, result: StatedResult): number | null {
  const { block, recipe } = result;
  if (block.layout === "down") return null;
  const columns = [...block.roles].filter(([, role]) => role === "temperature");
  const [column, ...more] = columns.map(([at]) => at);
  if (column === undefined || more.length > 0) return null;
  const value = block.sheet.cellAt(recipe.line, column)?.value;
  return typeof value === "number" && !asksElsewhere(context, result, column) ? value : null;
}

/** A curve of ice has at most so many lines below its headings. */
const MOST_LINES = 40;

/** The row above an answer in which its label heads its column; null where it stands beside it. */
function headingRowOf({ sheet, row, column, label }: StatedResult): number | null {
  for (let above = row - 1; above >= Math.max(0, row - MOST_LINES); above -= 1) {
    const words = textAt(sheet, above, column);
    if (words !== "") return label.startsWith(words) ? above : null;
  }
  return null;
}

/** The temperature in an answer's line of a table, left of it: "T (°C) | Ice, % of the water | Ice, % of the mix". */
function temperatureInLineC(result: StatedResult): number | null {
  const { sheet, row, column } = result;
  const heading = headingRowOf(result);
  if (heading === null) return null;
  for (let left = column - 1; left >= 0; left -= 1) {
    const label = textAt(sheet, heading, left);
    const value = sheet.cellAt(row, left)?.value;
    if (label === "") return null;
    if (headerRole(label) === "temperature" && typeof value === "number")
      return /°\s?f\b/i.test(label) ? fahrenheitToC(value) : value;
  }
  return null;
}

/** Nothing but a temperature: "−12 °C", "at -12 °C:". */
const ONLY_TEMPERATURE =
  /^(at |bei |@ ?|t ?= ?)?[-−–]? ?\d+([.,]\d+)? ?(°|º|deg(rees?)?|grad)? ?[cf]?:?$/i;

/** A heading stands at most so far over the answers in its column. */
const REACH_OVER = 6;

/** The temperature that stands over an answer as the heading of its column: "−10 °C | −12 °C", below them "Ice, % of the water". */
function temperatureOverC(result: StatedResult): number | null {
  const words = wordsAbove(result.sheet, result, REACH_OVER);
  return ONLY_TEMPERATURE.test(words) ? labelledTemperatureC(words) : null;
}

const REACH_ABOVE = 2;
const REACH_LEFT = 3;
const REACH_BELOW = 3;

/** The temperature in the label of another share of ice right above: "ice at −18 °C (% of the water)", then "and of the mix (%)". */
function temperatureAboveC({ sheet, row, column }: StatedResult): number | null {
  for (let above = row - 1; above >= Math.max(0, row - REACH_ABOVE); above -= 1) {
    const labels = Array.from({ length: REACH_LEFT }, (_, step) => column - 1 - step);
    const label = labels.map((at) => textAt(sheet, above, at)).find((text) => text !== "") ?? "";
    const temperatureC = labelledTemperatureC(label);
    if (headerRole(label) === "ice fraction" && temperatureC !== null) return temperatureC;
  }
  return null;
}

/** Whether a row is one of a list's own, or one of the few right below it. */
const isOf = ({ layout, range }: RecipeBlock, row: number): boolean =>
  layout === "down" && row >= range.top && row <= range.bottom + REACH_BELOW;

/** What is said right above a list, below any other, is said of it: "Machine set to (°C)". */
const HEAD_ROWS = 4;
const isAbove = ({ blocks }: AuditContext, { sheet, layout, range }: RecipeBlock, row: number) =>
  layout === "down" &&
  row < range.top &&
  row >= range.top - HEAD_ROWS &&
  !blocks.some(
    (other) => other.sheet === sheet && other.range.bottom >= row && other.range.top < range.top,
  );

/** Of several temperatures those of a list: in it or right below, else right above it. */
function ownOf(context: AuditContext, { block }: StatedResult, all: readonly LabelledNumber[]) {
  if (all.length < 2) return all;
  const within = all.filter(({ row }) => isOf(block, row));
  return within.length > 0 ? within : all.filter(({ row }) => isAbove(context, block, row));
}

const inCelsius = ({ label, beside, value }: LabelledNumber): number =>
  resultUnit(label, beside, { value }, "temperature") === "°F" ? fahrenheitToC(value) : value;

/** The only labelled temperature that an answer's formula reads in a cell of its own, else the one it asks our function for. */
function temperatureReadC(
  { workbook }: AuditContext,
  all: readonly LabelledNumber[],
  { sheet, row, column }: StatedResult,
): number | null {
  const formula = sheet.cellAt(row, column)?.formula;
  const cells = formula === undefined ? [] : rangesRead(workbook)(sheet, formula);
  const read = all.filter((one) =>
    cells.some(
      ({ sheet: home, range: { top, left, bottom, right } }) =>
        home === one.sheet &&
        [top, bottom].every((at) => at === one.row) &&
        [left, right].every((at) => at === one.column),
    ),
  );
  const [only] = read;
  if (only !== undefined) return read.length > 1 ? null : inCelsius(only);
  return formula === undefined ? null : temperatureAskedC(workbook, sheet, formula);
}

/** Answers of several recipes stand at most so far from each other in one row. */
const REACH_IN_ROW = 12;

/** The temperature that all formulas for ice in an answer's row read: that of a typed one among them, too. */
function temperatureReadInRowC(
  context: AuditContext,
  all: readonly LabelledNumber[],
  result: StatedResult,
): number | null {
  const { sheet, row, column } = result;
  const from = Math.max(0, column - REACH_IN_ROW);
  const columns = Array.from({ length: column + REACH_IN_ROW - from }, (_, at) => from + at);
  const read = columns
    .filter((at) => /\bICEFRACTION\(/i.test(sheet.cellAt(row, at)?.formula ?? ""))
    .map((at) => temperatureReadC(context, all, { ...result, column: at }));
  const [first = null, ...others] = read;
  return others.every((other) => other === first) ? first : null;
}

/** The temperature an ice share is stated for: by its own label, else the one its formula or those of its row read, else the one over it, else the only labelled one of its sheet, or the only one of serving, else that of the share above. */
export function temperatureOfResultC(context: AuditContext, result: StatedResult): number | null {
  if (result.temperatureC !== null) return result.temperatureC;
  const inRow = temperatureInRowC(context, result) ?? temperatureInLineC(result);
  if (inRow !== null) return inRow;
  const all = labelledNumbers(context.workbook, ["temperature"]);
  const read =
    temperatureReadC(context, all, result) ?? temperatureReadInRowC(context, all, result);
  if (read !== null) return read;
  const over = temperatureOverC(result);
  if (over !== null) return over;
  const onSheet = all.filter(({ sheet }) => sheet === result.sheet);
  // Beside the readings of a freezer the one at which it is served; of one for each recipe its own.
  const served = onSheet.length > 1 ? onSheet.filter(({ label }) => saysServing(label)) : onSheet;
  const some = served.length > 0 ? served : onSheet;
  const own = ownOf(context, result, some);
  const [only] = own;
  if (only === undefined || own.length > 1) return temperatureAboveC(result);
  return inCelsius(only);
}
