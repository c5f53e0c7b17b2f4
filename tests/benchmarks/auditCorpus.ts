/**
 * Prints how well the audit finds what is seeded in a corpus of workbooks that its rules were not written on:
 * per rule the seeded mistakes, recall and precision, then the findings in clean books. First the layouts that
 * the rules have been mended on, then those that are not all understood yet, then those held out, of which no miss is printed: they show how the audit does
 * on sheets it has never met only as long as nobody looks at them.
 *
 *   npx tsx tests/benchmarks/auditCorpus.ts                          the tables
 *   npx tsx tests/benchmarks/auditCorpus.ts --misses --rule <id>     each miss of the layouts looked at as one line
 *   npx tsx tests/benchmarks/auditCorpus.ts --count 96 --seed 7      more seeded mistakes, drawn otherwise
 *   npx tsx tests/benchmarks/auditCorpus.ts --layout <part of name>  in some of the layouts looked at only
 */
import { parseArgs } from "node:util";
import { lastLayouts } from "../corpus/lastLayouts";
import { layouts } from "../corpus/layouts";
import { mutations } from "../corpus/mutations";
import { newestLayouts } from "../corpus/newestLayouts";
import { precisionOf, recallOf, scoreCorpus, type Score } from "../corpus/score";
import { heldOut } from "../corpus/heldOut";

const WANTED = 0.95;
const { values: asked } = parseArgs({
  options: {
    misses: { type: "boolean", default: false },
    rule: { type: "string" },
    layout: { type: "string", default: "" },
    count: { type: "string", default: "24" },
    seed: { type: "string", default: "1" },
  },
});
const { misses: showsMisses, rule: onlyRule } = asked;
const seed = Number(asked.seed);

function printRules(score: Score): void {
  console.log("rule                             seeded  recall  precision  not expected");
  for (const [rule, each] of score.rules) {
    const [recall, precision] = [recallOf(each), precisionOf(each)];
    const isLow = recall < WANTED || precision < WANTED;
    const cells = [
      ...[rule.padEnd(32), String(each.seeded).padStart(7), recall.toFixed(2).padStart(7)],
      ...[precision.toFixed(2).padStart(10), String(each.unexpected).padStart(13)],
    ];
    console.log(`${cells.join(" ")}${isLow ? "  <" : ""}`);
  }
}

function printClean({ clean }: Score): void {
  const bad = clean.filter(({ errors, warnings }) => errors > 0 || warnings > 1);
  const places = new Set(clean.map(({ layout }) => layout)).size;
  console.log(
    `clean books: ${clean.length} over ${places} layouts; ${bad.length} with an error or two warnings`,
  );
  for (const { layout, errors, warnings } of bad) {
    if (!showsMisses) console.log(`  ${layout}: ${errors} errors, ${warnings} warnings`);
  }
}

function run(title: string, plan: Parameters<typeof scoreCorpus>[0]): Score {
  const started = Date.now();
  const score = scoreCorpus(plan);
  if (!showsMisses) {
    console.log(`\n${title}`);
    printRules(score);
    printClean(score);
    console.log(`${((Date.now() - started) / 1000).toFixed(0)} s`);
  }
  return score;
}

const only = mutations.filter(({ rule }) => onlyRule === undefined || rule === onlyRule);
const plan = { count: Number(asked.count), cleanEach: 3, mutations: only };
const looked = [...layouts, ...lastLayouts, ...(showsMisses ? newestLayouts : [])];
const chosen = looked.filter(({ name }) => name.includes(asked.layout));
const development = run("Development layouts", { ...plan, layouts: chosen, seed });
if (showsMisses) {
  for (const { rule, line } of development.misses) {
    if (onlyRule === undefined || rule === onlyRule) console.log(line);
  }
} else {
  run("Looked at, but not all understood yet", { ...plan, layouts: newestLayouts, seed });
  run("Layouts held out", { ...plan, layouts: heldOut, seed: seed + 1 });
}
