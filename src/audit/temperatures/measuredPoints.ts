import type { AuditContext } from "../context";
import { labelledAnswers } from "../answers/labelledAnswers";
import { resultUnit } from "../answers/resultLabel";
import type { StatedResult } from "../answers/statedResults";
import { isLedger } from "../recipes/isLedger";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { CELSIUS } from "./loggedTemperatures";

/** "Probe said (°C)", "Thermometer zeigt °C". */
const SHOWN =
  /\b(probe|thermometer|meter|logger|sensor|fühler|messfühler|gerät) (said|says|showed|shows|reads?|gave|gives|told|sagte?|zeigte?)\b/i;

const isMeasured = (label: string): boolean =>
  (headerRole(label) === "measured" || SHOWN.test(label)) && CELSIUS.test(label);

/** What a thermometer showed in °C beside a recipe, as a freezing point of it would be stated. */
export function measuredPoints({ workbook, blocks }: AuditContext): StatedResult[] {
  const few = blocks.filter((block) => !isLedger(block));
  return labelledAnswers(workbook, few, isMeasured).flatMap((answer): StatedResult[] => {
    const { sheet, row, column, label } = answer;
    const cell = sheet.cellAt(row, column);
    if (typeof cell?.value !== "number") return [];
    const role = "freezing point";
    const unit = resultUnit(label, textAt(sheet, row, column + 1), cell, role);
    return [{ ...answer, role, value: cell.value, unit, temperatureC: null }];
  });
}
