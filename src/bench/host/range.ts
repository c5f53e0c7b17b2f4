import type { CellRange } from "../../workbook/model";
import { quotedSheet } from "../../workbook/quotedSheet";
import { rangeName } from "../../workbook/address";
import type { GridBlock } from "../grid";
import { ClientObject } from "./clientObject";
import { columnsOf, intersection, reshaped, rowsOf, surroundingRegion, type Place } from "./place";
import { formats, hostFormulas, hostValue, inputs, valueType } from "./rangeValues";
import type { Worksheet } from "./worksheet";

const MOST_CELLS_READ = 5_000_000; // beyond it Excel too gives null

type Cells = string | number | boolean;

/** Some cells of one sheet, as Excel.Range. */
export class Range extends ClientObject<Place> {
  private itsWorksheet: Worksheet | undefined;

  private read<T>({ sheet, range }: Place, choose: (block: GridBlock) => T): T | null {
    if (rowsOf(range) * columnsOf(range) > MOST_CELLS_READ) return null;
    return choose(this.context.grid.read(sheet, range));
  }

  /** true or false when all rows (or columns) agree, else null. */
  private hidden({ sheet, range }: Place, of: "row" | "column"): boolean | null {
    const [from, to] = of === "row" ? [range.top, range.bottom] : [range.left, range.right];
    const { isRowHidden, isColumnHidden } = this.context.grid;
    const isHidden = of === "row" ? isRowHidden : isColumnHidden;
    const first = isHidden(sheet, from);
    for (let index = from + 1; index <= to; index += 1) {
      if (isHidden(sheet, index) !== first) return null;
    }
    return first;
  }

  protected override readers(): Readonly<Record<string, (place: Place) => unknown>> {
    return {
      address: ({ sheet, range }) => `${quotedSheet(sheet)}!${rangeName(range)}`,
      rowIndex: ({ range }) => range.top,
      columnIndex: ({ range }) => range.left,
      rowCount: ({ range }) => rowsOf(range),
      columnCount: ({ range }) => columnsOf(range),
      cellCount: ({ range }) => rowsOf(range) * columnsOf(range),
      values: (place) => this.read(place, ({ values }) => values.map((row) => row.map(hostValue))),
      valueTypes: (place) =>
        this.read(place, ({ values }) => values.map((row) => row.map(valueType))),
      formulas: (place) => this.read(place, hostFormulas),
      numberFormat: (place) => this.read(place, (block) => block.formats.map((row) => [...row])),
      text: (place) => this.read(place, ({ texts }) => texts.map((row) => [...row])),
      rowHidden: (place) => this.hidden(place, "row"),
      columnHidden: (place) => this.hidden(place, "column"),
    };
  }

  protected override related() {
    return { worksheet: () => this.worksheet };
  }

  get worksheet(): Worksheet {
    this.itsWorksheet ??= this.context.worksheetOf(() => this.found().sheet);
    return this.itsWorksheet;
  }

  get address(): string {
    return this.loadedValue("address");
  }
  get rowIndex(): number {
    return this.loadedValue("rowIndex");
  }
  get columnIndex(): number {
    return this.loadedValue("columnIndex");
  }
  get rowCount(): number {
    return this.loadedValue("rowCount");
  }
  get columnCount(): number {
    return this.loadedValue("columnCount");
  }
  get cellCount(): number {
    return this.loadedValue("cellCount");
  }
  get valueTypes(): string[][] {
    return this.loadedValue("valueTypes");
  }
  get text(): string[][] {
    return this.loadedValue("text");
  }
  get rowHidden(): boolean | null {
    return this.loadedValue("rowHidden");
  }
  get columnHidden(): boolean | null {
    return this.loadedValue("columnHidden");
  }

  get values(): Cells[][] {
    return this.loadedValue("values");
  }
  set values(given: readonly (readonly (Cells | null)[])[] | Cells) {
    this.keep("values", given);
    this.write(given);
  }

  get formulas(): Cells[][] {
    return this.loadedValue("formulas");
  }
  set formulas(given: readonly (readonly (Cells | null)[])[] | Cells) {
    this.keep("formulas", given);
    this.write(given);
  }

  private write(given: unknown): void {
    this.context.enqueueWrite(() => {
      const { sheet, range } = this.found();
      this.context.grid.write(sheet, range, inputs(given, rowsOf(range), columnsOf(range)));
    });
  }

  get numberFormat(): string[][] {
    return this.loadedValue("numberFormat");
  }
  set numberFormat(given: readonly (readonly string[])[] | string) {
    this.keep("numberFormat", given);
    this.context.enqueueWrite(() => {
      const { sheet, range } = this.found();
      this.context.grid.setFormats(sheet, range, formats(given, rowsOf(range), columnsOf(range)));
    });
  }

  select(): void {
    this.context.enqueue(() => {
      const { sheet, range } = this.found();
      this.context.grid.select(sheet, range);
    });
  }

  private derived(change: (range: CellRange) => Partial<CellRange>): Range {
    return new Range(
      this.context,
      () => {
        const place = this.found();
        return reshaped(place, change(place.range));
      },
      "",
    );
  }

  getCell(row: number, column: number): Range {
    return this.derived(({ top, left }) => ({
      top: top + row,
      bottom: top + row,
      left: left + column,
      right: left + column,
    }));
  }

  getOffsetRange(rowOffset: number, columnOffset: number): Range {
    return this.derived(({ top, left, bottom, right }) => ({
      top: top + rowOffset,
      bottom: bottom + rowOffset,
      left: left + columnOffset,
      right: right + columnOffset,
    }));
  }

  getResizedRange(deltaRows: number, deltaColumns: number): Range {
    return this.derived(({ bottom, right }) => ({
      bottom: bottom + deltaRows,
      right: right + deltaColumns,
    }));
  }

  getAbsoluteResizedRange(rowCount: number, columnCount: number): Range {
    return this.derived(({ top, left }) => ({
      bottom: top + rowCount - 1,
      right: left + columnCount - 1,
    }));
  }

  getSurroundingRegion(): Range {
    return new Range(this.context, () => surroundingRegion(this.context.grid, this.found()), "");
  }

  /** The part of this range that is also in the other, or a null object. */
  getIntersectionOrNullObject(other: Range): Range {
    return new Range(
      this.context,
      () => {
        const [one, two] = [this.found(), other.found()];
        const range = one.sheet === two.sheet ? intersection(one.range, two.range) : null;
        return range === null ? null : { sheet: one.sheet, range };
      },
      null,
    );
  }

  /** The part of this range that lies within the sheet's used cells, or a null object. */
  getUsedRangeOrNullObject(): Range {
    return new Range(
      this.context,
      () => {
        const { sheet, range } = this.found();
        const used = this.context.grid.usedRange(sheet);
        const part = used === null ? null : intersection(used, range);
        return part === null ? null : { sheet, range: part };
      },
      null,
    );
  }
}
