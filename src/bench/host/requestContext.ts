import type { Grid } from "../grid";
import { HostError } from "./hostError";
import { Workbook } from "./workbook";
import { Worksheet } from "./worksheet";

/**
 * One batch of operations, as Excel runs them: nothing happens until `sync`, which carries them out in
 * order; the first that fails ends the batch, and what was done before it stays done.
 */
export class RequestContext {
  readonly workbook: Workbook;
  private queue: (() => void)[] = [];
  private hasWritten = false;

  constructor(readonly grid: Grid) {
    this.workbook = new Workbook(this);
  }

  /** The sheet that cells or a table lie on; here, so that those need not know what a sheet can do. */
  worksheetOf(find: () => string): Worksheet {
    return new Worksheet(this, find, null);
  }

  enqueue(operation: () => void): void {
    this.queue.push(operation);
  }

  enqueueWrite(operation: () => void): void {
    this.enqueue(() => {
      this.hasWritten = true;
      operation();
    });
  }

  /** An operation may add others, which run in the same batch. */
  private carryOut(): void {
    for (let next = this.queue.shift(); next !== undefined; next = this.queue.shift()) next();
  }

  async sync<T>(passThrough?: T): Promise<T | undefined> {
    await Promise.resolve(); // like Excel, never within the caller's own turn
    try {
      this.grid.asOneStep(() => this.carryOut()); // as Excel makes one step to undo of a sync
    } catch (error) {
      this.queue = [];
      if (error instanceof HostError) throw error;
      throw new HostError(
        "GeneralException",
        error instanceof Error ? error.message : String(error),
      );
    } finally {
      if (this.hasWritten) await this.grid.settled();
      this.hasWritten = false;
    }
    return passThrough;
  }
}

/** Excel.run: a fresh batch for the callback, and a last `sync` after it. */
export async function run<T>(
  grid: Grid,
  batch: (context: RequestContext) => Promise<T>,
): Promise<T> {
  const context = new RequestContext(grid);
  const result = await batch(context);
  await context.sync();
  return result;
}
