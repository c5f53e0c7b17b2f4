import { rules } from "../../src/audit/rules";
import { layouts } from "../corpus/layouts";
import { mutations } from "../corpus/mutations";
import { reserveLayouts } from "../corpus/reserve";
import { precisionOf, recallOf, scoreCorpus } from "../corpus/score";

const WANTED = 0.95;
/** Rules that find less than is wanted of what is seeded, and how much they find. This list may only shrink. */
const FINDS_LESS: Readonly<Record<string, number>> = {
  "formula-overwritten": 0.91,
  "temperature-units-mixed": 0.91,
  "water-not-counted": 0.91,
};

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
  const wanted = FINDS_LESS[rule] ?? WANTED;
  const isEnough = precisionOf(score) >= WANTED && recallOf(score) >= wanted;
  expect(isEnough ? [] : linesFor(rule)).toEqual([]);
  expect([rule, rule in FINDS_LESS && recallOf(score) >= WANTED]).toEqual([rule, false]);
});

test("clean books have no error and at most one warning", () => {
  const clean = [...development.clean, ...reserve.clean];
  expect(clean.length).toBeGreaterThan(200);
  expect(clean.filter(({ errors, warnings }) => errors > 0 || warnings > 1)).toEqual([]);
});
