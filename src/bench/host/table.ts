import type { WorkbookTable } from "../../workbook/model";
import { ClientObject } from "./clientObject";
import { Collection } from "./collection";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import type { Worksheet } from "./worksheet";

type SheetTable = WorkbookTable & { readonly sheet: string };

/** A table, as Excel.Table. */
export class Table extends ClientObject<SheetTable> {
  private itsWorksheet: Worksheet | undefined;

  protected override readers(): Readonly<Record<string, (table: SheetTable) => unknown>> {
    return {
      name: ({ name }) => name,
      id: ({ name }) => name,
      showTotals: ({ hasTotals }) => hasTotals,
      showHeaders: () => true,
    };
  }

  protected override related() {
    return { worksheet: () => this.worksheet };
  }

  get name(): string {
    return this.loadedValue("name");
  }
  get id(): string {
    return this.loadedValue("id");
  }
  get showTotals(): boolean {
    return this.loadedValue("showTotals");
  }
  get showHeaders(): boolean {
    return this.loadedValue("showHeaders");
  }

  get worksheet(): Worksheet {
    this.itsWorksheet ??= this.context.worksheetOf(() => this.found().sheet);
    return this.itsWorksheet;
  }

  private part(choose: (table: SheetTable) => SheetTable["range"]): Range {
    return new Range(
      this.context,
      () => {
        const table = this.found();
        return { sheet: table.sheet, range: choose(table) };
      },
      "",
    );
  }

  getRange(): Range {
    return this.part(({ range }) => range);
  }

  getHeaderRowRange(): Range {
    return this.part(({ range }) => ({ ...range, bottom: range.top }));
  }

  getDataBodyRange(): Range {
    return this.part(({ range, hasTotals }) => ({
      ...range,
      top: range.top + 1,
      bottom: hasTotals ? range.bottom - 1 : range.bottom,
    }));
  }
}

/** The tables of the workbook, or of one sheet. */
export class TableCollection extends Collection<SheetTable, Table> {
  constructor(context: RequestContext, sheet?: () => string) {
    super(
      context,
      () => {
        const tables = context.grid.tables();
        return sheet === undefined ? tables : tables.filter((table) => table.sheet === sheet());
      },
      (table) => new Table(context, () => table, null),
    );
  }

  getItem(name: string): Table {
    return new Table(
      this.context,
      this.pick((table) => table.name.toLowerCase() === name.toLowerCase()),
      `There is no table '${name}'.`,
    );
  }

  getItemOrNullObject(name: string): Table {
    return new Table(
      this.context,
      this.pick((table) => table.name.toLowerCase() === name.toLowerCase()),
      null,
    );
  }
}
