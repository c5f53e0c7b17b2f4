import type { WorkbookCell, WorkbookSheet } from "../../workbook/model";
import { eachCell } from "../../workbook/eachCell";
import { iceFraction } from "../answers";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { fahrenheitToC } from "../resultLabel";
import type { Rule } from "../rule";

const identity = { id: "temperature-units-mixed", severity: "error" } as const;

const FAHRENHEIT_TEXT = /^\s*([-−–]?\s?\d+(?:[.,]\d+)?)\s*(?:°\s*|º\s*|deg\.?\s*)?f\.?\s*$/i;
const FAHRENHEIT_WORD = /°\s?f\b|fahrenheit|\bdeg\.? ?f\b/i;
const CELSIUS_WORD = /°\s?c\b|celsius|\bdeg\.? ?c\b/i;

/** Beyond this a number beside °F is no kitchen's temperature. */
const HOTTEST_F = 1000;

/** The temperature a cell gives in °F, by its text, its format or the unit cell right of it. */
function fahrenheitIn(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  cell: WorkbookCell,
): number | null {
  const { value, format } = cell;
  if (typeof value === "string") {
    const [, digits] = FAHRENHEIT_TEXT.exec(value) ?? [];
    return digits === undefined
      ? null
      : Number(digits.replace(/[−–]/, "-").replace(/\s/g, "").replace(",", "."));
  }
  if (typeof value !== "number" || Math.abs(value) > HOTTEST_F) return null;
  const unit = textAt(sheet, row, column + 1);
  const isUnit = /^[^\d]{1,12}$/.test(unit) && FAHRENHEIT_WORD.test(unit);
  return isUnit || (format !== undefined && FAHRENHEIT_WORD.test(format)) ? value : null;
}

/** The nearest words above in the column that call it a temperature; "" when a label says °F itself. */
function labelOf(sheet: WorkbookSheet, row: number, column: number): string {
  const beside =
    [1, 2, 3].map((step) => textAt(sheet, row, column - step)).find((text) => text !== "") ?? "";
  for (let above = row - 1; above >= Math.max(0, row - 200); above -= 1) {
    const text = textAt(sheet, above, column);
    if (text !== "" && !FAHRENHEIT_TEXT.test(text)) return `${text} | ${beside}`;
  }
  return beside;
}

/** Whether the other temperatures of this sheet are in °C. */
function sheetIsInCelsius(sheet: WorkbookSheet): boolean {
  let celsius = 0;
  let fahrenheit = 0;
  eachCell(sheet, (_row, _column, { value, format }) => {
    const text = `${typeof value === "string" ? value : ""} ${format ?? ""}`;
    if (CELSIUS_WORD.test(text)) celsius += 1;
    if (typeof value === "string" && FAHRENHEIT_WORD.test(value) && !FAHRENHEIT_TEXT.test(value))
      fahrenheit += 1;
  });
  return celsius > 0 && fahrenheit === 0;
}

/** What reading the number as °C does: to the share of ice of the sheet's first recipe. */
function effectOf(context: AuditContext, sheet: WorkbookSheet, temperatureF: number): Effect {
  const block = context.blocks.find((one) => one.sheet === sheet);
  const recipe = block?.recipes[0];
  const plain: Effect = {
    quantity: "temperature",
    from: temperatureF,
    to: rounded(fahrenheitToC(temperatureF), 1),
    unit: "°C",
  };
  if (block === undefined || recipe === undefined || fahrenheitToC(temperatureF) < -59)
    return plain;
  const mix = context.mixOf(block, recipe);
  const from =
    temperatureF < -59 || temperatureF > 40 ? null : iceFraction(mix, temperatureF, "water");
  const to = iceFraction(mix, fahrenheitToC(temperatureF), "water");
  if (from === null || to === null || Math.abs(from - to) < 0.005) return plain;
  return {
    quantity: "share of the water that is ice at this temperature",
    from: rounded(100 * from, 1),
    to: rounded(100 * to, 1),
    unit: "%",
  };
}

/** A freezer said to be warmer than this in °C is one in °F: 0 °F is −17.8 °C. Common practice, no source. */
const WARMEST_FREEZER_C = -4;
const WARMEST_FREEZER_F = 20;

function freezerTooWarm(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  cell: WorkbookCell,
): number | null {
  const { value } = cell;
  if (typeof value !== "number" || value <= WARMEST_FREEZER_C || value > WARMEST_FREEZER_F)
    return null;
  const label = textAt(sheet, row, column - 1);
  const isFreezer = /\b(freezer|deep freeze|tiefkühl\w*|gefrierschrank|gefriertruhe)\b/i.test(
    label,
  );
  const isTemperature =
    headerRole(label) === "temperature" && !/\b(min|hours?|stunden|h)\b/i.test(label);
  return isFreezer && isTemperature && !FAHRENHEIT_WORD.test(label) ? value : null;
}

interface Found {
  readonly place: Place;
  readonly temperatureF: number;
  readonly says: string;
}

function finding(
  context: AuditContext,
  sheet: WorkbookSheet,
  { place, temperatureF, says }: Found,
): Finding {
  const celsius = rounded(fahrenheitToC(temperatureF), 1);
  return findingAt(identity, sheet, place, {
    message: `${says}, which is ${String(celsius).replace("-", "−")} °C.`,
    effect: effectOf(context, sheet, temperatureF),
    fix: `Enter ${celsius}.`,
  });
}

function foundAt(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  cell: WorkbookCell,
): Found | null {
  const place = { row, column };
  const marked = fahrenheitIn(sheet, row, column, cell);
  if (marked !== null) {
    return { place, temperatureF: marked, says: `${marked} °F stands on a sheet in °C` };
  }
  const warm = freezerTooWarm(sheet, row, column, cell);
  return warm === null
    ? null
    : { place, temperatureF: warm, says: `No freezer is at ${warm} °C: this is ${warm} °F` };
}

function findOn(context: AuditContext, sheet: WorkbookSheet): Finding[] {
  const all: Found[] = [];
  eachCell(sheet, (row, column, cell) => {
    const found = foundAt(sheet, row, column, cell);
    if (found !== null && !FAHRENHEIT_WORD.test(labelOf(sheet, row, column))) all.push(found);
  });
  if (all.length === 0 || !sheetIsInCelsius(sheet)) return [];
  return all.map((found) => finding(context, sheet, found));
}

export const temperatureUnit: Rule = {
  ...identity,
  title: "One temperature is in °F on a sheet in °C",
  find: (context) => context.workbook.sheets.flatMap((sheet) => findOn(context, sheet)),
};
