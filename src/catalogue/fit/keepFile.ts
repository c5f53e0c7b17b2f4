import { readFileSync, writeFileSync } from "node:fs";

/** Writes a generated file; with `--check` on the command line only says whether the file is what it would write. */
export function keepFile(path: string, text: string): void {
  if (!process.argv.includes("--check")) {
    writeFileSync(path, text);
  } else if (readFileSync(path, "utf8") !== text) {
    console.error(`${path} is not what the fit writes.`);
    process.exitCode = 1;
  }
}
