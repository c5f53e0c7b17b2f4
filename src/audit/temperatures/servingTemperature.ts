import type { AuditContext } from "../context";
import { labelledNumbers } from "../labels";
import { resultUnit, fahrenheitToC } from "../answers/resultLabel";
import { plainWords } from "../recipes/plainWords";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import type { StatedResult } from "../answers/statedResults";

const saysServing = (label: string): boolean => temperatureWords.ofServing.test(plainWords(label));

/** The temperature in the same row of an across block: "at, °C". */
function temperatureInRowC({ block, recipe }: StatedResult): number | null {
  if (block.layout === "down") return null;
  const columns = [...block.roles].filter(([, role]) => role === "temperature");
  const value =
    columns.length === 1 ? block.sheet.cellAt(recipe.line, columns[0]?.[0] ?? -1)?.value : null;
  return typeof value === "number" ? value : null;
}

/** The temperature an ice share is stated for: by its own label, else the only labelled one of its sheet, or the only one of serving. */
export function temperatureOfResultC(context: AuditContext, result: StatedResult): number | null {
  if (result.temperatureC !== null) return result.temperatureC;
  const inRow = temperatureInRowC(result);
  if (inRow !== null) return inRow;
  const onSheet = labelledNumbers(context.workbook, ["temperature"]).filter(
    ({ sheet }) => sheet === result.sheet,
  );
  // Beside the readings of a freezer the one at which it is served.
  const served = onSheet.length > 1 ? onSheet.filter(({ label }) => saysServing(label)) : onSheet;
  const [only] = served;
  if (only === undefined || served.length > 1) return null;
  const unit = resultUnit(only.label, only.beside, { value: only.value }, "temperature");
  return unit === "°F" ? fahrenheitToC(only.value) : only.value;
}
