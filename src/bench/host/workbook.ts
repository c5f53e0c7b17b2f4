import { ClientObject } from "./clientObject";
import { NamedItemCollection } from "./names";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import { SelectionChanged } from "./selectionChanged";
import { TableCollection } from "./table";
import { WorksheetCollection } from "./worksheets";

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
    return new NamedItemCollection(this.context, () => null);
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
