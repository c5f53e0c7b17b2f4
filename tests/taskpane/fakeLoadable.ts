// Office's objects are built on the fly here, so they are of no written type.
/* eslint-disable @typescript-eslint/no-explicit-any */

export class FakeError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

export type Waiting = () => void;

/** What an add-in asks of Excel: "Range.select()", "Range.formulas =", "Range.load values". */
export type Note = (request: string) => void;

/** Methods and properties are noted by the class they belong to in Excel's interface. */
export function loadable<T extends object>(
  queue: Waiting[],
  facts: () => Record<string, unknown>,
  methods: T,
  [kind, note]: readonly [string, Note],
) {
  const loaded: Record<string, unknown> = {};
  const object: Record<string, unknown> = {
    ...methods,
    load: (names: string) => {
      const asked = names.split(",").map((one) => one.split("/").at(-1)!.trim());
      for (const name of asked) note(`${kind}.load ${name}`);
      queue.push(() => {
        const all = facts();
        for (const name of asked) {
          if (!(name in all)) throw new FakeError("InvalidArgument");
          loaded[name] = all[name];
        }
        if ("isNullObject" in all) loaded["isNullObject"] = all["isNullObject"];
      });
    },
  };
  return new Proxy(object, {
    get: (target, key: string) => {
      const own = target[key];
      if (typeof own === "function" && key !== "load") note(`${kind}.${key}()`);
      if (key in target) return own;
      if (key in loaded) return loaded[key];
      if (key === "then") return undefined;
      throw new FakeError("PropertyNotLoaded");
    },
    set: (target, key: string, value) => {
      note(`${kind}.${key} =`);
      const setter = target[`set ${key}`] as ((value: unknown) => void) | undefined;
      if (setter === undefined) return false;
      queue.push(() => setter(value));
      return true;
    },
  }) as unknown as T & Record<string, any>;
}

/** A collection: its items appear at sync, with the asked properties loaded. */
export function fakeCollection(queue: Waiting[], note: Note, kind: string, make: () => any[]) {
  let items: any[] | null = null;
  const own: Record<string, unknown> = {
    load: (names: string) => {
      note(`${kind}.load ${names}`);
      queue.push(() => {
        items = make();
        for (const item of items) item.load(names);
        // What items load is part of the same sync.
      });
    },
  };
  return new Proxy(own, {
    get: (target, key: string) => {
      if (key in target) return target[key];
      if (key === "items") {
        if (items === null) throw new FakeError("PropertyNotLoaded");
        return items;
      }
      return undefined;
    },
  }) as Record<string, any>;
}
