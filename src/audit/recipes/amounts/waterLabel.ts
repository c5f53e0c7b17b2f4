import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { formKind } from "../forms/formLabels";
import type { Place, RecipeBlock, RecipeName } from "../recipeBlock";
import { sheetTexts } from "../sheetTexts";
import { nextColumn } from "../nextFilled";
import { isMass, massIn, unitFromWord } from "./unit";

/** The number stands at most this far from its label. */
const REACH = 3;

/** The water that a label names, where a number alone stands beside it. */
function waterAt(sheet: WorkbookSheet, { row, column }: Place): RecipeName | null {
  const text = textAt(sheet, row, column);
  if (formKind(text) !== "water") return null;
  const columns = Array.from({ length: REACH }, (_, step) => column + 1 + step);
  const at = columns.find((each) => looksNumeric(sheet, row, each));
  // More numbers beside the first are those of another table.
  if (at === undefined || looksNumeric(sheet, row, at + 1)) return null;
  const beside = [at - 1, at + 1].filter((one) => one !== column);
  const marks = [text, ...beside.map((one) => textAt(sheet, row, one))];
  // Below two substances side by side the column of units stands beyond the second.
  const behind = unitFromWord(textAt(sheet, row, nextColumn(sheet, row, at)));
  const beyond = behind !== null && isMass(behind) ? behind : null;
  const unit = marks.map(massIn).find((one) => one !== null) ?? beyond;
  return {
    row,
    column,
    item: "water",
    amountAt: { row, column: at },
    ...(unit !== null && { unit }),
  };
}

const known = new WeakMap<WorkbookSheet, readonly RecipeName[]>();

function watersOn(sheet: WorkbookSheet): readonly RecipeName[] {
  const waters =
    known.get(sheet) ??
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns.flatMap((column) => waterAt(sheet, { row, column }) ?? []),
    );
  known.set(sheet, waters);
  return waters;
}

const outside = (from: number, to: number, at: number): number => Math.max(from - at, at - to, 0);

/** A label "Water (g)" with its number that stands nearest to a list, anywhere on the sheet but in it. */
export function waterLabel(sheet: WorkbookSheet, { range }: RecipeBlock): RecipeName | null {
  const { top, bottom, left, right } = range;
  const awayFrom = ({ row, column }: Place): number =>
    outside(top, bottom, row) + outside(left, right, column);
  const waters = watersOn(sheet).filter((water) => awayFrom(water) > 0);
  const [first = null, ...others] = waters;
  return others.reduce(
    (nearest, water) => (awayFrom(water) < awayFrom(nearest ?? water) ? water : nearest),
    first,
  );
}
