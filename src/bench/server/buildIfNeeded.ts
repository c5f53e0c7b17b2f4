import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import path from "node:path";

const ROOT = path.resolve(__dirname, "..", "..", "..");
const SOURCES = ["src", "taskpane", "webpack.config.js", "package-lock.json", "tsconfig.json"];
// The build leaves these marks; their time is when it began.
const BUILT_MARKS = [path.join(ROOT, "dist", ".built"), path.join(ROOT, "dist", "bench", ".built")];

/** Where the build lies. */
export const BUILD_DIRECTORY = path.join(ROOT, "dist");

async function newestChangeMs(place: string): Promise<number> {
  const { mtimeMs } = await stat(place);
  const entries = await readdir(place, { recursive: true, withFileTypes: true }).catch(() => []);
  const times = entries
    .filter((entry) => entry.isFile())
    .map(async (entry) => (await stat(path.join(entry.parentPath, entry.name))).mtimeMs);
  return Math.max(mtimeMs, ...(await Promise.all(times)));
}

async function isUpToDate(): Promise<boolean> {
  if (!BUILT_MARKS.every((mark) => existsSync(mark))) return false;
  const built = await Promise.all(BUILT_MARKS.map(async (mark) => (await stat(mark)).mtimeMs));
  const changes = await Promise.all(
    SOURCES.map((source) => newestChangeMs(path.join(ROOT, source))),
  );
  return Math.max(...changes) <= Math.min(...built);
}

/** Runs the project's own build in a process of its own, which gives its memory back when it is done. */
function runBuild(): Promise<void> {
  const webpack = require.resolve("webpack/bin/webpack.js");
  return new Promise((resolve, reject) => {
    const build = spawn(process.execPath, [webpack, "--config", "webpack.config.js"], {
      cwd: ROOT,
      stdio: ["ignore", 2, 2], // what it says is not this program's answer
    });
    build.once("error", reject);
    build.once("exit", (code) => {
      if (code === 0) resolve();
      else reject(new Error("The build failed; what is wrong stands above."));
    });
  });
}

/** Builds when something is missing or older than its sources; says whether it had to. */
export async function buildIfNeeded(): Promise<boolean> {
  if (await isUpToDate()) return false;
  await runBuild();
  return true;
}
