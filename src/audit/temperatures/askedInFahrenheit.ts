import type { WorkbookSheet } from "../../workbook/model";
import type { StatedResult } from "../answers/statedResults";
import type { AuditContext } from "../context";
import { rangesRead } from "../formulas/rangesRead";
import { labelledNumbers } from "../labels";
import type { FahrenheitCell } from "./fahrenheitCells";
import { plainWords } from "../recipes/headings/plainWords";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import { CELSIUS } from "./loggedTemperatures";
import { WARMEST_SERVED_C, WARMEST_SERVED_F } from "./servedTemperatures";

export interface AskedInFahrenheit {
  readonly sheet: WorkbookSheet;
  readonly cell: FahrenheitCell;
}

const MOST_RESULTS = 500;
/** Ice is kept and sent at −18 °C, and no warmer than this. Common practice, no source. */
const WARMEST_KEPT_C = -10;

/** Above which temperature in °C a labelled number is one in °F. */
const warmestOf = (label: string): number =>
  temperatureWords.ofStore.test(plainWords(label)) ? WARMEST_KEPT_C : WARMEST_SERVED_C;

/** Single cells that the formulas of ice shares read. */
function readByIceShares({ workbook, results }: AuditContext): ReadonlySet<string> {
  const formulaOf = ({ sheet, row, column }: StatedResult) => sheet.cellAt(row, column)?.formula;
  const shares = results.filter(({ role }) => role === "ice fraction").slice(0, MOST_RESULTS);
  return new Set(
    shares.flatMap((share) =>
      rangesRead(workbook)(share.sheet, formulaOf(share) ?? "")
        .filter(({ range: r }) => r.top === r.bottom && r.left === r.right)
        .map(({ sheet, range }) => `${sheet.name}!${range.top},${range.left}`),
    ),
  );
}

/** Temperatures said to be in °C at which a share of ice is asked for, and at which there is none: they are in °F. */
export function askedInFahrenheit(context: AuditContext): readonly AskedInFahrenheit[] {
  const read = readByIceShares(context);
  if (read.size === 0) return [];
  return labelledNumbers(context.workbook, ["temperature"])
    .filter(({ sheet, row, column }) => read.has(`${sheet.name}!${row},${column}`))
    .filter(({ label, beside }) => CELSIUS.test(label) || CELSIUS.test(beside))
    .filter(({ label, value }) => value > warmestOf(label) && value <= WARMEST_SERVED_F)
    .map(({ sheet, row, column, value }) => ({
      sheet,
      cell: { row, column, temperatureF: value, isMarked: false },
    }));
}
