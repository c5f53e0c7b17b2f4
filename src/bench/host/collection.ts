import { ClientObject } from "./clientObject";
import { loadPaths, type LoadSpec } from "./loadSpec";
import type { RequestContext } from "./requestContext";

/** A list of objects whose number is known only at `sync`: load "items/name", then read `items`. */
export class Collection<Target, Item extends ClientObject<Target>> extends ClientObject<
  readonly Target[]
> {
  private current: readonly Item[] | null = null;

  constructor(
    context: RequestContext,
    private readonly list: () => readonly Target[],
    private readonly wrap: (target: Target) => Item,
  ) {
    super(context, list, null);
  }

  protected override readers() {
    return { count: () => this.list().length };
  }

  get items(): readonly Item[] {
    return this.current ?? this.loadedValue<readonly Item[]>("items");
  }

  override load(spec?: LoadSpec): this {
    const paths = loadPaths(spec).map((path) => path.replace(/^items\/?/, ""));
    this.context.enqueue(() => {
      this.current = this.list().map(this.wrap);
      // The items' own loads join the end of this batch, while it runs.
      for (const item of this.current) {
        for (const path of paths) if (path !== "count") item.load(path);
      }
      this.keep("count", this.current.length);
    });
    return this;
  }

  /** The number of objects, read through `value` after `sync`. */
  getCount(): { readonly value: number } {
    const result = { value: Number.NaN };
    this.context.enqueue(() => {
      result.value = this.list().length;
    });
    return result;
  }

  /** The object for which `matches` holds, or a null object. */
  protected pick(matches: (target: Target) => boolean): () => Target | null {
    return () => this.list().find(matches) ?? null;
  }
}
