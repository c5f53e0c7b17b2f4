import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../../src/foundation/constants";
import { isProblem } from "../../../src/foundation/problem";
import { cellOf, column, numberOf } from "../../worksheet/ask";
import type { Row } from "./comparison";

/** A printed figure of a recipe in grams by name, as it would be typed into cells. */
export interface PrintedFigure {
  readonly label: string;
  readonly group: string;
  readonly grams: Readonly<Record<string, number>>;
  readonly printed: number;
}

type Grams = PrintedFigure["grams"];

/** What a cell answers for a recipe. */
const answerTo = (name: string, grams: Grams, ...more: readonly unknown[]) =>
  cellOf(name, column(Object.keys(grams)), column(Object.values(grams)), ...more);

function numberOrNull(name: string, grams: Grams, ...more: readonly unknown[]): number | null {
  const cell = answerTo(name, grams, ...more);
  return typeof cell === "number" ? cell : null;
}

/** Particles per kg of water if everything fell apart: what the ideal law counts. */
const idealOsmolality = (grams: Grams): number | null => numberOrNull("OSMOLALITY", grams);

/** Kf·i·m as the classroom has it. */
export function idealDepressionK(grams: Grams): number | null {
  const osmolality = idealOsmolality(grams);
  return osmolality === null ? null : numberOf("IDEALDEPRESSION", osmolality);
}

const scaled = (value: number | null, by: number) => (value === null ? null : by * value);

function rowOf(
  { label, group, printed, grams }: PrintedFigure,
  ask: { readonly name: string; readonly quantity: string; readonly more: readonly unknown[] },
  ideal: number | null,
  scale = 1,
): Row {
  const cell = answerTo(ask.name, grams, ...ask.more);
  if (typeof cell !== "number") {
    return { label, printed, reason: isProblem(cell) ? cell.message : String(cell) };
  }
  const band = scaled(numberOrNull("UNCERTAINTY", grams, ask.quantity, ...ask.more), scale);
  return { label, group, printed, computed: scale * cell, ideal, band, printedBand: 0 };
}

/** A freezing point, °C; the ideal law beside it is Kf·i·m. */
export const freezingFigure = (figure: PrintedFigure): Row =>
  rowOf(
    figure,
    { name: "FREEZINGPOINT", quantity: "freezing point", more: [] },
    scaled(idealDepressionK(figure.grams), -1),
  );

/** A water activity; the ideal law beside it is Raoult's. */
export function activityFigure(figure: PrintedFigure, temperatureC = 25): Row {
  const osmolality = idealOsmolality(figure.grams);
  const ideal = osmolality === null ? null : 1 / (1 + WATER_MOLAR_MASS_KG_PER_MOL * osmolality);
  const ask = { name: "WATERACTIVITY", quantity: "water activity", more: [temperatureC] };
  return rowOf(figure, ask, ideal);
}

/** A share of the water that is ice, %; by the ideal law all the water left keeps Kf·i·m at the temperature. */
export function shareFigure(figure: PrintedFigure, temperatureC: number): Row {
  const depressionK = idealDepressionK(figure.grams);
  const ideal = depressionK === null ? null : 100 * Math.max(1 + depressionK / temperatureC, 0);
  const ask = { name: "ICEFRACTION", quantity: "ice fraction", more: [temperatureC] };
  return rowOf(figure, ask, ideal, 100);
}
