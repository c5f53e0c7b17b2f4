import { MAX_COLUMNS, MAX_ROWS } from "../../workbook/address";
import { parseA1, splitSheet } from "../address";
import { ClientObject } from "./clientObject";
import { HostError } from "./hostError";
import { NamedItemCollection } from "./names";
import { intersection } from "./place";
import { Range } from "./range";
import { TableCollection } from "./table";

/** A sheet by its name, as Excel.Worksheet. */
export class Worksheet extends ClientObject<string> {
  private description(name: string) {
    return this.context.grid.sheets().find((sheet) => sheet.name === name);
  }

  protected override readers(): Readonly<Record<string, (name: string) => unknown>> {
    return {
      name: (name) => name,
      id: (name) => name,
      position: (name) => this.context.grid.sheets().findIndex((sheet) => sheet.name === name),
      visibility: (name) => (this.description(name)?.hidden ? "Hidden" : "Visible"),
    };
  }

  get name(): string {
    return this.loadedValue("name");
  }
  get id(): string {
    return this.loadedValue("id");
  }
  get position(): number {
    return this.loadedValue("position");
  }
  get visibility(): string {
    return this.loadedValue("visibility");
  }

  get tables(): TableCollection {
    return new TableCollection(this.context, () => this.found());
  }

  get names(): NamedItemCollection {
    return new NamedItemCollection(this.context, () => this.found());
  }

  activate(): void {
    this.context.enqueue(() => this.context.grid.activate(this.found()));
  }

  /** The cells of an address, or the whole sheet as far as the grid has cells. */
  getRange(address?: string): Range {
    return new Range(
      this.context,
      () => {
        const sheet = this.found();
        const { rowCount = 1, columnCount = 1 } = this.description(sheet) ?? {};
        const whole = { top: 0, left: 0, bottom: rowCount - 1, right: columnCount - 1 };
        const asked = address === undefined ? whole : parseA1(splitSheet(address).address);
        // Whole rows and columns end where the grid ends.
        const isWhole = asked?.bottom === MAX_ROWS - 1 || asked?.right === MAX_COLUMNS - 1;
        const range = asked !== null && isWhole ? intersection(asked, whole) : asked;
        if (range === null) {
          throw new HostError("InvalidArgument", `'${address ?? ""}' is not an address.`);
        }
        return { sheet, range };
      },
      "",
    );
  }

  getCell(row: number, column: number): Range {
    return this.getRangeByIndexes(row, column, 1, 1);
  }

  getRangeByIndexes(row: number, column: number, rowCount: number, columnCount: number): Range {
    return new Range(
      this.context,
      () => {
        if (row < 0 || column < 0 || rowCount < 1 || columnCount < 1) {
          throw new HostError("InvalidArgument", "The range would have no cells.");
        }
        return {
          sheet: this.found(),
          range: {
            top: row,
            left: column,
            bottom: row + rowCount - 1,
            right: column + columnCount - 1,
          },
        };
      },
      "",
    );
  }

  private used(): { sheet: string; range: NonNullable<ReturnType<typeof parseA1>> } | null {
    const sheet = this.found();
    const range = this.context.grid.usedRange(sheet);
    return range === null ? null : { sheet, range };
  }

  /** The cells with content; A1 when there is none. Formats do not count, as with Excel's valuesOnly. */
  getUsedRange(): Range {
    const first = { top: 0, left: 0, bottom: 0, right: 0 };
    return new Range(this.context, () => this.used() ?? { sheet: this.found(), range: first }, "");
  }

  getUsedRangeOrNullObject(): Range {
    return new Range(this.context, () => this.used(), null);
  }
}
