import { spawn } from "node:child_process";
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

const jest = (name: string, ...projects: string[]): Step => ({
  title: `tests: ${projects.join(", ")}`,
  command: [
    bin("jest"),
    ...[
      "-c",
      ".jest.config.cjs",
      "--json",
      `--outputFile=${path.join(resultsFolder, `${name}.json`)}`,
    ],
    ...["--selectProjects", ...projects],
    name === "browser" ? "--runInBand" : "--maxWorkers=100%",
  ],
});

interface Counts {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
}

function countsOf(names: readonly string[]): Counts {
  const all = names.map(
    (name) => JSON.parse(readFileSync(path.join(resultsFolder, `${name}.json`), "utf8")) as Counts,
  );
  const sum = (key: keyof Counts) => all.reduce((total, counts) => total + counts[key], 0);
  return {
    numPassedTests: sum("numPassedTests"),
    numFailedTests: sum("numFailedTests"),
    numPendingTests: sum("numPendingTests"),
  };
}

async function main(): Promise<void> {
  mkdirSync(resultsFolder, { recursive: true });
  const checks = (await Promise.all([inTurn([TYPES, LINT]), inTurn([LAYOUT, BUILD])])).flat();
  const suites = ["unit"];
  checks.push(await run(jest("unit", "node", "pane")));
  const chromium = findChromium();
  if (chromium !== null) {
    suites.push("browser");
    checks.push(await run(jest("browser", "browser")));
  } else {
    console.log(
      "- left out: the browser tests (tests/browser), because no Chromium was found; set CHROME_PATH to one.",
    );
    if (process.env["REQUIRE_BROWSER"] === "1") checks.push(false);
  }
  const { numPassedTests, numFailedTests, numPendingTests } = countsOf(suites);
  console.log(`${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
  process.exitCode = checks.every(Boolean) ? 0 : 1;
}

void main();
