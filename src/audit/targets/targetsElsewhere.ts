import { findTarget } from "../../catalogue/findTarget";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { recipeOfColumn } from "../answers/recipeOfColumn";
import { recipeOfNeighbours } from "../answers/recipeOfNeighbours";
import type { RecipeInBlock } from "../answers/recipeInBlock";
import type { AuditContext } from "../context";
import { isLedger } from "../recipes/isLedger";
import { isBlank, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { headsTarget } from "./headsTarget";

/** A cell below a heading or right of a label of targets, in a row or column whose formulas read a recipe or whose words name it. */
export interface TargetElsewhere extends RecipeInBlock, Place {
  readonly sheet: WorkbookSheet;
}

/** The longest table of recipes, one a row. */
const MOST_ROWS = 60;
/** The widest, one a column. */
const MOST_COLUMNS = 20;

/** The words below a heading, down to the first row without any. */
function wordsBelow(sheet: WorkbookSheet, { row, column }: Place): Place[] {
  const { columnsByRow } = sheetTexts(sheet);
  const places: Place[] = [];
  for (let at = row + 1; at <= row + MOST_ROWS && columnsByRow.has(at); at += 1) {
    if (textAt(sheet, at, column) !== "") places.push({ row: at, column });
  }
  return places;
}

/** The words right of a label, up to the first cell without any. */
function wordsRight(sheet: WorkbookSheet, { row, column }: Place): Place[] {
  const places: Place[] = [];
  for (let at = column + 1; at <= column + MOST_COLUMNS && textAt(sheet, row, at) !== ""; at += 1)
    places.push({ row, column: at });
  return places;
}

const LONGEST_NAME = 40;

/** The cells that name a target in columns or rows in which one is named with its temperature, whatever heads them. */
const namesOfTargets = ({ sheets }: Workbook) =>
  sheets.flatMap((sheet) => {
    const named = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns
        .filter((column) => {
          const text = textAt(sheet, row, column);
          return text.length <= LONGEST_NAME && findTarget(text) !== undefined;
        })
        .map((column) => ({ sheet, at: { row, column } })),
    );
    const cold = named.filter(({ at }) => /\d/.test(textAt(sheet, at.row, at.column)));
    const columns = new Set(cold.map(({ at }) => at.column));
    const rows = new Set(cold.map(({ at }) => at.row));
    return named.filter(({ at }) => columns.has(at.column) || rows.has(at.row));
  });

/** The column in which answers stand that say a target one column nearer to their labels; null where the target's own has any. */
function columnOfAnswers(sheet: WorkbookSheet, { row, column }: Place): number | null {
  const around = [
    [row - 1, column],
    [row + 1, column],
    [row, column + 1],
  ] as const;
  return around.every((at) => isBlank(sheet, ...at)) ? column + 1 : null;
}

const known = new WeakMap<AuditContext, readonly TargetElsewhere[]>();

/** What a table says that recipes shall be: each row, or column, is about the recipe that its formulas read or its words name. */
export function targetsElsewhere(context: AuditContext): readonly TargetElsewhere[] {
  const before = known.get(context);
  if (before !== undefined) return before;
  const { workbook, blocks } = context;
  const recipes = blocks
    .filter((block) => !isLedger(block))
    .flatMap((block) => block.recipes.map((recipe) => ({ block, recipe })));
  const headings = workbook.sheets.flatMap((sheet) =>
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns
        .filter((column) => headsTarget(textAt(sheet, row, column)))
        .map((column) => ({ sheet, place: { row, column } })),
    ),
  );
  const said = headings.flatMap(({ sheet, place }) =>
    [...wordsBelow(sheet, place), ...wordsRight(sheet, place)].map((at) => ({ sheet, at })),
  );
  const isSaid = new Set(said.map(({ sheet, at }) => `${sheet.name}!${at.row},${at.column}`));
  const named = recipes.length === 0 ? [] : namesOfTargets(workbook);
  const unsaid = named.filter(
    ({ sheet, at }) => !isSaid.has(`${sheet.name}!${at.row},${at.column}`),
  );
  const found = [...said, ...unsaid].flatMap(({ sheet, at }): TargetElsewhere[] => {
    // Beside a list it would be about that.
    const isApart = blocks.every((block) => block.sheet !== sheet);
    const column = isApart ? columnOfAnswers(sheet, at) : null;
    const read =
      recipeOfNeighbours(workbook, recipes, sheet, at) ??
      (column === null ? null : recipeOfNeighbours(workbook, recipes, sheet, { ...at, column })) ??
      (isApart ? recipeOfColumn(workbook, recipes, sheet, at) : null);
    return read === null ? [] : [{ sheet, ...at, ...read }];
  });
  known.set(context, found);
  return found;
}
