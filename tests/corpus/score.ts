import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Finding } from "../../src/audit/finding";
import { parseRangeName } from "../../src/workbook/address";
import { a1, type CorpusBook, type Spot } from "./book";
import { buildBook, type Layout } from "./kit";
import type { Mutation } from "./mutation";
import { chanceFor, seedBooks, type SeededBook } from "./seed";
import { toWorkbook } from "./toWorkbook";

export interface RuleScore {
  seeded: number;
  found: number;
  /** Findings of the rule that were expected, and that were not. */
  expected: number;
  unexpected: number;
}

export interface CleanScore {
  readonly layout: string;
  readonly errors: number;
  readonly warnings: number;
}

/** Something that went wrong, in one line. */
export interface Miss {
  readonly rule: string;
  readonly line: string;
}

export interface Score {
  readonly rules: Map<string, RuleScore>;
  readonly clean: CleanScore[];
  readonly misses: Miss[];
}

const findingsIn = (book: CorpusBook): readonly Finding[] => {
  const { workbook, recalculated } = toWorkbook(book);
  return auditWorkbook(workbook, { recalculated }).findings;
};

function names(finding: Finding, spot: Spot): boolean {
  const range = parseRangeName(finding.cell);
  if (range === null || finding.sheet !== spot.sheet) return false;
  const { row, column } = spot;
  const isInRows = row >= range.top && row <= range.bottom;
  return isInRows && column >= range.left && column <= range.right;
}

const namesOne = (finding: Finding, spots: readonly Spot[]): boolean =>
  spots.length === 0 || spots.some((spot) => names(finding, spot));

const told = ({ rule, sheet, cell, message }: Finding): string =>
  `${rule} ${sheet}!${cell} "${message}"`;

const scoreOf = ({ rules }: Score, rule: string): RuleScore => {
  const score = rules.get(rule) ?? { seeded: 0, found: 0, expected: 0, unexpected: 0 };
  rules.set(rule, score);
  return score;
};

function unexpected(score: Score, finding: Finding, where: string): void {
  scoreOf(score, finding.rule).unexpected += 1;
  score.misses.push({ rule: finding.rule, line: `not expected, ${where}: ${told(finding)}` });
}

function scoreSeeded(score: Score, { mutation, variant, marked, spots }: SeededBook): void {
  const { rule, fair } = mutation;
  const findings = findingsIn(marked.book);
  const own = scoreOf(score, rule);
  own.seeded += 1;
  const where = `${rule} (way ${variant + 1}) in "${marked.layout}"`;
  let isFound = false;
  for (const finding of findings) {
    if (finding.rule === rule && namesOne(finding, spots)) {
      isFound = true;
      own.expected += 1;
    } else if (mutation.sameLine?.includes(finding.rule) === true && namesOne(finding, spots)) {
      isFound = true;
    } else if (!(finding.rule in fair)) unexpected(score, finding, where);
  }
  if (isFound) own.found += 1;
  else {
    const at = spots.map((spot) => `${spot.sheet}!${a1(spot)}`).join(" ");
    const said = findings.map(told).join("; ") || "nothing";
    score.misses.push({ rule, line: `not found, ${where} at ${at}; said: ${said}` });
  }
}

function scoreClean(score: Score, layout: Layout, seed: number): void {
  const findings = findingsIn(buildBook(layout, chanceFor(seed, layout.name)).book);
  const count = (severity: string) => findings.filter((each) => each.severity === severity).length;
  score.clean.push({ layout: layout.name, errors: count("error"), warnings: count("warning") });
  for (const finding of findings) unexpected(score, finding, `clean "${layout.name}" seed ${seed}`);
}

export interface ScorePlan {
  readonly layouts: readonly Layout[];
  readonly mutations: readonly Mutation[];
  /** Books seeded for each rule. */
  readonly count: number;
  /** Clean books of each layout. */
  readonly cleanEach: number;
  readonly seed: number;
}

/** Audits clean and seeded books, and counts. */
export function scoreCorpus({ layouts, mutations, count, cleanEach, seed }: ScorePlan): Score {
  const score: Score = { rules: new Map(), clean: [], misses: [] };
  for (const layout of layouts) {
    for (let each = 0; each < cleanEach; each += 1) scoreClean(score, layout, seed * 1000 + each);
  }
  for (const mutation of mutations) {
    scoreOf(score, mutation.rule);
    for (const book of seedBooks(mutation, layouts, count, seed)) scoreSeeded(score, book);
  }
  return score;
}

export const precisionOf = ({ expected, unexpected: wrong }: RuleScore): number =>
  expected + wrong === 0 ? 1 : expected / (expected + wrong);

export const recallOf = ({ found, seeded }: RuleScore): number =>
  seeded === 0 ? 1 : found / seeded;
