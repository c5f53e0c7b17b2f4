import type { AuditContext } from "./context";
import { labelledNumbers } from "./labels";
import { resultUnit, fahrenheitToC } from "./resultLabel";
import type { StatedResult } from "./statedResults";

/** The temperature an ice share is stated for: by its own label, else the only labelled one of its sheet. */
export function temperatureOfResultC(context: AuditContext, result: StatedResult): number | null {
  if (result.temperatureC !== null) return result.temperatureC;
  const onSheet = labelledNumbers(context.workbook, ["temperature"]).filter(
    ({ sheet }) => sheet === result.sheet,
  );
  const [only] = onSheet;
  if (only === undefined || onSheet.length > 1) return null;
  const unit = resultUnit(only.label, only.beside, { value: only.value }, "temperature");
  return unit === "°F" ? fahrenheitToC(only.value) : only.value;
}
