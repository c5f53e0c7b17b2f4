import { badInput, type Problem } from "../../foundation/problem";

const startsWith = (bytes: Uint8Array, ...signature: readonly number[]) =>
  signature.every((byte, index) => bytes[index] === byte);

/** Whether a text stands in the bytes in UTF-16, as the directory of a compound file writes it. */
function holdsWideText(bytes: Uint8Array, text: string): boolean {
  const wide = Array.from(text).flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = text.charCodeAt(0);
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wide.every((byte, i) => bytes[at + i] === byte)) {
      return true;
    }
  }
  return false;
}

/** Why bytes cannot be a workbook's zip container, judged by how they begin; null when they may be one. */
export function containerProblem(bytes: Uint8Array): Problem | null {
  if (bytes.length === 0) return badInput("The file is empty.");
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
    return holdsWideText(bytes, "EncryptedPackage")
      ? badInput("The file is protected by a password; save a copy without one.")
      : badInput("The file is an old .xls workbook, whatever its name; save it as .xlsx.");
  }
  if (!startsWith(bytes, 0x50, 0x4b)) {
    return badInput("The file is not an .xlsx workbook: it does not begin as one.");
  }
  return bytes.length < 22
    ? badInput("The file is cut short: it ends before its first part.")
    : null;
}
