import { rules } from "../../src/audit/rules";
import { lastLayouts } from "../corpus/lastLayouts";
import { layouts } from "../corpus/layouts";
import { mutations } from "../corpus/mutations";
import { precisionOf, recallOf, scoreCorpus } from "../corpus/score";
import { heldOut } from "../corpus/heldOut";

const WANTED = 0.95;
const all = [...layouts, ...lastLayouts];
const seeded = rules.map(({ id }) => id);

const development = scoreCorpus({ layouts: all, mutations, count: 24, cleanEach: 1, seed: 1 });
/** Of what was seeded on layouts that nobody looked at, so much at least is found, taken all together. */
const FOUND_UNSEEN = 0.95;

const linesFor = (rule: string): string[] =>
  development.misses.filter((miss) => miss.rule === rule).map(({ line }) => line);

test("every rule is seeded at least twenty times, over more than forty layouts", () => {
  expect(mutations.map(({ rule }) => rule).sort()).toEqual([...seeded].sort());
  const few = [...development.rules].filter(([, { seeded }]) => seeded < 20);
  expect(few).toEqual([]);
  expect(all.length).toBeGreaterThanOrEqual(40);
  expect(heldOut.length).toBeGreaterThanOrEqual(12);
  expect(heldOut.filter((one) => all.includes(one))).toEqual([]);
});

test.each(seeded)("%s finds what is seeded, and nothing else", (rule) => {
  const score = development.rules.get(rule)!;
  const isEnough = precisionOf(score) >= WANTED && recallOf(score) >= WANTED;
  expect(isEnough ? [] : linesFor(rule)).toEqual([]);
});

test("clean books have no error and at most one warning", () => {
  const { clean } = development;
  expect(clean.length).toBe(all.length);
  expect(clean.filter(({ errors, warnings }) => errors > 0 || warnings > 1)).toEqual([]);
});

test("most of what is seeded on layouts held out is found", () => {
  const { rules: scores } = scoreCorpus({
    ...{ layouts: heldOut, mutations, count: 8, cleanEach: 0, seed: 2 },
  });
  const each = [...scores.values()];
  const seededThere = each.reduce((sum, { seeded }) => sum + seeded, 0);
  const found = each.reduce((sum, score) => sum + score.found, 0);
  expect(seededThere).toBeGreaterThan(300);
  expect(found / seededThere).toBeGreaterThan(FOUND_UNSEEN);
});
