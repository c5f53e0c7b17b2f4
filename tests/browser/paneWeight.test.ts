import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { BUILD_DIRECTORY, buildIfNeeded } from "../../src/bench/server/buildIfNeeded";

/** The pane's own code, both languages and all that is loaded later, compressed by gzip. */
const MOST_BYTES = 120_000;

/** Files of other rooms: what the functions need, the audit, and the German of both. */
const OTHER_ROOMS = ["core.js", "functions.js", "audit.js", "germanSentences.js"];

const scripts = () => readdirSync(BUILD_DIRECTORY).filter((name) => name.endsWith(".js"));
const text = (name: string) => readFileSync(path.join(BUILD_DIRECTORY, name));

beforeAll(buildIfNeeded, 300_000);

test("the pane's own code stays within its limit", () => {
  const own = scripts().filter((name) => !OTHER_ROOMS.includes(name));
  expect(own).toEqual(expect.arrayContaining(["pane.js", "english.js", "german.js"]));
  const bytes = own.reduce((sum, name) => sum + gzipSync(text(name), { level: 9 }).length, 0);
  expect(bytes).toBeLessThan(MOST_BYTES);
});

test.each(OTHER_ROOMS)("nothing of the pane hides in %s", (name) => {
  const { sources } = JSON.parse(text(`${name}.map`).toString()) as { sources: readonly string[] };
  expect(sources.length).toBeGreaterThan(0);
  expect(sources.filter((source) => /taskpane|preact|d3-|yalps/.test(source))).toEqual([]);
});
