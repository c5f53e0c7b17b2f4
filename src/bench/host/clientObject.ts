import { HostError } from "./hostError";
import { loadPaths, type LoadSpec } from "./loadSpec";
import type { RequestContext } from "./requestContext";

/**
 * A stand-in for something in the workbook, as in Excel: it is found, read and changed only at `sync`, and
 * a property can be read only after it was loaded.
 *
 * `Target` is what the stand-in stands for; `find` gives it at `sync`, null when there is no such thing.
 */
export abstract class ClientObject<Target> {
  private target: Target | null | undefined;
  private readonly loaded = new Map<string, unknown>();

  constructor(
    readonly context: RequestContext,
    private readonly find: () => Target | null,
    private readonly missing: string | null, // what to say when there is none; null for an OrNullObject
  ) {
    context.enqueue(() => {
      this.findNow();
    });
  }

  /** The plain properties and how each is read from the grid. */
  protected abstract readers(): Readonly<Record<string, (target: Target) => unknown>>;

  /** The objects that hang on this one, by property name. */
  protected related(): Readonly<Record<string, () => { load: (spec?: LoadSpec) => unknown }>> {
    return {};
  }

  private findNow(): void {
    if (this.target !== undefined) return;
    const target = this.find();
    if (target === null && this.missing !== null) throw new HostError("ItemNotFound", this.missing);
    this.target = target;
  }

  /** At `sync` only: what this stands for. */
  found(): Target {
    this.findNow();
    if (this.target === null || this.target === undefined) {
      throw new HostError("InvalidObjectPath", "The object is a null object and has no contents.");
    }
    return this.target;
  }

  get isNullObject(): boolean {
    if (this.target === undefined) throw this.notLoaded("isNullObject");
    return this.target === null;
  }

  private notLoaded(property: string): HostError {
    return new HostError(
      "PropertyNotLoaded",
      `The property '${property}' is not available. Before reading the property's value, call the load ` +
        `method on the containing object and call "context.sync()" on the associated request context.`,
    );
  }

  // The caller names the type, as the property's reader gives it.
  // eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters
  protected loadedValue<Value>(property: string): Value {
    if (!this.loaded.has(property)) throw this.notLoaded(property);
    return this.loaded.get(property) as Value;
  }

  protected keep(property: string, value: unknown): void {
    this.loaded.set(property, value);
  }

  load(spec?: LoadSpec): this {
    for (const path of loadPaths(spec)) this.loadPath(path);
    return this;
  }

  protected loadPath(path: string): void {
    const [property = "", ...rest] = path.split("/");
    const related = this.related()[property];
    if (related !== undefined) {
      related().load(rest.join("/") || undefined);
      return;
    }
    const readers = this.readers();
    const names = property === "" ? Object.keys(readers) : [property];
    this.context.enqueue(() => {
      this.findNow();
      if (this.target === null || this.target === undefined) return;
      for (const name of names) {
        const read = readers[name];
        if (read === undefined) {
          throw new HostError("InvalidArgument", `There is no property '${name}' to load here.`);
        }
        this.keep(name, read(this.target));
      }
    });
  }

  /** The loaded plain properties, as Excel's toJSON gives them. */
  toJSON(): Record<string, unknown> {
    return Object.fromEntries(this.loaded);
  }
}
