import type { DefinedName } from "../../workbook/model";
import { parseA1, splitSheet } from "../address";
import { ClientObject } from "./clientObject";
import { Collection } from "./collection";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";

/** A name given to cells or to a formula, as Excel.NamedItem. */
class NamedItem extends ClientObject<DefinedName> {
  protected override readers(): Readonly<Record<string, (name: DefinedName) => unknown>> {
    return {
      name: ({ name }) => name,
      formula: ({ refersTo }) => `=${refersTo}`,
      value: ({ refersTo }) => `=${refersTo}`,
      scope: ({ sheet }) => (sheet === null ? "Workbook" : "Worksheet"),
      visible: () => true,
    };
  }

  get name(): string {
    return this.loadedValue("name");
  }
  get formula(): string {
    return this.loadedValue("formula");
  }
  get scope(): string {
    return this.loadedValue("scope");
  }

  /** The cells it names, or a null object when it names none. */
  getRangeOrNullObject(): Range {
    return new Range(
      this.context,
      () => {
        const { sheet, address } = splitSheet(this.found().refersTo);
        const range = parseA1(address);
        return sheet === null || range === null ? null : { sheet, range };
      },
      null,
    );
  }
}

/** The names that the whole workbook knows, or those of one sheet alone, as Excel.NamedItemCollection. */
export class NamedItemCollection extends Collection<DefinedName, NamedItem> {
  constructor(context: RequestContext, scope: () => string | null) {
    super(
      context,
      () => context.grid.names().filter(({ sheet }) => sheet === scope()),
      (name) => new NamedItem(context, () => name, null),
    );
  }

  getItemOrNullObject(name: string): NamedItem {
    return new NamedItem(
      this.context,
      this.pick((each) => each.name.toLowerCase() === name.toLowerCase()),
      null,
    );
  }
}
