import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const root = path.join(__dirname, "..", "..");
const folder = mkdtempSync(path.join(tmpdir(), "worker-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** What inWorker answers for a thread of this text, run as the command line runs it. */
function answerTo(thread: string, limits: object): unknown {
  const entry = path.join(folder, "thread.ts");
  writeFileSync(entry, `import { parentPort } from "node:worker_threads";\n${thread}\n`);
  const inWorker = path.join(root, "src", "cli", "inWorker");
  const relative = path.relative(path.dirname(inWorker), entry);
  const main = path.join(folder, "main.ts");
  writeFileSync(
    main,
    `import { inWorker } from ${JSON.stringify(inWorker)};
    void inWorker(${JSON.stringify(relative)}, null, ${JSON.stringify(limits)}).then(
      (answer) => console.log(JSON.stringify(answer)));`,
  );
  const command = ["--import", "tsx", main];
  return JSON.parse(execFileSync(process.execPath, command, { cwd: root, encoding: "utf8" }));
}

test("the thread's answer comes back", () => {
  expect(answerTo("parentPort?.postMessage({ sum: 2 as number });", {})).toEqual({ sum: 2 });
});

test("a thread that takes too much memory ends in one sentence", () => {
  const greedy = "const kept: object[] = []; for (;;) kept.push(new Array(1000).fill({}));";
  expect(answerTo(greedy, { megabytes: 60 })).toMatchObject({
    message: "The workbook needs more than 60 MB of memory to be read.",
  });
});

test("a thread that never ends is given up, in one sentence", () => {
  expect(answerTo("for (;;);", { seconds: 2 })).toMatchObject({
    message: "The workbook takes more than 2 seconds and was given up.",
  });
});
