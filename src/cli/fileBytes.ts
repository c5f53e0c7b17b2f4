import { readFile, stat } from "node:fs/promises";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { fileSizeProblem } from "../workbook/xlsx/limits";

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "it is a folder",
  EACCES: "reading it is not allowed",
};

/** The bytes of a file of at most the size that is read; a Problem in one sentence otherwise. */
export async function fileBytes(file: string): Promise<Result<Uint8Array>> {
  try {
    const found = await stat(file);
    // A device has no end to read to.
    if (!found.isFile() && !found.isDirectory())
      return badInput(`${file} cannot be read: it is not a file.`);
    return fileSizeProblem(found.size) ?? (await readFile(file));
  } catch (mishap) {
    const code = (mishap as NodeJS.ErrnoException).code ?? "unknown";
    return badInput(`${file} cannot be read: ${REASONS[code] ?? code}.`);
  }
}
