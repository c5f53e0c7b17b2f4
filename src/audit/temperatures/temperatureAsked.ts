import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead } from "../formulas/rangesRead";

/** The third argument of the function, after names and amounts: a number, or a cell of this sheet or another. */
const ASKED =
  /\bICEFRACTION\(\s*[^,()]+,\s*[^,()]+,\s*(?:([-−]?\d+(?:\.\d+)?)|((?:(?:'[^']+'|[\p{L}\p{N}_.]+)!)?\$?[A-Z]{1,3}\$?\d{1,7}))\s*[,)]/iu;

/** The temperature in °C that a formula asks the share of ice at, whatever is written beside it; null where it asks none. */
export function temperatureAskedC(
  workbook: Workbook,
  home: WorkbookSheet,
  formula: string,
): number | null {
  const [, typed, cell] = ASKED.exec(formula) ?? [];
  if (typed !== undefined) return Number(typed.replace("−", "-"));
  const [read] = cell === undefined ? [] : rangesRead(workbook)(home, cell);
  const value = read?.sheet.cellAt(read.range.top, read.range.left)?.value;
  return typeof value === "number" ? value : null;
}
