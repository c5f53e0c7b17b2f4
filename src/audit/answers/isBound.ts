import { cellName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, textAt } from "../recipes/cells";
import { lowerWords } from "../recipes/headings/lowerWords";
import type { Place } from "../recipes/recipeBlock";
import { isUnit } from "./isUnit";

/** A heading stands at most this far above its numbers. */
const REACH_UP = 12;
/** What says whether a value fits stands at most this far beside its bounds. */
const REACH_RIGHT = 6;

/** Headings of what a value shall not leave. English and German; common practice, no source. */
const BOUND =
  /^((not )?(from|to|below|above|under|over)|between|and|zwischen|und|(nicht )?(von|ab|bis|unter|über)|(min|max)\.?|(minim|maxim)(um|al)|at (least|most)|(minde|höch|wenig)stens|((the|our) )?(low|upp|high)(er|est)?( (limit|bound|end|value))?|(unter|ober|höchst|niedrigst)e[rs]?( (grenze|wert))?|(unter|ober)grenze|no (less|more|lower|higher) than)$/;

const WITH_UNIT = /^(.*?)\s*[,/]?\s*[([]?\s*([^\s()[\]]+)\s*[)\]]?$/;

/** Whether a heading, with or without a unit, says that the numbers below it are bounds and no answers. */
function saysBound(heading: string): boolean {
  const plain = lowerWords(heading);
  const [, words = "", unit = ""] = WITH_UNIT.exec(plain) ?? [];
  return BOUND.test(plain) || (isUnit(unit) && BOUND.test(words));
}

function heading(sheet: WorkbookSheet, { row, column }: Place): string {
  const last = Math.max(0, row - REACH_UP);
  let above = row - 1;
  while (above > last && holdsNumber(sheet, above, column)) above -= 1;
  return textAt(sheet, above, column);
}

const COMPARED = /\$?([A-Z]{1,3})\$?(\d+)\s*[<>]=?\s*\$?([A-Z]{1,3})\$?(\d+)/gi;

/** Whether a formula behind a typed number compares with it what is worked out in the same row. */
function isCompared(sheet: WorkbookSheet, { row, column }: Place): boolean {
  const own = cellName(row, column);
  const after = Array.from({ length: REACH_RIGHT }, (_, at) => column + 1 + at);
  const worked = after.filter((at) => sheet.cellAt(row, at)?.formula !== undefined);
  const names = worked.map((at) => cellName(row, at));
  return worked.some((at) => {
    const formula = sheet.cellAt(row, at)?.formula ?? "";
    return [...formula.matchAll(COMPARED)].some(([, ...parts]) => {
      const [one, other] = [`${parts[0]}${parts[1]}`, `${parts[2]}${parts[3]}`];
      return (one === own && names.includes(other)) || (other === own && names.includes(one));
    });
  });
}

/**
 * Whether a number typed behind a label is a bound of what the label names: the heading of its column says so, or a
 * formula compares with it the answer worked out beside it.
 */
export const isBound = (sheet: WorkbookSheet, place: Place): boolean =>
  sheet.cellAt(place.row, place.column)?.formula === undefined &&
  (saysBound(heading(sheet, place)) || isCompared(sheet, place));
