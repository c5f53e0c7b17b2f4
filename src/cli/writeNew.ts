import { writeFile } from "node:fs/promises";
import { badInput, type Problem } from "../foundation/problem";

const REASONS: Readonly<Record<string, string>> = {
  EEXIST: "it exists already; name another file or add --replace",
  ENOENT: "there is no such folder",
  EISDIR: "it is a folder",
  EACCES: "writing there is not allowed",
};

/** Writes a file that is not there yet, or any when replacing was asked for; a Problem otherwise. */
export async function writeNew(
  file: string,
  text: string,
  replace: boolean,
): Promise<Problem | null> {
  try {
    await writeFile(file, text, { flag: replace ? "w" : "wx" });
    return null;
  } catch (mishap) {
    const code = (mishap as NodeJS.ErrnoException).code ?? "unknown";
    return badInput(`${file} is not written: ${REASONS[code] ?? code}.`);
  }
}
