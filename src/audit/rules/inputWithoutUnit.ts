import { cellName, columnName } from "../../workbook/address";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledNumbers, type LabelledNumber } from "../labels";
import {
  amountPlace,
  isOneRow,
  type Place,
  type Recipe,
  type RecipeBlock,
} from "../recipes/recipeBlock";
import { headerRole } from "../recipes/headings/headerRole";
import { looksNumeric, textAt } from "../recipes/cells";
import { isMass, massIn, unitFromFormat, unitFromWord, unitText } from "../recipes/amounts/unit";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { bareConstants } from "../solutions/bareConstants";
import { isHeadedInDegrees } from "../amounts/isHeadedInDegrees";
import { saysDegrees } from "../amounts/saysDegrees";
import { saysMass } from "../amounts/saysMass";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";
import { unitlessInputs } from "../amounts/unitlessInputs";

const identity = { id: "input-without-unit", severity: "note" } as const;

/** A formula that takes a cell over and does nothing with it. */
const TAKEN = /^\s*\$?[A-Z]{1,3}\$?\d+\s*$/i;
/** A row's label stands at most so far left of its amounts. */
const REACH_LEFT = 4;

/** Where a row of amounts says that it is one: "Amount", "Menge"; null where nothing does. */
function labelBefore({ sheet, names, range }: RecipeBlock, { line }: Recipe): Place | null {
  const from = names[0]?.column ?? 0;
  const near = Array.from({ length: REACH_LEFT }, (_, at) => from - 1 - at);
  const column = [...near, range.left].find(
    (at) => at >= 0 && headerRole(textAt(sheet, line, at)) === "amount",
  );
  return column === undefined ? null : { row: line, column };
}

/** Whether a formula reads a cell in another row whose label says a mass: so much per 100 g, times "Bucket (g)". */
const isTimesMass = (sheet: WorkbookSheet, place: Place): boolean =>
  rangesReadHere(sheet, place).some(
    ({ top, bottom, left, right }) =>
      top !== place.row &&
      top === bottom &&
      left === right &&
      massIn(textAt(sheet, top, left - 1)) !== null,
  );

/** A heading stands at most so far above what is taken from below it. */
const REACH_UP = 30;

/** Whether an amount is one that stands below a heading with its unit: "=B3" under "Salt, kg". */
function isTakenFromMass(sheet: WorkbookSheet, { row, column }: Place): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [read] = TAKEN.test(formula) ? rangesReadHere(sheet, { row, column }) : [];
  if (read === undefined) return false;
  let above = read.top - 1;
  while (above > read.top - REACH_UP && looksNumeric(sheet, above, read.left)) above -= 1;
  return massIn(textAt(sheet, above, read.left)) !== null;
}

/** Amounts for which neither header nor cell, format, total or the sheet names a unit. */
function amountFindings(block: RecipeBlock): Finding[] {
  const { sheet, names, unitColumn, recipes, layout, range } = block;
  const [recipe] = recipes;
  const [first] = names;
  if (recipe?.unitAssumed !== true || first === undefined || unitColumn !== null) return [];
  const place = amountPlace(block, recipe, first);
  const besides = names.some((name) => {
    const { row, column } = amountPlace(block, recipe, name);
    const cell = sheet.cellAt(row, column);
    const isDown = layout === "down";
    const beside = isDown ? textAt(sheet, row, column + 1) : "";
    // "Pears | g | 2800": cups before grams are what these were made of.
    const before = isDown ? unitFromWord(textAt(sheet, row, column - 1)) : null;
    return (
      typeof cell?.value === "string" ||
      unitFromFormat(cell?.format) !== null ||
      unitFromWord(beside) !== null ||
      (before !== null && isMass(before)) ||
      isTimesMass(sheet, { row, column }) ||
      isTakenFromMass(sheet, { row, column })
    );
  });
  if (besides || saysMass(block.sheet)) return [];
  const across = labelBefore(block, recipe) ?? { row: range.top, column: first.column };
  const where =
    layout === "down" ? { row: block.headerRow ?? place.row, column: recipe.line } : across;
  const what = layout === "down" ? `column ${columnName(recipe.line)}` : "this table";
  const { unit } = recipe;
  return [
    findingAt(identity, sheet, where, {
      message:
        unit === "g"
          ? `No unit is written for the amounts of ${what}; they were taken for grams.`
          : `No unit is written for the amounts of ${what}; they were taken for ${unitText(unit)}, as what is worked out from them.`,
      effect: null,
      fix: 'Write the unit in the header, for example "Amount (g)".',
    }),
  ];
}

