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
  let problem: Problem | null = null;
  let partBytes = 0;
  let finished = false;
  const take = (bytes: Uint8Array, final: boolean): void => {
    partBytes += bytes.length;
    archive.inflatedBytes += bytes.length;
    finished ||= final;
    problem ??= tooLarge(archive, entry, partBytes);
    if (problem === null && bytes.length > 0) problem = sink(bytes);
  };
  const { compressed } = entry;
  if (entry.method === 0) {
    take(compressed, true);
    return problem;
  }
  const inflate = new Inflate(take);
  try {
    for (let at = 0; at < compressed.length && problem === null; at += PUSH_BYTES) {
      const end = Math.min(at + PUSH_BYTES, compressed.length);
      inflate.push(compressed.subarray(at, end), end === compressed.length);
    }
  } catch {
    finished = false;
  }
  if (problem !== null || finished) return problem;
  return badInput(`The file is damaged: its part "${entry.name}" cannot be unpacked.`);
}
