import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { findChromium } from "./browser/findChromium";

// The one command that checks everything: types, lint, layout, build, then all tests.

const root = path.join(__dirname, "..");
const resultsFolder = path.join(root, ".cache", "results");

interface Step {
  readonly title: string;
  readonly command: readonly string[];
}

const bin = (name: string) => path.join(root, "node_modules", ".bin", name);

function run({ title, command }: Step): Promise<boolean> {
  const started = Date.now();
  console.log(`- ${title}`);
  const [file = "", ...args] = command;
  const child = spawn(file, args, {
    cwd: root,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  return new Promise((resolve) => {
    child.on("error", () => {
      resolve(false);
    });
    child.on("close", (code) => {
      const seconds = ((Date.now() - started) / 1000).toFixed(0);
      console.log(`- ${title}: ${code === 0 ? "ok" : "FAILED"} (${seconds} s)`);
      resolve(code === 0);
    });
  });
}

/** Steps of which each waits for the one before. */
async function inTurn(steps: readonly Step[]): Promise<boolean[]> {
  const passed: boolean[] = [];
  for (const step of steps) passed.push(await run(step));
  return passed;
}

const TYPES: Step = { title: "types", command: [bin("tsc")] };
const LINT: Step = {
  title: "lint",
  command: [
    ...[bin("eslint"), "-c", ".eslint.config.mjs", "--cache", "--cache-location", ".cache/eslint"],
    ...["src", "taskpane", "tests"],
  ],
};
const LAYOUT: Step = {
  title: "layout",
  command: [bin("prettier"), "--check", "--log-level=warn", "."],
};
const BUILD: Step = { title: "build", command: [bin("webpack"), "--config", "webpack.config.js"] };

/** Short runs of much code: what runs briefly is not worth being compiled a second time, which takes half of a core. */
const RARELY_COMPILED = "--interrupt-budget=600000";
/** What V8 calls its options changes: where Node refuses this one, the tests only take longer. */
const isKnown = spawnSync(process.execPath, [RARELY_COMPILED, "--version"]).status === 0;
const NODE_OPTIONS = isKnown ? [RARELY_COMPILED] : [];
const JEST = path.join(root, "node_modules", "jest", "bin", "jest.js");

const results = path.join(resultsFolder, "tests.json");

/** Unit and browser tests in one run, so that no core waits for the end of the others. */
const tests = (projects: readonly string[]): Step => ({
  title: `tests: ${projects.join(", ")}`,
  command: [
    ...[process.execPath, ...NODE_OPTIONS, JEST, "-c", ".jest.config.cjs"],
    ...["--json", `--outputFile=${results}`, "--maxWorkers=100%"],
    ...["--selectProjects", ...projects],
  ],
});

interface Counts {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
}

async function main(): Promise<void> {
  mkdirSync(resultsFolder, { recursive: true });
  const hasBrowser = findChromium() !== null;
  if (!hasBrowser) {
    console.log(
      "- left out: the browser tests (tests/browser), because no Chromium was found; set CHROME_PATH to one.",
    );
  }
  // The browser tests open what was built.
  const built = [LAYOUT, BUILD, tests(["node", "pane", ...(hasBrowser ? ["browser"] : [])])];
  const checks = (await Promise.all([inTurn([TYPES, LINT]), inTurn(built)])).flat();
  if (!hasBrowser && process.env["REQUIRE_BROWSER"] === "1") checks.push(false);
  const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(
    readFileSync(results, "utf8"),
  ) as Counts;
  console.log(`${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
  process.exitCode = checks.every(Boolean) ? 0 : 1;
}

void main();
