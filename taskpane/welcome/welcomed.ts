import type { Shared } from "../shared";

const KEY = "rimeline.welcomed";

/** Whether the first lines were seen on this device. A host may forbid to remember: then they come again. */
export function wasWelcomed(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** The first lines have served, or are not wanted: from now on, and on this device. */
export function rememberWelcomed({ welcomed }: Pick<Shared, "welcomed">): void {
  if (welcomed.now()) return;
  welcomed.set(true);
  try {
    localStorage.setItem(KEY, "1");
  } catch {
    // Then for this sitting only.
  }
}
