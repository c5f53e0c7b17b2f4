/**
 * Reads over 500 kinds of broken files one after the other, in one process as the audit's reader does, and prints
 * how many end in one sentence, the longest time and that process's peak memory; then hands one file of each
 * family to the command itself and checks that it ends with 2. Ends with 1 when one of them is accepted, takes
 * over 10 s, or the memory goes beyond 600 MB.
 * Run: npx tsx tests/benchmarks/brokenFiles.ts
 */
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { isProblem } from "../../src/foundation/problem";
import { readWorkbook } from "../../src/workbook/readWorkbook";
import { manyBrokenFiles, type BrokenFile } from "../workbook/manyBrokenFiles";

const SENTENCE = /^[^\n]{10,600}\.$/;
const MOST_MS = 10_000;
const MOST_MB = 600;

interface Outcome extends BrokenFile {
  readonly ms: number;
  readonly fault: string | null;
}

/** The sentence that a file ends in, or what it ended in instead. */
function faultOf(message: string | null, ms: number): string | null {
  if (message === null) return "it was accepted";
  if (!SENTENCE.test(message)) return `"${message}" is not one sentence`;
  return ms > MOST_MS ? `${Math.round(ms)} ms` : null;
}

interface Reading {
  readonly times: readonly number[];
  readonly messages: readonly (string | null)[];
  readonly peakMb: number;
}

const fileName = (folder: string, index: number): string => path.join(folder, `${index}.xlsx`);

/** The reading itself, in a process that did not make the files. */
async function readAll(folder: string, count: number): Promise<void> {
  const times: number[] = [];
  const messages: (string | null)[] = [];
  for (let index = 0; index < count; index += 1) {
    const bytes = readFileSync(fileName(folder, index));
    const started = performance.now();
    const answer = await readWorkbook(bytes);
    times.push(performance.now() - started);
    messages.push(isProblem(answer) ? answer.message : null);
  }
  const peakMb = process.resourceUsage().maxRSS / 1024;
  console.log(JSON.stringify({ times, messages, peakMb }));
}

function outcomesIn(folder: string, files: readonly BrokenFile[]) {
  files.forEach(({ bytes }, index) => writeFileSync(fileName(folder, index), bytes()));
  const command = ["--import", "tsx", __filename, folder, String(files.length)];
  const output = execFileSync(process.execPath, command, { encoding: "utf8" });
  const { times, messages, peakMb } = JSON.parse(output) as Reading;
  const outcomes = files.map((file, index): Outcome => {
    const ms = times[index] ?? Infinity;
    return { ...file, ms, fault: faultOf(messages[index] ?? null, ms) };
  });
  return { outcomes, peakMb };
}

/** What the command says to one file of each family; null when it ends with 2 and one sentence. */
function commandFault(file: BrokenFile, folder: string): string | null {
  const name = path.join(folder, "broken.xlsx");
  writeFileSync(name, file.bytes());
  const command = ["--import", "tsx", "src/cli/audit.ts", name];
  const { status, stdout, stderr } = spawnSync(process.execPath, command, { encoding: "utf8" });
  const isGood = status === 2 && stdout === "" && SENTENCE.test(stderr.trimEnd());
  return isGood ? null : `the command ended with ${status ?? "a signal"}: ${stderr}`;
}

function main(): void {
  const folder = mkdtempSync(path.join(tmpdir(), "broken-"));
  const files = manyBrokenFiles();
  const { outcomes, peakMb } = outcomesIn(folder, files);
  const slowest = outcomes.reduce((worst, each) => (each.ms > worst.ms ? each : worst));
  const good = outcomes.filter(({ fault }) => fault === null).length;
  console.log(`${files.length} kinds of broken files, ${good} end in one sentence`);
  console.log(`slowest: ${Math.round(slowest.ms)} ms (${slowest.family}, ${slowest.kind})`);
  console.log(`peak memory of the process that read them all: ${Math.round(peakMb)} MB`);
  const lasts = [...new Map(files.map((file) => [file.family, file])).values()];
  const atCommand = lasts.map((file) => ({ ...file, fault: commandFault(file, folder) }));
  rmSync(folder, { recursive: true });
  const ended = atCommand.filter(({ fault }) => fault === null).length;
  console.log(`of ${lasts.length} at the command, ${ended} end with 2 and one sentence`);
  for (const { family, kind, fault } of [...outcomes, ...atCommand]) {
    if (fault !== null) console.log(`  ${family}, ${kind}: ${fault}`);
  }
  process.exitCode = good + ended < files.length + lasts.length || peakMb > MOST_MB ? 1 : 0;
}

const [, , folder, count] = process.argv;
if (folder === undefined) main();
else void readAll(folder, Number(count));
