import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";

/** The columns of one row that a formula reads, in which order ever. */
const columnsRead = (
  references: ReturnType<typeof referencesOf>,
  isOfRow: (top: number) => boolean,
): ReadonlySet<number> =>
  new Set(
    references
      .filter(
        ({ sheet, range }) => sheet === null && range.top === range.bottom && isOfRow(range.top),
      )
      .flatMap(({ range: { left, right } }) =>
        Array.from({ length: right - left + 1 }, (_, at) => left + at),
      ),
  );

/** The columns of its own row of which a formula takes so many times as another row says: "SUMPRODUCT(B8:D8,$B$4:$D$4)". */
function counted(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const references = referencesOf(sheet.cellAt(row, column)?.formula ?? "");
  const [own, counts] = [
    columnsRead(references, (top) => top === row),
    columnsRead(references, (top) => top !== row),
  ];
  const isCounted = own.size > 1 && own.size === counts.size;
  return isCounted && [...own].every((at) => counts.has(at)) ? [...own] : [];
}

/**
 * The columns of which columns of amounts take so many times each, line by line: what several batches need, of which
 * each has a column to itself.
 */
export function countedRecipes(
  sheet: WorkbookSheet,
  items: readonly number[],
  amounts: readonly number[],
): ReadonlySet<number> {
  const found = amounts.flatMap((column) => {
    const lines = items.map((row) => counted(sheet, row, column));
    const [first = []] = lines.filter((line) => line.length > 0);
    const isSame = (line: readonly number[]) => String(line) === String(first);
    return lines.filter(isSame).length * 2 > items.length ? first : [];
  });
  return new Set(found);
}
