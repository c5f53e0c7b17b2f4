import type { WorkbookSheet } from "../../../workbook/model";
import { addsAlong } from "./addsAlong";

/** The columns that columns of amounts add up line by line: the sorts of a weekend, of which each needs so much. */
export function addedColumns(
  sheet: WorkbookSheet,
  items: readonly number[],
  amounts: readonly number[],
): ReadonlySet<number> {
  const found = amounts.flatMap((column) => {
    const lines = items.map((row) => addsAlong(sheet, { row, column }));
    const added = lines.filter((line) => line.length > 0);
    const most = added.length * 2 > items.length ? added : [];
    return most.flatMap((line) =>
      line.flatMap(({ left, right }) =>
        Array.from({ length: right - left + 1 }, (_, at) => left + at),
      ),
    );
  });
  return new Set(found);
}