/** The masses of a worked example, and the water of a class sheet, labelled without grams or kilograms. */
function massFindings(block: RecipeBlock): Finding[] {
  const { sheet, names } = block;
  const apart = names.filter(({ amountAt, unit }) => amountAt !== undefined && unit === undefined);
  if (apart.length === 0 || saysMass(block.sheet)) return [];
  return apart.flatMap(({ row, column, amountAt }) => {
    const place = amountAt ?? { row, column };
    const format = unitFromFormat(sheet.cellAt(place.row, place.column)?.format);
    const value = sheet.cellAt(place.row, place.column)?.value;
    // What stands in the row itself has its heading.
    const isInRow = isOneRow(block) && place.row === row;
    if (format !== null || typeof value !== "number" || isInRow) return [];
    return findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)}, "${textAt(sheet, isOneRow(block) ? place.row : row, column)}", is ${value} without a unit: grams are assumed.`,
      effect: null,
      fix: "Write g or kg beside it or in its label.",
    });
  });
}

type Labelled = Pick<LabelledNumber, "sheet" | "row" | "column" | "label" | "value">;

function inDegrees({ sheet, row, column, label, value }: Labelled, range?: CellRange): Finding {
  return findingAt(identity, sheet, range ?? { row, column }, {
    message: `${cellName(row, column)}, "${label}", is ${value} without a unit: °C is assumed.`,
    effect: null,
    fix: "Write °C or °F beside it or in its label.",
  });
}

function temperatureFindings({ workbook, blocks }: AuditContext): Finding[] {
  if (blocks.length === 0) return [];
  return labelledNumbers(workbook, ["temperature"]).flatMap((number) => {
    const { sheet, row, column, labelColumn, label, beside } = number;
    const format = sheet.cellAt(row, column)?.format ?? "";
    const above = textAt(sheet, row - 1, column);
    const isSaid = [label, beside, format, above].some(saysDegrees);
    return isSaid || isHeadedInDegrees(sheet, number, labelColumn) ? [] : inDegrees(number);
  });
}

function constantFindings(context: AuditContext): Finding[] {
  return bareConstants(context).map(({ sheet, row, column, label, value }) => {
    const place = { row, column };
    return findingAt(identity, sheet, place, {
      message: `${cellName(row, column)}, "${label}", is ${value} without a unit: K·kg/mol is assumed.`,
      effect: null,
      fix: "Write K·kg/mol beside it or in its label.",
    });
  });
}

function inputFindings(context: AuditContext): Finding[] {
  return unitlessInputs(context).map((input) => {
    const { sheet, row, column, range, label, value } = input;
    if (input.isTemperature) return inDegrees(input, range);
    return findingAt(identity, sheet, range, {
      message: `${cellName(row, column)}, "${label}", is ${value} without a unit, and formulas work with it.`,
      effect: null,
      fix: "Write its unit beside it or in its label.",
    });
  });
}

export const inputWithoutUnit: Rule = {
  ...identity,
  title: "An input has no unit",
  find: (context) => [
    ...context.blocks.flatMap(amountFindings),
    ...toldOnce(context.blocks.flatMap(massFindings)),
    ...temperatureFindings(context),
    ...toldOnce(constantFindings(context)),
    ...inputFindings(context),
  ],
};
