import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IdentifierDecorator,
  type IRange,
  IUndoRedoService,
  type Nullable,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorkbook, FWorksheet } from "@univerjs/sheets/facade";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-table/facade";
import type { CellRange, DefinedName, WorkbookTable } from "../../workbook/model";
import type { BookValue } from "../book";
import type { Grid, GridBlock, GridInput } from "../grid";
import type { OneStepHistory } from "./undoHistory";

const CALCULATION_STARTS_WITHIN_MS = 150; // the grid gathers changes for 100 ms before it calculates
const CALCULATION_ENDS_WITHIN_MS = 120_000;
const SELECTION_COMMAND = "sheet.operation.set-selections";
const ERROR_TEXT =
  /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|CYCLE!|CONNECT!|ERROR!)$/;

const toRange = ({ top, left, bottom, right }: CellRange): IRange => ({
  startRow: top,
  startColumn: left,
  endRow: bottom,
  endColumn: right,
});

const fromRange = (range: IRange): CellRange => ({
  top: range.startRow,
  left: range.startColumn,
  bottom: range.endRow,
  right: range.endColumn,
});

function valueOf(cell: Nullable<ICellData>): BookValue {
  const value = cell?.p?.body?.dataStream.replace(/\r?\n$/, "") ?? cell?.v ?? null;
  if (value === null || value === "") return cell?.f ? "" : null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(value);
  // A text that was a number for a while keeps the number and is a text by its type.
  if (cell?.t === CellValueType.STRING && typeof value === "number") return String(value);
  if (typeof value === "string" && ERROR_TEXT.test(value)) return { error: value };
  return value;
}

function inputCell(input: Exclude<GridInput, null>): ICellData {
  const clear = { f: null, si: null, p: null };
  if (typeof input === "number") return { ...clear, v: input, t: CellValueType.NUMBER };
  if (typeof input === "boolean") return { ...clear, v: input ? 1 : 0, t: CellValueType.BOOLEAN };
  if (input === "") return { ...clear, v: null, t: null };
  if (input.startsWith("=")) return { ...clear, v: null, f: input };
  return { ...clear, v: input, t: CellValueType.STRING };
}

type Rows<T> = Record<number, Record<number, T> | undefined>;

/** The open workbook of Univer seen through the bench's own, smaller `Grid`. */
export class UniverGrid implements Grid {
  constructor(private readonly api: FUniver) {}

  private book(): FWorkbook {
    const book = this.api.getActiveWorkbook();
    if (book === null) throw new Error("No workbook is open.");
    return book;
  }

  private sheet(name: string): FWorksheet {
    const sheet = this.book().getSheetByName(name);
    if (sheet === null) throw new Error(`There is no sheet ${name}.`);
    return sheet;
  }

  private service<T>(identifier: IdentifierDecorator<T> | (new (...args: never[]) => T)): T {
    // The facade keeps its injector to itself; a sheet hands it out.
    const [sheet] = this.book().getSheets();
    if (sheet === undefined) throw new Error("The workbook has no sheet.");
    return sheet.getInject().get(identifier as never);
  }

  private spilled(sheet: FWorksheet): Rows<ICellData | null> {
    const all = this.service(FormulaDataModel).getArrayFormulaCellData();
    return (all[this.book().getId()]?.[sheet.getSheetId()] ?? {}) as Rows<ICellData | null>;
  }

  readonly sheets = () =>
    this.book()
      .getSheets()
      .map((sheet) => ({
        name: sheet.getSheetName(),
        hidden: sheet.isSheetHidden(),
        rowCount: sheet.getMaxRows(),
        columnCount: sheet.getMaxColumns(),
      }));

  readonly activeSheet = (): string => this.book().getActiveSheet().getSheetName();

  readonly activate = (sheet: string): void => {
    this.book().setActiveSheet(this.sheet(sheet));
  };

  readonly addSheet = (name: string | null): string => {
    const active = this.book().getActiveSheet();
    const added = this.book().insertSheet(name ?? undefined);
    this.book().setActiveSheet(active); // adding a sheet through the API does not show it
    return added.getSheetName();
  };

