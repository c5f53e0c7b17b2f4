import type { GridSheet } from "../grid";
import { Collection } from "./collection";
import { HostError } from "./hostError";
import type { RequestContext } from "./requestContext";
import { Worksheet } from "./worksheet";

/** The sheets of the workbook, as Excel.WorksheetCollection. */
export class WorksheetCollection extends Collection<string, Worksheet> {
  constructor(context: RequestContext) {
    super(
      context,
      () => context.grid.sheets().map((sheet: GridSheet) => sheet.name),
      (name) => new Worksheet(context, () => name, null),
    );
  }

  private named(name: string): () => string | null {
    return this.pick((each) => each.toLowerCase() === name.toLowerCase());
  }

  getItem(name: string): Worksheet {
    return new Worksheet(this.context, this.named(name), `There is no sheet '${name}'.`);
  }

  getItemOrNullObject(name: string): Worksheet {
    return new Worksheet(this.context, this.named(name), null);
  }

  getActiveWorksheet(): Worksheet {
    return new Worksheet(this.context, () => this.context.grid.activeSheet(), null);
  }

  /** A new sheet at the end; it is not shown until `activate`. */
  add(name?: string): Worksheet {
    return new Worksheet(
      this.context,
      () => {
        if (name !== undefined && this.named(name)() !== null) {
          throw new HostError("ItemAlreadyExists", `There already is a sheet '${name}'.`);
        }
        if (name !== undefined && (name === "" || name.length > 31 || /[\\/?*[\]:]/.test(name))) {
          throw new HostError("InvalidArgument", `A sheet cannot be called '${name}'.`);
        }
        return this.context.grid.addSheet(name ?? null);
      },
      "",
    );
  }
}
