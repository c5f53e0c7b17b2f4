import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { nextColumn } from "../recipes/nextFilled";
import type { Place } from "../recipes/recipeBlock";
import type { FahrenheitCell } from "./fahrenheitCells";
import { CELSIUS } from "./loggedTemperatures";

/** Ice that stands in water is at 0 °C, which is 32 °F, and thermometers are tried in it. */
const ICE_WATER =
  /\b(iced? ?(and )?-?(water|bath|slurry|point)|melting ice|crushed ice)\b|eis-?(wasser|bad|punkt)|schmelzende[sm]? eis/i;
const [COLDEST_F, WARMEST_F] = [31, 34];

/** What ice water is said to be at in °C, where it can only be in °F. */
export function iceWaterInFahrenheit(
  sheet: WorkbookSheet,
  { row, column }: Place,
  text: string,
): FahrenheitCell[] {
  if (!ICE_WATER.test(text)) return [];
  const at = nextColumn(sheet, row, column);
  const value = sheet.cellAt(row, at)?.value;
  const saysCelsius = [text, textAt(sheet, row, at + 1)].some((words) => CELSIUS.test(words));
  const isForeign = typeof value === "number" && value >= COLDEST_F && value <= WARMEST_F;
  return isForeign && saysCelsius
    ? [{ row, column: at, temperatureF: value, isMarked: false }]
    : [];
}
