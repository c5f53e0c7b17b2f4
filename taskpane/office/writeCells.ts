import type { SheetEdit } from "../host";

/** Excel shows a formula without the spaces it was typed with; only its own text counts. */
const same = (one: unknown, other: unknown): boolean => String(one) === String(other);

/** Reads every cell again, writes those that are as they were shown, and reads them once more. */
export async function writeCells(
  context: Excel.RequestContext,
  edits: readonly SheetEdit[],
): Promise<readonly SheetEdit[]> {
  const ranges = edits.map(({ sheet, cell }) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(cell);
    range.load("formulas");
    return range;
  });
  await context.sync();
  const isUnchanged = edits.map(({ from }, at) => same(ranges[at]?.formulas[0]?.[0], from));
  edits.forEach(({ to }, at) => {
    const range = ranges[at];
    if (isUnchanged[at] === true && range !== undefined) range.formulas = [[to]];
  });
  await context.sync();
  for (const range of ranges) range.load("formulas");
  await context.sync();
  return edits.filter(
    ({ to }, at) => isUnchanged[at] !== true || !same(ranges[at]?.formulas[0]?.[0], to),
  );
}
