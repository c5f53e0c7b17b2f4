import type { WorkbookSheet } from "../../workbook/model";
import { iceFraction } from "../answers/answers";
import { cellEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import { askedInFahrenheit } from "../temperatures/askedInFahrenheit";
import { fahrenheitCells, type FahrenheitCell } from "../temperatures/fahrenheitCells";
import type { CellEdit, Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { recomputed } from "../answers/recomputed";
import { fahrenheitToC } from "../answers/resultLabel";
import { measuredPoints } from "../temperatures/measuredPoints";
import { isPointInFahrenheit } from "../temperatures/pointInFahrenheit";
import type { StatedResult } from "../answers/statedResults";
import type { Rule } from "../rule";

const identity = { id: "temperature-units-mixed", severity: "error" } as const;

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

/** Of what is warmer it need not be said that no freezer is at it. */
const WARMEST_SAID_C = 30;

const UNIT_F = /^°?\s?F$|^fahrenheit$/i;

/** The number in °C, with the mark beside it; a text stays one unless its label says °C. None where a format says °F. */
function editsOf(
  sheet: WorkbookSheet,
  { row, column }: FahrenheitCell,
  celsius: number,
): readonly CellEdit[] {
  const cell = sheet.cellAt(row, column);
  if (/°\s?F/i.test(cell?.format ?? "") || cell?.formula !== undefined) return [];
  const [label, beside] = [textAt(sheet, row, column - 1), textAt(sheet, row, column + 1)];
  if (typeof cell?.value === "string") {
    const saysUnit = /°\s?C\b/i.test(`${label} ${textAt(sheet, row - 1, column)}`);
    return cellEdit(sheet, { row, column }, saysUnit ? celsius : `${celsius} °C`);
  }
  const unit = UNIT_F.test(beside)
    ? cellEdit(sheet, { row, column: column + 1 }, /°/.test(beside) ? "°C" : "C")
    : [];
  return [...cellEdit(sheet, { row, column }, celsius), ...unit];
}

function finding(context: AuditContext, sheet: WorkbookSheet, found: FahrenheitCell): Finding {
  const { row, column, temperatureF, isMarked } = found;
  const celsius = rounded(fahrenheitToC(temperatureF), 1);
  const says =
    isMarked || temperatureF > WARMEST_SAID_C
      ? `${temperatureF} °F stands on a sheet in °C`
      : `No freezer is at ${temperatureF} °C: this is ${temperatureF} °F`;
  return findingAt(
    identity,
    sheet,
    { row, column },
    {
      message: `${says}, which is ${String(celsius).replace("-", "−")} °C.`,
      effect: effectOf(context, sheet, temperatureF),
      fix: `Enter ${celsius}.`,
      edits: editsOf(sheet, found, celsius),
    },
  );
}

function pointFinding({ sheet, row, column, value }: StatedResult): Finding {
  const celsius = rounded(fahrenheitToC(value), 2);
  return findingAt(
    identity,
    sheet,
    { row, column },
    {
      message: `${value} °F stands on a sheet in °C, which is ${String(celsius).replace("-", "−")} °C.`,
      effect: { quantity: "freezing point", from: value, to: celsius, unit: "°C" },
      fix: `Enter ${celsius}.`,
      edits: numberEdit(sheet, { row, column }, celsius),
    },
  );
}

const isSame = (one: Place, other: Place): boolean =>
  one.row === other.row && one.column === other.column;

/** What is right in °C, in K. */
const CLOSE_K = 1;

/** Whether what looks like °F among others is the freezing point that its own recipe has in °C. */
const isRightPoint = (context: AuditContext, sheet: WorkbookSheet, cell: FahrenheitCell): boolean =>
  !cell.isMarked &&
  context.results.some((result) => {
    if (result.role !== "freezing point" || result.sheet !== sheet || !isSame(result, cell))
      return false;
    const ours = recomputed(context, result);
    return ours !== null && Math.abs(ours - result.value) < CLOSE_K;
  });

export const temperatureUnit: Rule = {
  ...identity,
  title: "One temperature is in °F on a sheet in °C",
  find: (context) => {
    const onSheets = context.workbook.sheets.flatMap((sheet) =>
      fahrenheitCells(sheet)
        .filter((cell) => !isRightPoint(context, sheet, cell))
        .map((cell) => ({ sheet, cell })),
    );
    const asked = askedInFahrenheit(context).filter(
      (one) => !onSheets.some(({ sheet, cell }) => sheet === one.sheet && isSame(cell, one.cell)),
    );
    const found = [...onSheets, ...asked];
    const isFound = (point: StatedResult) =>
      found.some(({ sheet, cell }) => sheet === point.sheet && isSame(point, cell));
    return [
      ...found.map(({ sheet, cell }) => finding(context, sheet, cell)),
      ...[...context.results, ...measuredPoints(context)]
        .filter((result) => isPointInFahrenheit(context, result) && !isFound(result))
        .map(pointFinding),
    ];
  },
};
