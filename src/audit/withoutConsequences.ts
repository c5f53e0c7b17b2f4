import { parseRangeName, rangeName } from "../workbook/address";
import type { CellRange, Workbook } from "../workbook/model";
import { overlaps, referencesOf } from "../workbook/references";
import type { Finding } from "./finding";
import { precedentsOf } from "./formulas/precedents";

/** Names that a recipe function refuses: every result that reads one is an error. */
const NAMES = [
  "unknown-ingredient",
  "ambiguous-ingredient",
  "hydrate-not-stated",
  "name-with-odd-letters",
  "own-ingredients-refused",
];
/** Amounts that do not count as they are meant. */
const AMOUNTS = ["number-as-text", "percent-and-fraction", "mass-units-mixed"];

/** What is wrong with a whole mix. */
const OF_A_MIX = [
  "lactose-twice",
  "more-than-dissolves",
  "lactose-may-feel-sandy",
  "polyol-will-crystallise",
  "too-much-alcohol-to-set",
];

/** How a part of a mix was misread, by what it comes to. */
const MISREADINGS = [
  ...["water-not-counted", "inclusion-as-solute", "abv-as-mass", "per-water-or-per-mix"],
];

/**
 * What may follow from what: a finding of a rule on the left goes where its formula reads a cell that has a finding
 * of one on the right. There it is mended, and both are gone; one cause is told once, not in every row.
 */
const FOLLOWS_FROM: Readonly<Record<string, readonly string[]>> = {
  "error-in-an-amount": [...NAMES, ...AMOUNTS, "error-in-an-amount"],
  "result-differs": [...NAMES, ...AMOUNTS, "error-in-an-amount"],
  "particles-not-counted": ["constant-of-a-solute"],
  "total-incomplete": ["number-as-text"],
  // A link to an amount that is text is text, too.
  "number-as-text": ["number-as-text"],
  // Amounts that are calculated from shares, or summed up for a shopping list, are as wrong as those.
  "mass-units-mixed": ["percent-and-fraction", "mass-units-mixed"],
  // A part of wrong amounts comes to what a misreading of the right ones would.
  ...Object.fromEntries(MISREADINGS.map((rule) => [rule, AMOUNTS])),
  // Grams calculated from shares, batches from a base: the same mix once more.
  ...Object.fromEntries(OF_A_MIX.map((rule) => [rule, [rule]])),
};

/**
 * What another finding says better of the same cell: a typed number among formulas that has another number's meaning,
 * a sum unlike its neighbours that leaves something out. The formula is told once that is mended. An amount that takes
 * another line's number makes a mix that nobody meant.
 */
const SAID_BY: Readonly<Record<string, readonly string[]>> = {
  "formula-overwritten": [
    ...["per-water-or-per-mix", "freezing-point-sign", "ice-of-water-or-mix", "water-not-counted"],
  ],
  "inconsistent-formula": ["total-incomplete", "water-not-counted"],
  // The total of what each line brings is an answer, too.
  "total-incomplete": ["water-not-counted"],
  // Calculated anew it may be right.
  "constant-of-a-solute": ["stale-value"],
  ...Object.fromEntries(OF_A_MIX.map((rule) => [rule, ["reference-slips"]])),
};

interface Cause {
  readonly rule: string;
  readonly sheet: string;
  readonly range: CellRange;
}

function causesAmong(findings: readonly Finding[]): readonly Cause[] {
  const ids = new Set([FOLLOWS_FROM, SAID_BY].flatMap((each) => Object.values(each).flat()));
  return findings.flatMap(({ rule, sheet, cell }) => {
    const range = ids.has(rule) ? parseRangeName(cell) : null;
    return range === null ? [] : [{ rule, sheet, range }];
  });
}

/** A formula that lost what it read has a mistake of its own. */
const BROKEN = /#REF!/;

/** Whether another finding says of the same cell what its number is. */
function isSaid({ rule, sheet, cell }: Finding, causes: readonly Cause[]): boolean {
  const by = SAID_BY[rule] ?? [];
  const place = by.length === 0 ? null : parseRangeName(cell);
  return (
    place !== null &&
    causes.some((one) => by.includes(one.rule) && one.sheet === sheet && overlaps(one.range, place))
  );
}

const LINK = /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d{1,7}$/iu;

/** Whether a cell only shows another one of which the same is told. */
function isLinkTo(workbook: Workbook, finding: Finding, findings: readonly Finding[]): boolean {
  const place = parseRangeName(finding.cell);
  const sheet = workbook.sheets.find(({ name }) => name === finding.sheet);
  const formula = place === null ? undefined : sheet?.cellAt(place.top, place.left)?.formula;
  if (formula === undefined || !LINK.test(formula)) return false;
  const [linked] = referencesOf(formula);
  if (linked === undefined) return false;
  const home = linked.sheet ?? finding.sheet;
  return findings.some(
    ({ rule, sheet: other, cell }) =>
      rule === finding.rule && other === home && cell === rangeName(linked.range),
  );
}

function follows(workbook: Workbook, finding: Finding, causes: readonly Cause[]): boolean {
  const from = FOLLOWS_FROM[finding.rule] ?? [];
  const able = causes.filter(({ rule }) => from.includes(rule));
  const place = able.length === 0 ? null : parseRangeName(finding.cell);
  const sheet = workbook.sheets.find(({ name }) => name === finding.sheet);
  if (place === null || sheet === undefined) return false;
  const { top: row, left: column } = place;
  const formula = sheet.cellAt(row, column)?.formula;
  if (formula === undefined || BROKEN.test(formula)) return false;
  return precedentsOf(workbook, sheet, { row, column }).some(({ sheet: other, range }) =>
    able.some((cause) => cause.sheet === other.name && overlaps(cause.range, range)),
  );
}

/** Findings without those that only follow from another one. */
export function withoutConsequences(
  workbook: Workbook,
  findings: readonly Finding[],
): readonly Finding[] {
  const causes = causesAmong(findings);
  return findings.filter(
    (finding) =>
      !isSaid(finding, causes) &&
      !follows(workbook, finding, causes) &&
      !isLinkTo(workbook, finding, findings),
  );
}