  readonly usedRange = (name: string): CellRange | null => {
    const sheet = this.sheet(name);
    const found = { top: Infinity, left: Infinity, bottom: -1, right: -1 };
    const include = (row: number, column: number): void => {
      found.top = Math.min(found.top, row);
      found.left = Math.min(found.left, column);
      found.bottom = Math.max(found.bottom, row);
      found.right = Math.max(found.right, column);
    };
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (cell?.f || cell?.si || valueOf(cell) !== null) include(row, column);
        return undefined; // false would end the walk
      });
    for (const [row, cells] of Object.entries(this.spilled(sheet))) {
      for (const column of Object.keys(cells ?? {})) include(Number(row), Number(column));
    }
    return found.bottom < 0 ? null : found;
  };

  readonly read = (name: string, range: CellRange): GridBlock => {
    this.makeRoom(name, range);
    const sheet = this.sheet(name);
    const area = sheet.getRange(toRange(range));
    const spilled = this.spilled(sheet);
    // Each is drawn from the grid only when it is asked for: all four take longer than a page should wait.
    return {
      get values() {
        return area
          .getCellDataGrid()
          .map((row, r) =>
            row.map((cell, c) =>
              cell?.v === undefined || cell.v === null
                ? valueOf(spilled[range.top + r]?.[range.left + c] ?? cell)
                : valueOf(cell),
            ),
          );
      },
      get formulas() {
        return area.getFormulas();
      },
      get formats() {
        return area.getNumberFormats().map((row) => row.map((format) => format || "General"));
      },
      get texts() {
        return area.getDisplayValues();
      },
    };
  };

  /** The grid's sheets have an edge that a file's have not. */
  private makeRoom(name: string, { bottom, right }: CellRange): void {
    const sheet = this.sheet(name);
    if (bottom >= sheet.getMaxRows()) sheet.setRowCount(bottom + 1);
    if (right >= sheet.getMaxColumns()) sheet.setColumnCount(right + 1);
  }

  readonly write = (
    name: string,
    range: CellRange,
    inputs: readonly (readonly GridInput[])[],
  ): void => {
    this.makeRoom(name, range);
    const cells: Rows<ICellData> = {};
    inputs.forEach((row, r) => {
      const written: Record<number, ICellData> = {};
      row.forEach((input, c) => {
        if (input !== null) written[range.left + c] = inputCell(input);
      });
      cells[range.top + r] = written;
    });
    this.sheet(name)
      .getRange(toRange(range))
      .setValues(cells as never);
  };

  readonly setFormats = (
    name: string,
    range: CellRange,
    formats: readonly (readonly string[])[],
  ): void => {
    this.makeRoom(name, range);
    const patterns = formats.map((row) =>
      row.map((format) => (format === "General" ? "" : format)),
    );
    this.sheet(name).getRange(toRange(range)).setNumberFormats(patterns);
  };

  readonly selection = () => {
    const range = this.book().getActiveRange();
    const sheet = this.activeSheet();
    return range === null
      ? { sheet, range: { top: 0, left: 0, bottom: 0, right: 0 } }
      : { sheet, range: fromRange(range.getRange()) };
  };

  readonly select = (name: string, range: CellRange): void => {
    const sheet = this.sheet(name);
    if (name !== this.activeSheet()) this.book().setActiveSheet(sheet);
    sheet.getRange(toRange(range)).activate();
    // Undefined, against its type, while a sheet that was just turned to has not been drawn yet.
    const seen = sheet.getVisibleRange() as IRange | null | undefined;
    const isSeen =
      seen != null &&
      range.top >= seen.startRow &&
      range.top < seen.endRow &&
      range.left >= seen.startColumn &&
      range.left < seen.endColumn;
    if (!isSeen) sheet.scrollToCell(Math.max(0, range.top - 2), Math.max(0, range.left - 1));
  };

  readonly isRowHidden = (name: string, row: number): boolean =>
    this.sheet(name).getSheet().getRowManager().getRow(row)?.hd === BooleanNumber.TRUE;

  readonly isColumnHidden = (name: string, column: number): boolean =>
    this.sheet(name).getSheet().getColumnManager().getColumn(column)?.hd === BooleanNumber.TRUE;

  readonly spills = (name: string): ReadonlyMap<string, CellRange> => {
    const found = new Map<string, CellRange>();
    const ranges = this.service(FormulaDataModel).getArrayFormulaRange();
    const rows = ranges[this.book().getId()]?.[this.sheet(name).getSheetId()] ?? {};
    for (const [row, cells] of Object.entries(rows as Rows<IRange>)) {
      for (const [column, range] of Object.entries(cells ?? {})) {
        found.set(`${row},${column}`, fromRange(range));
      }
    }
    return found;
  };

  readonly merged = (name: string): readonly CellRange[] =>
    this.sheet(name)
      .getMergedRanges()
      .map((area) => fromRange(area.getRange()));

  readonly tables = (): readonly (WorkbookTable & { readonly sheet: string })[] =>
    this.book()
      .getTableList()
      .map(({ name, subUnitId, range, columns }) => ({
        name,
        sheet: this.book().getSheetBySheetId(subUnitId)?.getSheetName() ?? "",
        range: fromRange(range),
        columns: columns.map((column) => column.displayName),
        hasTotals: false, // the grid keeps no totals row
      }));

  readonly names = (): readonly DefinedName[] =>
    this.book()
      .getDefinedNames()
      .map((defined) => {
        const local = defined.getLocalSheetId();
        const sheet = local === undefined ? null : this.book().getSheetBySheetId(local);
        return {
          name: defined.getName(),
          refersTo: defined.getFormulaOrRefString().replace(/^=/, ""),
          sheet: sheet?.getSheetName() ?? null,
        };
      });

  readonly onSelectionChanged = (callback: () => void): (() => void) => {
    // The facade's own selection events stay silent for moves by mouse and keyboard: this is what makes them.
    const moved = this.api.addEvent(this.api.Event.CommandExecuted, ({ id }) => {
      if (id === SELECTION_COMMAND) callback();
    });
    const turned = this.api.addEvent(this.api.Event.ActiveSheetChanged, callback);
    return () => {
      moved.dispose();
      turned.dispose();
    };
  };

  readonly asOneStep = (work: () => void): void => {
    // createGrid has put it there.
    const history = this.service<IUndoRedoService>(IUndoRedoService) as OneStepHistory;
    history.asOneStep(work);
  };

  readonly settled = (): Promise<void> =>
    this.service(FormulaCalculationSessionService).waitForLatestApplied(
      CALCULATION_ENDS_WITHIN_MS,
      CALCULATION_STARTS_WITHIN_MS,
    );
}
