import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import { isOfParticles } from "./amounts/ofParticles";
import type { Role } from "./headings/headerRole";
import type { LabelledPlace, RecipeBlock, RecipeName } from "./recipeBlock";

/** A number that is said of a solute, and the sheet that it stands on. */
export interface SaidPlace extends LabelledPlace {
  readonly sheet: WorkbookSheet;
}

/** Where a class sheet says something of one solute: in a column of its list or beside a label. */
export function saidOf(block: RecipeBlock, name: RecipeName, role: Role): SaidPlace | null {
  const own = name.details?.get(role);
  const { layout, roles, sheet, headerRow, range } = block;
  if (own !== undefined) return { sheet, ...own };
  const columns = [...roles].flatMap(([column, one]) => (one === role ? [column] : []));
  const labelOf = (column: number) => textAt(sheet, headerRow ?? -1, column);
  // Beside the moles of formula units those of particles are what the sheet goes on with.
  const column = columns.find((one) => isOfParticles(labelOf(one))) ?? columns[0];
  // The water that stands below a list has nothing in its columns.
  const isBeyond = name.row < range.top || name.row > range.bottom;
  return layout !== "down" || column === undefined || isBeyond
    ? null
    : { sheet, row: name.row, column, label: labelOf(column) };
}
