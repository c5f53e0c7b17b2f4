import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";
import { numbersSaid } from "./numbersSaid";

/** A sentence has so many words. */
const SENTENCE = /(?:[\p{L}\d.,]+\W+){4}/u;
/** A note tells several; of a long ledger not every cell is a note. */
const MOST_ROWS = 500;

const known = new WeakMap<WorkbookSheet, readonly number[]>();

function sharesOn(sheet: WorkbookSheet): readonly number[] {
  const { columnsByRow } = sheetTexts(sheet);
  if (columnsByRow.size > MOST_ROWS) return [];
  return [...columnsByRow].flatMap(([row, columns]) =>
    columns
      .map((column) => textAt(sheet, row, column))
      .filter((text) => SENTENCE.test(text))
      .flatMap(numbersSaid.exactShares),
  );
}

/** The exact shares that the sentences of a sheet tell, above its formulas or below, as formulas take them: "9.1 % crystal water". */
export function sharesInSentences(sheet: WorkbookSheet): readonly number[] {
  const shares = known.get(sheet) ?? sharesOn(sheet);
  known.set(sheet, shares);
  return shares;
}
