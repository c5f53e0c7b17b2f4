import { readFile, stat } from "node:fs/promises";
import path from "node:path";
import { auditWorkbook } from "../audit/auditWorkbook";
import { terminalReport } from "../audit/terminalReport";
import { badInput, isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { readWorkbook } from "../workbook/readWorkbook";
import { fileSizeProblem } from "../workbook/xlsx/limits";

const USAGE = "Usage: npm run -s audit -- book.xlsx [--json]";
const CLEAN = 0;
const FINDINGS = 1;
const UNREADABLE = 2;

async function bytesOf(file: string): Promise<Result<Uint8Array>> {
  try {
    const found = await stat(file);
    // A device has no end to read to.
    if (!found.isFile() && !found.isDirectory())
      return badInput(`${file} cannot be read: it is not a file.`);
    return fileSizeProblem(found.size) ?? (await readFile(file));
  } catch (mishap) {
    const code = (mishap as NodeJS.ErrnoException).code ?? "unknown";
    const reasons: Readonly<Record<string, string>> = {
      ENOENT: "there is no such file",
      EISDIR: "it is a folder",
      EACCES: "reading it is not allowed",
    };
    return badInput(`${file} cannot be read: ${reasons[code] ?? code}.`);
  }
}

/** Prints a report on standard output and answers with the exit code; the workbook is only read. */
async function audit(args: readonly string[]): Promise<number> {
  const files = args.filter((arg) => !arg.startsWith("--"));
  const unknown = args.find((arg) => arg.startsWith("--") && arg !== "--json");
  const [file] = files;
  if (file === undefined || files.length > 1 || unknown !== undefined) {
    process.stderr.write(
      `${unknown === undefined ? "" : `There is no option ${unknown}. `}${USAGE}\n`,
    );
    return UNREADABLE;
  }
  const bytes = await bytesOf(file);
  const workbook = isProblem(bytes) ? bytes : await readWorkbook(bytes);
  if (isProblem(workbook)) {
    process.stderr.write(`${workbook.message}\n`);
    return UNREADABLE;
  }
  const report = auditWorkbook(workbook);
  const text = args.includes("--json")
    ? JSON.stringify(report, null, 2)
    : terminalReport(path.basename(file), report);
  process.stdout.write(`${text}\n`);
  return report.summary.errors + report.summary.warnings > 0 ? FINDINGS : CLEAN;
}

// A reader that closes early (head) is no mishap.
process.stdout.on("error", () => {
  process.exitCode = FINDINGS;
});

void audit(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (mishap: unknown) => {
    const what = mishap instanceof Error ? mishap.message : String(mishap);
    process.stderr.write(
      `The audit itself failed on this workbook (${what.split("\n")[0] ?? ""}).\n`,
    );
    process.exitCode = UNREADABLE;
  },
);
