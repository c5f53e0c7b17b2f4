import { Inflate } from "fflate";
import { badInput, type Problem } from "../../foundation/problem";
import type { Archive, ArchiveEntry } from "./archive";
import { LIMITS, megabytes } from "./limits";

/** So small that even at the format's 1032 : 1 one push inflates to about 8 MB before it is counted. */
const PUSH_BYTES = 8192;

/** Takes a piece of the inflated part; a Problem stops the reading. */
export type ByteSink = (bytes: Uint8Array) => Problem | null;

function tooLarge(archive: Archive, entry: ArchiveEntry, partBytes: number): Problem | null {
  if (archive.inflatedBytes > LIMITS.inflatedBytes) {
    return badInput(
      `The file unpacks to more than ${megabytes(LIMITS.inflatedBytes)}, the most that is read.`,
    );
  }
  const ratio = partBytes / Math.max(1, entry.compressed.length);
  return partBytes > LIMITS.ratioFromBytes && ratio > LIMITS.ratio
    ? badInput(`The part "${entry.name}" unpacks to over ${LIMITS.ratio} times its size; not read.`)
    : null;
}

/** Inflates one part piece by piece, counting what really comes out; declared sizes are not believed. */
export function inflatePart(archive: Archive, entry: ArchiveEntry, sink: ByteSink): Problem | null {
  const state: { problem: Problem | null; finished: boolean } = { problem: null, finished: false };
  let partBytes = 0;
  const take = (bytes: Uint8Array, final: boolean): void => {
    partBytes += bytes.length;
    archive.inflatedBytes += bytes.length;
    state.finished ||= final;
    state.problem ??= tooLarge(archive, entry, partBytes);
    if (state.problem === null && bytes.length > 0) state.problem = sink(bytes);
  };
  const { compressed } = entry;
  if (entry.method === 0) {
    take(compressed, true);
    return state.problem;
  }
  const inflate = new Inflate(take);
  try {
    for (let at = 0; at < compressed.length && state.problem === null; at += PUSH_BYTES) {
      const end = Math.min(at + PUSH_BYTES, compressed.length);
      inflate.push(compressed.subarray(at, end), end === compressed.length);
    }
  } catch {
    state.finished = false;
  }
  if (state.problem !== null || state.finished) return state.problem;
  return badInput(`The file is damaged: its part "${entry.name}" cannot be unpacked.`);
}
