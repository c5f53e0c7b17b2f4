import type { DefinedName } from "../../workbook/model";
import { parseA1, splitSheet } from "../address";
import { ClientObject } from "./clientObject";
import { Collection } from "./collection";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import { SelectionChanged } from "./selectionChanged";
import { TableCollection } from "./table";
import { WorksheetCollection } from "./worksheets";

/** A name given to cells or to a formula, as Excel.NamedItem. */
export class NamedItem extends ClientObject<DefinedName> {
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

class NamedItemCollection extends Collection<DefinedName, NamedItem> {
  constructor(context: RequestContext) {
    super(
      context,
      () => context.grid.names(),
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

/** As Excel.Application: the grid always calculates by itself. */
class Application extends ClientObject<"Automatic"> {
  constructor(context: RequestContext) {
    super(context, () => "Automatic", null);
  }

  protected override readers() {
    return { calculationMode: () => "Automatic" };
  }

  get calculationMode(): string {
    return this.loadedValue("calculationMode");
  }
}

/** The open workbook, as Excel.Workbook. Its parts are made when asked for: making one queues an operation. */
export class Workbook {
  constructor(private readonly context: RequestContext) {}

  get application(): Application {
    return new Application(this.context);
  }

  get worksheets(): WorksheetCollection {
    return new WorksheetCollection(this.context);
  }

  get tables(): TableCollection {
    return new TableCollection(this.context);
  }

  get names(): NamedItemCollection {
    return new NamedItemCollection(this.context);
  }

  get onSelectionChanged(): SelectionChanged {
    return new SelectionChanged(this.context);
  }

  getSelectedRange(): Range {
    return new Range(this.context, () => this.context.grid.selection(), null);
  }

  getActiveCell(): Range {
    return this.getSelectedRange().getCell(0, 0);
  }
}
