import type { WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import type { AuditContext } from "../context";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { nextColumn } from "../recipes/nextFilled";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import type { FilledTotal } from "./filledTotals";
import { isAlike } from "./isAlike";
import { isFarFromSum } from "./isFarFromSum";
import { isLineOfSum } from "./isLineOfSum";
import { sumsUpHeading } from "./sumsUpHeading";
import { totalElsewhere } from "./totalElsewhere";
import { agrees, sumOf } from "./totalledLines";
import { typedLinesAbove, type LabelledLine } from "./typedLinesAbove";

/** Two numbers above a third may be anything. */
const LEAST_LINES = 3;

/** "All season", "das ganze Jahr", "over the year": what its months or weeks come to. */
const WHOLE_TIME =
  /^(((in|over|for|im|über|für) )?((the|das|die|den|der) )?(all|whole|entire|full|ganze[nrs]?|gesamte[nrs]?|alle)( (of )?(the|our))?|over the|across the|übers) (season|year|term|month|week|summer|winter|saison|jahr|halbjahr|monat|woche|sommer|months|weeks|days|monate|wochen|tage)( (together|in all|zusammen|insgesamt))?$/iu;

/** The number behind a label, where nothing but that is typed there. */
function typedBehind(sheet: WorkbookSheet, row: number, column: number): Place | null {
  const place = { row, column: nextColumn(sheet, row, column) };
  const cell = sheet.cellAt(row, place.column);
  return typeof cell?.value === "number" && cell.formula === undefined ? place : null;
}

const unnamed = (line: LabelledLine): LabelledLine => ({ ...line, label: "" });

function wrongAt(sheet: WorkbookSheet, label: string, place: Place): FilledTotal[] {
  const { row, column } = place;
  const lines = typedLinesAbove(sheet, place);
  const [last] = lines;
  if (last === undefined || lines.length < LEAST_LINES) return [];
  const heading = textAt(sheet, row - 1 - lines.length, column);
  // Under a heading that the total repeats, or of all of a time, a line is one of its kind whatever it is called.
  const isRepeated = sumsUpHeading(label, heading) || WHOLE_TIME.test(label);
  const isLine = (line: LabelledLine) => isAlike(sheet, isRepeated ? unnamed(line) : line, place);
  const isTotal = isRepeated || headerRole(label) === "total";
  if (heading === "" || !isTotal || !lines.every(isLine)) return [];
  const stored = sheet.cellAt(row, column)?.value as number;
  const total = totalElsewhere(sheet, place, stored, [...lines].reverse());
  const isRight = agrees(total, sumOf(lines)) || isFarFromSum(total);
  return isRight ? [] : [{ total, missing: [] }];
}

/**
 * Totals typed right below the typed numbers of a list that is no recipe, under a heading, which are not their sum.
 */
export const typedTotals = ({ workbook, blocks }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) =>
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) => {
      const isInList = ({ row: at, column }: Place) =>
        blocks.some((block) => block.sheet === sheet && contains(block.range, at, column));
      return columns.flatMap((column) => {
        const place = typedBehind(sheet, row, column);
        const isApart = place !== null && !isInList(place) && !isLineOfSum(sheet, place);
        return isApart ? wrongAt(sheet, textAt(sheet, row, column), place) : [];
      });
    }),
  );
