import { rules } from "../../src/audit/rules";
import { layouts } from "../corpus/layouts";
import { mutations } from "../corpus/mutations";
import { reserveLayouts } from "../corpus/reserve";
import { precisionOf, recallOf, scoreCorpus } from "../corpus/score";

const WANTED = 0.95;
const seeded = rules.map(({ id }) => id);

const development = scoreCorpus({ layouts, mutations, count: 24, cleanEach: 3, seed: 1 });
const reserve = scoreCorpus({
  layouts: reserveLayouts,
  mutations: [],
  count: 0,
  cleanEach: 3,
  seed: 2,
});

const linesFor = (rule: string): string[] =>
  development.misses.filter((miss) => miss.rule === rule).map(({ line }) => line);

test("every rule is seeded at least twenty times, over more than forty layouts", () => {
  expect(mutations.map(({ rule }) => rule).sort()).toEqual([...seeded].sort());
  const few = [...development.rules].filter(([, { seeded }]) => seeded < 20);
  expect(few).toEqual([]);
  expect(layouts.length).toBeGreaterThanOrEqual(40);
  expect(reserveLayouts.length).toBeGreaterThanOrEqual(8);
});

test.each(seeded)("%s finds what is seeded, and nothing else", (rule) => {
  const score = development.rules.get(rule)!;
  const isEnough = precisionOf(score) >= WANTED && recallOf(score) >= WANTED;
  expect(isEnough ? [] : linesFor(rule)).toEqual([]);
});

test("clean books have no error and at most one warning", () => {
  const clean = [...development.clean, ...reserve.clean];
  expect(clean.length).toBeGreaterThan(200);
  expect(clean.filter(({ errors, warnings }) => errors > 0 || warnings > 1)).toEqual([]);
});
