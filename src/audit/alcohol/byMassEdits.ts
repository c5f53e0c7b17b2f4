import { cellName } from "../../workbook/address";
import { NAMESPACE } from "../../worksheet/namespace";
import { numberFrom } from "../answers/answers";
import { formulaEdit, numberEdit } from "../cellEdit";
import { rounded } from "../effect";
import type { CellEdit } from "../finding";
import type { ByVolume } from "./alcoholByVolume";

/** Typed grams are put right; a formula gets the function that turns a strength by volume into one by mass. */
export function byMassEdits(found: ByVolume): readonly CellEdit[] {
  const { line, strengthAt, massPercent, abvPercent, right, factor, mL } = found;
  const { sheet, says } = line;
  const cell = sheet.cellAt(found.row, found.column);
  if (cell?.formula === undefined) return numberEdit(sheet, found, rounded(right / factor, 4));
  const fraction = numberFrom("ABVTOMASSFRACTION", abvPercent);
  // In a liqueur the sugar makes the same strength a smaller share: there a person decides.
  const isPlain = fraction !== null && Math.abs((100 * fraction) / massPercent - 1) <= 0.02;
  if (strengthAt === null || !isPlain || mL !== null || says === "share") return [];
  const strength = sheet.cellAt(strengthAt.row, strengthAt.column)?.value;
  const reference = cellName(strengthAt.row, strengthAt.column).replace(/(\d+)/, "\\$?$1");
  const percent = "\\s*(?:/\\s*100|%|\\*\\s*0\\.01)";
  const address = `(\\$?${reference})(?![\\d(:])`;
  const called = `${NAMESPACE}.ABVTOMASSFRACTION($1)`;
  const isInPercent = typeof strength === "number" && strength > 1;
  const beside = new RegExp(`(?<![\\w$!.:])${address}${isInPercent ? percent : ""}(?![\\w.])`, "i");
  if (beside.test(cell.formula))
    return formulaEdit(
      sheet,
      found,
      cell.formula.replace(beside, isInPercent ? called : called.replace("$1", "100*$1")),
    );
  // The hundred stands elsewhere in the product: B4*C4/100.
  const atEnd = new RegExp(`${percent}\\s*$`, "i");
  const alone = new RegExp(`(?<![\\w$!.:])${address}(?![\\w.])`, "i");
  const isProduct = /^[$A-Z0-9*\s/]+$/i.test(cell.formula) && atEnd.test(cell.formula);
  return isInPercent && isProduct
    ? formulaEdit(sheet, found, cell.formula.replace(atEnd, "").replace(alone, called))
    : [];
}
