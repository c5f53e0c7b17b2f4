import { contains, referencesOf } from "../../workbook/references";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { labelledNumbers, type LabelledNumber } from "../labels";
import { textAt } from "../recipes/cells";
import { formKind } from "../recipes/forms/formLabels";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";

/** A cell that holds the cryoscopic constant of water, K·kg/mol. */
export interface ConstantCell extends Place {
  readonly sheet: WorkbookSheet;
  readonly value: number;
  readonly unit: "K" | "°F";
}

const OTHER_SOLVENT =
  /benz|camphor|campher|acetic|essigs|cyclohex|phenol|naphth|ethanol|solvent b|chloroform/i;

const PER_GRAM = /(?<![\wk])g ?\/ ?mol|1000 ?g/i;

/** Cells that carry the name Kf, whatever stands beside them. */
function namedCells({ workbook }: AuditContext) {
  return workbook.names.flatMap(({ name, refersTo }) => {
    const [reference] = /^k_?f$/i.test(name) ? referencesOf(refersTo) : [];
    const sheet = workbook.sheets.find((one) => one.name === reference?.sheet);
    if (reference === undefined || sheet === undefined) return [];
    const { top: row, left: column } = reference.range;
    const value = sheet.cellAt(row, column)?.value;
    return typeof value === "number"
      ? [{ sheet, row, column, label: name, value, beside: "" }]
      : [];
  });
}

/** A constant below its label, in a row of such labels. */
function cellsBelow(sheet: WorkbookSheet) {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      const label = textAt(sheet, row, column);
      const value = sheet.cellAt(row + 1, column)?.value;
      const isLabel = () => headerRole(label) === "cryoscopic constant" && label.length <= 60;
      const isOne =
        typeof value === "number" &&
        sheet.cellAt(row, column + 1)?.value !== value &&
        typeof sheet.cellAt(row, column + 1)?.value !== "number" &&
        typeof sheet.cellAt(row + 2, column)?.value !== "number";
      return isOne && isLabel() ? [{ sheet, row: row + 1, column, label, value, beside: "" }] : [];
    }),
  );
}

/** The same constant once more for each of the examples that stand beside each other. */
function cellsOfExamples({ blocks }: AuditContext, first: LabelledNumber): LabelledNumber[] {
  const { sheet, row, column } = first;
  return blocks.flatMap(({ sheet: other, answers, range, recipes }) => {
    const line = recipes[0]?.line ?? column;
    const value = sheet.cellAt(row, line)?.value;
    const isOther = answers !== undefined && other === sheet && line > column;
    const isInside = contains(range, row, column) && contains(range, row, line);
    return isOther && isInside && typeof value === "number"
      ? [{ ...first, column: line, value }]
      : [];
  });
}

/** Whether a sheet dissolves its substances in another liquid. */
const isOtherSolvent = (sheet: WorkbookSheet): boolean =>
  [...sheetTexts(sheet).columnsByRow].some(([row, columns]) =>
    columns.some(
      (column) =>
        OTHER_SOLVENT.test(textAt(sheet, row, column + 1)) &&
        formKind(textAt(sheet, row, column)) === "solvent",
    ),
  );

/** All cells that are labelled as the constant of water, or named so. */
export function constantCells(context: AuditContext): ConstantCell[] {
  const { sheets } = context.workbook;
  const labelled = labelledNumbers(context.workbook, ["cryoscopic constant"]);
  const again = labelled.flatMap((first) => cellsOfExamples(context, first));
  const found = [...labelled, ...again, ...sheets.flatMap(cellsBelow), ...namedCells(context)];
  const seen = new Set<string>();
  return found.flatMap(({ sheet, row, column, label, beside, value }) => {
    const key = `${sheet.name}!${row},${column}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const words = `${label} ${beside}`;
    if (OTHER_SOLVENT.test(words) || isOtherSolvent(sheet)) return [];
    const unit = /°\s?f|fahrenheit/i.test(words) ? "°F" : "K";
    return [{ sheet, row, column, unit, value: PER_GRAM.test(words) ? value / 1000 : value }];
  });
}
