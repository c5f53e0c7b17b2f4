import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { containerProblem } from "./containerProblem";
import { fileSizeProblem, LIMITS } from "./limits";

/** One compressed part of a workbook file. */
export interface ArchiveEntry {
  readonly name: string;
  readonly compressed: Uint8Array;
  /** 0 stored, 8 deflated (APPNOTE.TXT 4.4.5). */
  readonly method: 0 | 8;
}

/** The parts of a workbook file by lower-case name, and what has been inflated of them so far. */
export interface Archive {
  readonly entries: ReadonlyMap<string, ArchiveEntry>;
  inflatedBytes: number;
}

const END_SIGNATURE = 0x06054b50;
const ENTRY_SIGNATURE = 0x02014b50;
const LOCAL_SIGNATURE = 0x04034b50;
const CUT_SHORT = badInput("The file is damaged or cut short: its list of parts cannot be read.");

/** Place of the end record, searched backwards past an archive comment of at most 65,535 bytes. */
function endRecord(view: DataView): number {
  const last = view.byteLength - 22;
  for (let at = last; at >= Math.max(0, last - 65535); at -= 1) {
    if (view.getUint32(at, true) === END_SIGNATURE) return at;
  }
  return -1;
}

function nameProblem(name: string, seen: ReadonlyMap<string, unknown>): string | null {
  if (name.split("/").includes("..") || name.startsWith("/") || name.includes("\0")) {
    return `The file holds a part named "${name}", which points outside the file.`;
  }
  return seen.has(name.toLowerCase()) ? `The file holds two parts named "${name}".` : null;
}

/** The bytes of one entry, found by its local header; names and sizes there are not believed. */
function entryData(bytes: Uint8Array, view: DataView, header: number): Uint8Array | null {
  const size = view.getUint32(header + 20, true);
  const local = view.getUint32(header + 42, true);
  if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL_SIGNATURE) return null;
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  return start + size > bytes.length ? null : bytes.subarray(start, start + size);
}

function readEntry(
  bytes: Uint8Array,
  view: DataView,
  at: number,
  name: string,
): Result<ArchiveEntry> {
  const method = view.getUint16(at + 10, true);
  if ((view.getUint16(at + 8, true) & 1) === 1) {
    return badInput("The file is protected by a password; save a copy without one.");
  }
  if (method !== 0 && method !== 8) {
    return badInput(`The part "${name}" is packed by method ${method}; only deflate is read.`);
  }
  const compressed = entryData(bytes, view, at);
  return compressed === null ? CUT_SHORT : { name, compressed, method };
}

function readEntries(
  bytes: Uint8Array,
  view: DataView,
  end: number,
): Result<Map<string, ArchiveEntry>> {
  const count = view.getUint16(end + 10, true);
  if (count > LIMITS.entries) {
    return badInput(`The file holds ${count} parts; at most ${LIMITS.entries} are read.`);
  }
  const entries = new Map<string, ArchiveEntry>();
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== ENTRY_SIGNATURE) return CUT_SHORT;
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 46, nameEnd)).replaceAll("\\", "/");
    const wrong = nameProblem(name, entries);
    if (wrong !== null) return badInput(wrong);
    const entry = readEntry(bytes, view, at, name);
    if (isProblem(entry)) return entry;
    entries.set(name.toLowerCase(), entry);
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** Opens the zip container of a workbook file and lists its parts; nothing is inflated yet. */
export function openArchive(bytes: Uint8Array): Result<Archive> {
  const tooLarge = fileSizeProblem(bytes.length);
  if (tooLarge !== null) return tooLarge;
  const wrongKind = containerProblem(bytes);
  if (wrongKind !== null) return wrongKind;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endRecord(view);
  if (end < 0) return CUT_SHORT;
  const entries = readEntries(bytes, view, end);
  return isProblem(entries) ? entries : { entries, inflatedBytes: 0 };
}
