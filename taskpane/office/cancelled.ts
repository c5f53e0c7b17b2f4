/** Thrown where someone asked for an end. */
export class Cancelled extends Error {}

/** Ends the work when that was asked for. */
export function goOnUnless(signal: AbortSignal | undefined): void {
  if (signal?.aborted === true) throw new Cancelled("Cancelled.");
}
