import { HostFault } from "./hostFault";

/** The rows of a loaded range. Excel gives null in their place when a block is more than it hands over. */
export function loadedRows<T>(rows: unknown): T[][] {
  if (rows === null || rows === undefined) {
    throw new HostFault("NothingHandedOver", "The spreadsheet handed over no contents.");
  }
  return rows as T[][];
}
