import type { BlockValue, SheetEdit } from "../host";
import { asInput, hasTaken, stillHolds } from "./cellContent";
import { HalfWritten } from "./halfWritten";
import { stateAfterFault } from "./stateAfterFault";

const placeOf = ({ sheet, cell }: SheetEdit): string => `${sheet}!${cell}`;

const rangeOf = (context: Excel.RequestContext, { sheet, cell }: SheetEdit): Excel.Range =>
  context.workbook.worksheets.getItem(sheet).getRange(cell);

/** What stands in each cell now: always from new objects, for after a fault the old ones are spoilt. */
async function contents(
  context: Excel.RequestContext,
  edits: readonly SheetEdit[],
): Promise<readonly (BlockValue | undefined)[]> {
  const ranges = edits.map((edit) => rangeOf(context, edit));
  for (const range of ranges) range.load("formulas");
  await context.sync();
  return ranges.map((range) => (range.formulas as BlockValue[][] | null)?.[0]?.[0]);
}

/** Writes all cells by one `sync`: Excel makes one step to undo of it. */
async function writeAll(context: Excel.RequestContext, edits: readonly SheetEdit[]): Promise<void> {
  for (const edit of edits) {
    const range = rangeOf(context, edit);
    if (edit.format !== undefined) range.numberFormat = [[edit.format]];
    range.formulas = [[asInput(edit.to)]];
  }
  try {
    await context.sync();
  } catch (fault) {
    const attempts = edits.map((edit) => ({ place: placeOf(edit), to: edit.to }));
    await stateAfterFault(attempts, () => contents(context, edits), fault);
  }
}

/** Reads every cell again, writes those that are as they were shown, and reads them once more. */
export async function writeCells(
  context: Excel.RequestContext,
  edits: readonly SheetEdit[],
): Promise<readonly SheetEdit[]> {
  const before = await contents(context, edits);
  const open = edits.filter(({ from }, at) => stillHolds(before[at], from));
  if (open.length === 0) return edits;
  await writeAll(context, open);
  let after: readonly (BlockValue | undefined)[];
  try {
    after = await contents(context, open);
  } catch (fault) {
    throw new HalfWritten({ kind: "unverified", places: open.map(placeOf) }, fault);
  }
  const taken = new Set(open.filter(({ to }, at) => hasTaken(after[at], to)));
  return edits.filter((edit) => !taken.has(edit));
}
