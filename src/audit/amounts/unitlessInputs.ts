import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { NAMESPACE } from "../../worksheet/namespace";
import type { AuditContext } from "../context";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { nextColumn } from "../recipes/nextFilled";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { unitFromFormat, unitFromHeader, unitFromWord } from "../recipes/amounts/unit";
import { isHeadedInDegrees } from "./isHeadedInDegrees";
import { numbersSaid } from "../formulas/numbersSaid";
import { headingOfSection } from "./headingOfSection";
import { carriesUnit, isBareLabel, isPrice, namesUnit } from "./inputLabel";
import type { UnitlessInput } from "./unitlessInput";
import { isReadAs } from "./isReadAs";
import { isWorkedWith } from "./isWorkedWith";
import { isRowOfInputs, lastInRow } from "./rowOfInputs";

const WARMEST_SERVED_C = -3;
const COLDEST_C = -60;
const MOST_LOOKED_UP = 40;

/** Fewer numbers below each other are inputs that stand below words of their own: "Ice: | Lemon", "Batch | 2000". */
const LEAST_ROWS = 3;

const MOST_LABELS = 12;

/** On a sheet without a list, too, a cold number that such a function reads is a temperature. */
const OUR_FUNCTION = new RegExp(`\\b${NAMESPACE}\\.`, "i");

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

/** What may be the unit of the numbers of a row: the text behind them, unless it stands apart as the label of another number. */
function unitBeside(sheet: WorkbookSheet, place: Place): string {
  const { row } = place;
  const last = lastInRow(sheet, place);
  const next = nextColumn(sheet, row, last);
  const isLabel = next > last + 1 && looksNumeric(sheet, row, next + 1);
  return isLabel ? "" : textAt(sheet, row, next);
}

/** "10 | pops of | 75 | g", "8 | Becher zu | 120 | ml": what is counted, and of what size each is. */
const COUNTED_OF = /^\p{L}[\p{L} -]{1,20} (?:of|at|à|zu|je|mit|with)$/iu;

/** Whether a row of labels and numbers in turn begins with words that name a unit for all: "Base, g: | milk | 620 | sugar | 120". */
function isHeadedInRow(sheet: WorkbookSheet, row: number, labelColumn: number): boolean {
  let first = labelColumn - 2;
  while (textAt(sheet, row, first) !== "" && looksNumeric(sheet, row, first + 1)) first -= 2;
  const [head] = sheetTexts(sheet).columnsByRow.get(row) ?? [];
  return head === first + 1 && unitFromHeader(textAt(sheet, row, head)) !== null;
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
  const { value } = cell;
  const isTemperature = value <= WARMEST_SERVED_C && value >= COLDEST_C;
  if (!isBareLabel(label, isTemperature)) return null;
  const format = cell.format ?? "";
  const beside = unitBeside(sheet, { row, column });
  if (unitFromFormat(format) !== null || namesUnit(format) || /[dmyh"]/i.test(format)) return null;
  if (unitFromWord(beside) !== null || namesUnit(beside) || COUNTED_OF.test(beside)) return null;
  // "Scoop 65 g | 65".
  if (numbersSaid.masses(label).includes(value)) return null;
  if (isHeadedInRow(sheet, row, labelColumn)) return null;
  const { top, words } = headingOfSection(sheet, { row, column: labelColumn });
  // "Prices (€ per kg)" over the names once more says it of each; what heads a recipe says nothing of what goes on below.
  const isBelowRecipe = recipes.some((range) => range.bottom >= top && range.top <= row);
  if (!isTemperature && !isBelowRecipe && carriesUnit(words)) return null;
  const place = { row, column };
  if (isTemperature && isHeadedInDegrees(sheet, place, labelColumn)) return null;
  if (!isRowOfInputs(sheet, place, labelColumn) && isInTable(sheet, place, recipes)) return null;
  const range = { top: row, bottom: row, left: column, right: lastInRow(sheet, place) };
  return { sheet, row, column, range, label, value, isTemperature };
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
  // A total above or below the amounts is in their unit.
  const isTotal = ({ sheet, row, column }: UnitlessInput) =>
    blocks.some(
      ({ sheet: home, totalsApart = [] }) =>
        home === sheet && totalsApart.some((one) => one.row === row && one.line === column),
    );
  const hasRecipe = ({ sheet }: UnitlessInput) => blocks.some((block) => block.sheet === sheet);
  const isOfMix = (one: UnitlessInput) =>
    hasRecipe(one) ||
    isReadAs(
      context,
      one,
      () =>
        (_, { shared }) =>
          OUR_FUNCTION.test(shared),
    );
  return bare
    .slice(0, MOST_LOOKED_UP)
    .filter((one) => !isTotal(one))
    .filter((one) => !isPrice(one.label) || namesMoney(one.sheet))
    .filter((one) => (one.isTemperature ? isOfMix(one) : isWorkedWith(context, one)));
}
