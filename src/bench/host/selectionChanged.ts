import type { RequestContext } from "./requestContext";

type Handler = (event: { readonly workbook: unknown }) => Promise<unknown>;

/** What `add` gives back, to remove the handler with. */
interface HandlerResult {
  readonly context: RequestContext;
  readonly remove: () => void;
}

/** The event of a moved selection: handlers come and go at `sync`, as in Excel. */
export class SelectionChanged {
  constructor(private readonly context: RequestContext) {}

  add(handler: Handler): HandlerResult {
    const { context } = this;
    let stop: (() => void) | null = null;
    context.enqueue(() => {
      stop = context.grid.onSelectionChanged(() => void handler({ workbook: context.workbook }));
    });
    return { context, remove: () => context.enqueue(() => stop?.()) };
  }
}
