import { useEffect, useState } from "preact/hooks";

/** One value that several views look at; whoever follows it is told when it changes. */
export interface Store<Value> {
  readonly now: () => Value;
  readonly set: (next: Value) => void;
  readonly follow: (listener: () => void) => () => void;
}

export function newStore<Value>(first: Value): Store<Value> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    now: () => value,
    set: (next) => {
      value = next;
      for (const listener of listeners) listener();
    },
    follow: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

/** The store's value, as it is at every drawing. */
export function useStore<Value>(store: Store<Value>): Value {
  const [value, setValue] = useState(() => store.now());
  useEffect(() => {
    const look = () => setValue(() => store.now());
    look(); // it may have changed before this view followed it
    return store.follow(look);
  }, [store]);
  return value;
}
