import { cellName } from "../../workbook/address";
import { eachCell } from "../../workbook/eachCell";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import type { AuditContext } from "../context";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { nextColumn } from "../recipes/nextFilled";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { unitFromFormat, unitFromWord } from "../recipes/amounts/unit";
import { carriesUnit, isBareLabel, isPrice, isQuantity, namesUnit } from "./inputLabel";
import { isMassByFormula } from "./isMassByFormula";
import { isRowOfInputs, lastInRow } from "./rowOfInputs";

/** A labelled number that someone typed for formulas, or people, to work with, and that names no unit. */
export interface UnitlessInput extends Place {
  readonly sheet: WorkbookSheet;
  /** The cell, or the row of numbers that share a label. */
  readonly range: CellRange;
  readonly label: string;
  readonly value: number;
  readonly isTemperature: boolean;
}

const WARMEST_SERVED_C = -3;
const COLDEST_C = -60;
const MOST_LOOKED_UP = 40;

/** Fewer numbers below each other are inputs that stand below words of their own: "Ice: | Lemon", "Batch | 2000". */
const LEAST_ROWS = 3;

const MOST_LABELS = 12;

/** Whether a number stands in a table's column rather than beside a label alone. */
function isInTable(
  sheet: WorkbookSheet,
  { row, column }: Place,
  recipes: readonly CellRange[],
): boolean {
  const isRecipe = (at: number) => recipes.some((range) => contains(range, at, column));
  let above = row - 1;
  while (above >= 0 && looksNumeric(sheet, above, column) && !isRecipe(above)) above -= 1;
  // Right below a list it is no line of it.
  if (isRecipe(above)) return false;
  if (looksNumeric(sheet, row, column + 1)) return true;
  const heading = textAt(sheet, above, column);
  if (heading === "" || headerRole(heading) !== null) return heading !== "";
  let below = row + 1;
  while (below - above <= MOST_LABELS && looksNumeric(sheet, below, column)) below += 1;
  // Where a line says its unit with its own label, the words above are no heading.
  const lines = Array.from({ length: below - above - 1 }, (_, at) => above + 1 + at);
  const isForm = lines.some((at) => carriesUnit(textAt(sheet, at, column - 1)));
  return below - above > LEAST_ROWS && !isForm;
}

function inputAt(
  sheet: WorkbookSheet,
  row: number,
  labelColumn: number,
  recipes: readonly CellRange[],
): UnitlessInput | null {
  const label = textAt(sheet, row, labelColumn);
  const column = nextColumn(sheet, row, labelColumn);
  const cell = sheet.cellAt(row, column);
  if (typeof cell?.value !== "number" || cell.formula !== undefined) return null;
  if (!isBareLabel(label)) return null;
  const format = cell.format ?? "";
  const beside = textAt(sheet, row, nextColumn(sheet, row, column));
  if (unitFromFormat(format) !== null || namesUnit(format) || /[dmyh"]/i.test(format)) return null;
  if (unitFromWord(beside) !== null || namesUnit(beside)) return null;
  const place = { row, column };
  if (!isRowOfInputs(sheet, place, labelColumn) && isInTable(sheet, place, recipes)) return null;
  const { value } = cell;
  const isTemperature = value <= WARMEST_SERVED_C && value >= COLDEST_C;
  const range = { top: row, bottom: row, left: column, right: lastInRow(sheet, place) };
  return { sheet, row, column, range, label, value, isTemperature };
}

/** How formulas write a cell: on its own sheet, on others, or by its name. */
function writtenAs({ sheet, row, column }: UnitlessInput, isOwn: boolean): RegExp {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cellName(row, column)) ?? [];
  const place = `\\$?${letters}\\$?${digits}(?![\\d(:])`;
  const escaped = sheet.name.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&");
  const address = isOwn ? `(?<![\\p{L}\\d_.!$:])${place}` : `${escaped}'?!${place}`;
  return new RegExp(address, "iu");
}

/** One input may be read in every row of a long list. */
const MOST_WEIGHED = 50;

/**
 * Whether a formula works with the number as with a quantity: by its label, as so much per hundred, from grams to
 * kilograms, or so that only a mass makes the units right.
 */
function isWorkedWith({ workbook, blocks }: AuditContext, input: UnitlessInput): boolean {
  const isMeasured = isQuantity(input.label) || isPrice(input.label);
  return workbook.sheets.some((sheet) => {
    const written = writtenAs(input, sheet === input.sheet);
    const converted = new RegExp(
      `${written.source}\\s*(?:/\\s*100(?!\\d)|%)|${written.source}\\s*[*/]\\s*1000(?!\\d)|\\b1000\\s*[*/]\\s*${written.source}`,
      "iu",
    );
    let isRead = false;
    let weighed = 0;
    eachCell(sheet, (row, column, cell) => {
      const formula = cell.sharedFormula ?? cell.formula;
      if (isRead || formula === undefined || !written.test(formula)) return;
      isRead = isMeasured || converted.test(formula);
      if (isRead || weighed === MOST_WEIGHED) return;
      weighed += 1;
      isRead = isMassByFormula(blocks, { sheet, row, column }, cell.formula ?? formula, input);
    });
    return isRead;
  });
}

/** Whether money is written somewhere on a sheet, so that a price without it stands out. */
const namesMoney = (sheet: WorkbookSheet): boolean =>
  [...sheetTexts(sheet).columnsByRow].some(([row, columns]) =>
    columns.some((column) => /[€$£]|\b(eur|usd|chf)\b/i.test(textAt(sheet, row, column))),
  );

/** The range of a list with the columns left of it that have a heading in its row: shops, prices, numbers. */
function wholeTable({ sheet, headerRow, layout, range }: RecipeBlock): CellRange {
  let { left } = range;
  const isHeaded = () =>
    headerRow !== null && left > 0 && textAt(sheet, headerRow, left - 1) !== "";
  while (layout === "down" && isHeaded()) left -= 1;
  return { ...range, left };
}

/** The labelled inputs of a workbook with recipes that name no unit: serving temperatures, sizes, losses. */
export function unitlessInputs(context: AuditContext): UnitlessInput[] {
  const { workbook, blocks } = context;
  if (blocks.length === 0) return [];
  const bare = workbook.sheets.flatMap((sheet) => {
    const ranges = blocks.filter((block) => block.sheet === sheet).map(wholeTable);
    const isOutside = (row: number, column: number) =>
      !isBlank(sheet, row, column) && !ranges.some((range) => contains(range, row, column));
    return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns
        .filter((column) => isOutside(row, nextColumn(sheet, row, column)))
        .flatMap((column) => inputAt(sheet, row, column, ranges) ?? []),
    );
  });
  const hasRecipe = ({ sheet }: UnitlessInput) => blocks.some((block) => block.sheet === sheet);
  return bare
    .slice(0, MOST_LOOKED_UP)
    .filter((one) => !isPrice(one.label) || namesMoney(one.sheet))
    .filter((one) => (one.isTemperature ? hasRecipe(one) : isWorkedWith(context, one)));
}
