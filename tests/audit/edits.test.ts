import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Finding } from "../../src/audit/finding";
import { parseCellName } from "../../src/workbook/address";
import type { Workbook } from "../../src/workbook/model";
import { bookOf, type Rows } from "./bookOf";
import { of } from "./findingsOf";
import { calculatedAnew, withEdits } from "./mended";
import type { RuleCase } from "./ruleCase";
import { ruleCases } from "./ruleCases";

const editsFor = (amount: string) =>
  of(
    auditWorkbook(
      bookOf({
        S: [
          ["Ingredient", "Amount (g)"],
          ["Water", 500],
          ["Sucrose", 150],
          ["Fructose", amount],
        ],
      }),
    ).findings,
    "number-as-text",
  ).map(({ edits }) => edits);

describe("An amount that is a text", () => {
  test.each([
    ["12,5", 12.5],
    ["60", 60],
    [" 40.25 ", 40.25],
    ["12,5 g", 12.5],
  ])("'%s' would be mended by the number %d", (amount, to) => {
    expect(editsFor(amount)).toEqual([[{ sheet: "S", cell: "B4", from: amount, to }]]);
  });

  test.each(["1,200", "1.200", "1,200 g", "12 oz"])(
    "'%s' is left for a person to decide: a thousand or a decimal, another unit",
    (amount) => {
      expect(editsFor(amount)).toEqual([undefined]);
    },
  );
});

/** Rules whose true examples, or some of them, can be mended without asking anything. */
const MENDING = [
  "number-as-text",
  "unknown-ingredient",
  "freezing-point-sign",
  "total-incomplete",
  "cryoscopic-constant",
  "constant-of-a-solute",
  "particles-not-counted",
  "inclusion-as-solute",
  "abv-as-mass",
  "temperature-units-mixed",
  "ice-of-water-or-mix",
  "water-not-counted",
  "per-water-or-per-mix",
  "percent-and-fraction",
  "mass-units-mixed",
  "formula-overwritten",
  "inconsistent-formula",
  "reference-slips",
  "formula-reaches-out",
  "name-with-odd-letters",
  "more-digits-than-known",
];

interface Mending {
  readonly rule: string;
  readonly what: string;
  readonly book: Workbook;
  readonly finding: Finding;
}

const bookFor = ({ rows, extras, workbook }: RuleCase): Workbook =>
  bookOf(
    Array.isArray(rows) ? { Sheet1: rows as Rows } : (rows as Record<string, Rows>),
    { Sheet1: extras ?? {} },
    workbook,
  );

const mendings: readonly Mending[] = ruleCases
  .filter(({ cells }) => cells.length > 0)
  .flatMap((example) => {
    const book = bookFor(example);
    return of(auditWorkbook(book).findings, example.rule)
      .filter(({ edits }) => edits !== undefined)
      .map((finding) => ({ rule: example.rule, what: example.what, book, finding }));
  });

const placed = ({ rule, sheet, cell }: Finding): string => `${rule} ${sheet}!${cell}`;
const errorsOf = (book: Workbook): string[] =>
  auditWorkbook(book)
    .findings.filter(({ severity }) => severity === "error")
    .map(placed);

test.each(MENDING)("%s can be mended by its edits", (rule) => {
  expect(mendings.filter((one) => one.rule === rule).length).toBeGreaterThan(0);
});

test.each(mendings.map((one) => ({ ...one, cell: one.finding.cell })))(
  "$rule: the edits mend $what ($cell), and bring about no error",
  async ({ book, finding }) => {
    const edits = finding.edits ?? [];
    for (const { sheet, cell, from } of edits) {
      const place = parseCellName(cell)!;
      const before = book.sheets
        .find(({ name }) => name === sheet)
        ?.cellAt(place.row, place.column);
      const content = before?.formula === undefined ? (before?.value ?? "") : `=${before.formula}`;
      expect(from).toBe(content);
    }
    const known = new Set([...errorsOf(book), ...errorsOf(await calculatedAnew(book))]);
    const after = await calculatedAnew(withEdits(book, edits));
    expect(auditWorkbook(after).findings.map(placed)).not.toContain(placed(finding));
    expect(errorsOf(after).filter((error) => !known.has(error))).toEqual([]);
  },
);

test("every finding of the true examples says what to do", () => {
  const silent = ruleCases
    .flatMap((example) => of(auditWorkbook(bookFor(example)).findings, example.rule))
    .filter(({ fix }) => fix === undefined);
  expect(silent.map(placed)).toEqual([]);
});
