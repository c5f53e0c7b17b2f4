import type { BlockValue } from "../host";
import { hasTaken } from "./cellContent";
import { HalfWritten } from "./halfWritten";

interface Attempt {
  /** Where, as it is told to the user. */
  readonly place: string;
  readonly to: string | number;
}

/**
 * A writing failed: the cells are read once more to tell what stands in them. Returns when all was written
 * in spite of it; throws the host's own fault when nothing was.
 */
export async function stateAfterFault(
  attempts: readonly Attempt[],
  readAgain: () => Promise<readonly (BlockValue | undefined)[]>,
  fault: unknown,
): Promise<void> {
  const places = attempts.map(({ place }) => place);
  let now: readonly (BlockValue | undefined)[];
  try {
    now = await readAgain();
  } catch {
    throw new HalfWritten({ kind: "unknown", places }, fault);
  }
  const written = places.filter((_, at) => hasTaken(now[at], attempts[at]?.to ?? ""));
  if (written.length === 0) throw fault;
  const missing = places.filter((place) => !written.includes(place));
  if (missing.length > 0) throw new HalfWritten({ kind: "cells", written, missing }, fault);
}
