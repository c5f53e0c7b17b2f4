import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { FormulaDataModel, ICalculateFormulaService } from "@univerjs/engine-formula";
import { firstValueFrom } from "rxjs";
import type { WorkbookValue } from "../model";
import { gridSheetId } from "./gridSnapshot";
import type { GridEngine } from "./openEngine";

/** The value a cell has after recalculation; sheet, row and column count from zero. */
export type GridValueAt = (sheet: number, row: number, column: number) => WorkbookValue;

const isError = (value: string): boolean => /^#[A-Z0-9/]+[!?]$|^#N\/A$/.test(value);

function workbookValue(cell: Nullable<ICellData>): WorkbookValue {
  const value = cell?.v ?? null;
  if (cell?.t === CellValueType.BOOLEAN && value !== null) return value === 1 || value === true;
  return typeof value === "string" && isError(value) ? { error: value } : value;
}

/** Calculates every formula of the loaded workbook and puts the answers into its cells. */
export async function recalculateEngine({ injector, book }: GridEngine): Promise<GridValueAt> {
  const service = injector.get(ICalculateFormulaService);
  const model = injector.get(FormulaDataModel);
  const completed = firstValueFrom(service.executionCompleteListener$);
  await service.execute({
    formulaData: model.getFormulaData(),
    arrayFormulaCellData: model.getArrayFormulaCellData(),
    arrayFormulaRange: model.getArrayFormulaRange(),
    forceCalculate: true,
    dirtyRanges: [],
    dirtyNameMap: {},
    dirtyDefinedNameMap: {},
    dirtyUnitFeatureMap: {},
    dirtyUnitOtherFormulaMap: {},
  });
  const { unitData } = await completed;
  for (const [sheetId, matrix] of Object.entries(unitData[book.getUnitId()] ?? {})) {
    const cells = book.getSheetBySheetId(sheetId)?.getCellMatrix();
    matrix.forValue((row, column, cell) => {
      const formula = cells?.getValue(row, column)?.f;
      cells?.setValue(row, column, { ...cell, ...(formula == null ? {} : { f: formula }) });
    });
  }
  return (sheet, row, column) => {
    const id = gridSheetId(sheet);
    // Spilled answers are kept beside the cells, so that the next calculation does not stumble over them.
    const spilled = model.getArrayFormulaCellData()[book.getUnitId()]?.[id]?.[row]?.[column];
    return workbookValue(spilled ?? book.getSheetBySheetId(id)?.getCellRaw(row, column));
  };
}
