import { contains, referencesOf } from "../../workbook/references";
import { isExplanation } from "../answers/isExplanation";
import { saysLaw } from "../answers/saysLaw";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { labelledNumbers, type LabelledNumber } from "../labels";
import { textAt } from "../recipes/cells";
import { isClassBlock } from "../recipes/classSheet";
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

/** K·kg/mol in a cell of its own; a boiling constant has that unit, too. */
const UNIT = /^\W*(k|°c)[ ·*.]*kg[ ·*.]*(\/ ?mol|mol ?(\^?[-−]1|⁻¹))\W*$/i;
const OF_BOILING = /boil|ebull|sied|\bk_?b\b/i;
/** So many numbers stand between a label and its unit. */
const MOST_BEFORE = 12;

/** The numbers left of the unit of the constant, whatever they are called. */
function cellsBeforeUnit(sheet: WorkbookSheet) {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((unit) => {
      const beside = textAt(sheet, row, unit);
      if (!UNIT.test(beside)) return [];
      const valueAt = (column: number) =>
        column < 0 ? undefined : sheet.cellAt(row, column)?.value;
      let first = unit;
      while (typeof valueAt(first - 1) === "number" && unit - first < MOST_BEFORE) first -= 1;
      const label = textAt(sheet, row, first - 1);
      const around = `${label} ${textAt(sheet, row, first - 2)}`;
      if (OF_BOILING.test(around) || OTHER_SOLVENT.test(around)) return [];
      return Array.from({ length: unit - first }, (_, at) => first + at).map((column) => ({
        ...{ sheet, row, column, label, beside },
        value: Number(valueAt(column)),
      }));
    }),
  );
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

/** The rows in which a solution of a table stands, but for those that name another liquid. */
function rowsOfSolutions({ blocks }: AuditContext, sheet: WorkbookSheet): ReadonlySet<number> {
  const { columnsByRow } = sheetTexts(sheet);
  const solutions = blocks.filter((block) => block.sheet === sheet && isClassBlock(block));
  const rows = solutions.flatMap(({ names: [name] }) => {
    if (name === undefined) return [];
    const isOther = [...(columnsByRow.get(name.row) ?? [])].some(
      (column) => column !== name.column && OTHER_SOLVENT.test(textAt(sheet, name.row, column)),
    );
    return isOther ? [] : name.row;
  });
  return new Set(rows);
}

/** A constant in every row of a table of solutions, below its heading. */
function cellsOfRows(context: AuditContext, sheet: WorkbookSheet) {
  const rows = rowsOfSolutions(context, sheet);
  const texts = rows.size > 1 ? [...sheetTexts(sheet).columnsByRow] : [];
  return texts.flatMap(([header, columns]) =>
    columns.flatMap((column) => {
      const label = textAt(sheet, header, column);
      if (label.length > 60 || headerRole(label) !== "cryoscopic constant") return [];
      return numbersBelow(sheet, { row: header, column })
        .filter(({ row }) => rows.has(row))
        .map((found) => ({ ...found, sheet, label, beside: "" }));
    }),
  );
}

/** The numbers right below a heading, down to the first cell without one. */
function numbersBelow(sheet: WorkbookSheet, { row: header, column }: Place) {
  const found: (Place & { readonly value: number })[] = [];
  for (let row = header + 1; ; row += 1) {
    const value = sheet.cellAt(row, column)?.value;
    if (typeof value !== "number") return found;
    found.push({ row, column, value });
  }
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

/** Whether a number is worked out from a constant and something else: "Kf · b · i" beside a depression. */
function isProduct({ sheet, row, column }: Place & { sheet: WorkbookSheet }, isOne: IsConstant) {
  const read = referencesOf(sheet.cellAt(row, column)?.formula ?? "");
  return read.length > 1 && read.some(({ sheet: on, range }) => isOne(on ?? sheet.name, range));
}

type IsConstant = (
  sheet: string,
  place: { readonly top: number; readonly left: number },
) => boolean;

const keyOf = (sheet: string, row: number, column: number): string => `${sheet}!${row},${column}`;

/** All cells that are labelled as the constant of water, or named so. */
export function constantCells(context: AuditContext): ConstantCell[] {
  const { sheets } = context.workbook;
  const labelled = labelledNumbers(context.workbook, ["cryoscopic constant"]).filter(
    ({ sheet, row, labelColumn }) => !isExplanation(sheet, { row, column: labelColumn }),
  );
  const again = labelled.flatMap((first) => cellsOfExamples(context, first));
  const below = sheets.flatMap((sheet) => [
    ...cellsBeforeUnit(sheet),
    ...cellsBelow(sheet),
    ...cellsOfRows(context, sheet),
  ]);
  const found = [...labelled, ...again, ...below, ...namedCells(context)];
  const keys = new Set(found.map(({ sheet, row, column }) => keyOf(sheet.name, row, column)));
  const isOne: IsConstant = (name, { top, left }) => keys.has(keyOf(name, top, left));
  const seen = new Set<string>();
  // A constant may have lost its size, not its sign: what is typed below 0 beside it is a temperature.
  const mayBe = ({ sheet, row, column, value }: (typeof found)[number]) =>
    value > 0 || sheet.cellAt(row, column)?.formula !== undefined;
  const isTyped = (one: (typeof found)[number]) => !isProduct(one, isOne) && !saysLaw(one.label);
  return found
    .filter(mayBe)
    .filter(isTyped)
    .flatMap(({ sheet, row, column, ...said }) => {
      const { label, beside, value } = said;
      const key = keyOf(sheet.name, row, column);
      if (seen.has(key)) return [];
      seen.add(key);
      const words = `${label} ${beside}`;
      if (OTHER_SOLVENT.test(words) || isOtherSolvent(sheet)) return [];
      const unit = /°\s?f|fahrenheit/i.test(words) ? "°F" : "K";
      return [{ sheet, row, column, unit, value: PER_GRAM.test(words) ? value / 1000 : value }];
    });
}
