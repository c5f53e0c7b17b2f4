import { auditRecalculated } from "../../src/audit/auditRecalculated";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { applyAcceptances } from "../../src/audit/report/applyAcceptances";
import { hashText } from "../../src/audit/report/hashText";
import { recalculate } from "../../src/workbook/evaluate";
import { bookOf, formula, type Rows } from "./bookOf";
import { of } from "./findingsOf";
import { freshValues } from "./freshValues";

const faulty = (amount: string): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Fructose", amount],
];
const keyOf = (rows: Rows): string => auditWorkbook(bookOf({ S: rows })).findings[0]!.key;

test("hashes are those of the published FNV-1a vectors", () => {
  // RFC 9923 (FNV), test vectors for 64-bit FNV-1a of "", "a" and "foobar".
  expect(["", "a", "foobar"].map(hashText)).toEqual([
    "cbf29ce484222325",
    "af63dc4c8601ec8c",
    "85944171f73967e8",
  ]);
});

describe("Accepting a finding", () => {
  const report = auditWorkbook(bookOf({ S: faulty("12,5") }));

  test("its key stays as long as its cell does", () => {
    expect(keyOf(faulty("12,5"))).toBe(report.findings[0]!.key);
    expect(keyOf(faulty("12,6"))).not.toBe(report.findings[0]!.key);
    expect(keyOf([...faulty("12,5"), ["", ""], ["Made by", "us"]])).toBe(report.findings[0]!.key);
  });

  test("it is kept with its reason and no longer counted", () => {
    const [first] = report.findings;
    const accepted = applyAcceptances(report, [{ finding: first!.key, reason: "typed so" }]);
    expect(accepted.findings).toEqual(report.findings.slice(1));
    expect(accepted.accepted).toEqual([{ finding: first, reason: "typed so" }]);
    expect(accepted.summary).toMatchObject({ errors: 0, accepted: 1 });
    expect(report.summary).toMatchObject({ errors: 1, accepted: 0 });
    // Taken back, the report is the first again.
    expect(applyAcceptances(accepted, [])).toEqual(report);
  });

  test("one whose cell has changed, or whose finding is gone, is told as such and does not count", () => {
    const given = [
      { finding: keyOf(faulty("99,5")), reason: "old" },
      { finding: "errors-elsewhere@S!Z9#0", reason: "gone" },
    ];
    const { findings, staleAcceptances, summary } = applyAcceptances(report, given);
    expect([findings.length, summary.errors, summary.accepted]).toEqual([1, 1, 0]);
    expect(staleAcceptances.map(({ reason, why }) => [reason, why])).toEqual([
      ["old", expect.stringContaining("has changed")],
      ["gone", expect.stringContaining("no such finding")],
    ]);
  });
});

describe("The second value", () => {
  const rows: Rows = [
    ["Ingredient", "Amount (g)"],
    ["Water", 500],
    ["Sucrose", formula("B2*0.3", 50)],
    ["Fructose", formula("OTHERS.SHARE(B2)", 20)],
    ["Total", formula("SUM(B2:B4)", 570)],
  ];

  test("the engine's values differ from the stored ones: what that does to the recipe", async () => {
    const { findings, summary } = await auditRecalculated(bookOf({ S: rows }), recalculate);
    const [stale] = of(findings, "stale-value");
    expect(stale).toMatchObject({ cell: "B3", effect: { quantity: "freezing point", unit: "°C" } });
    // 100 g of sucrose more in 500 g of water: by the classroom law 1.86 · 100/342.3/0.5 = 1.09 K lower.
    const lowerK = Number(stale?.effect?.from) - Number(stale?.effect?.to);
    expect(lowerK).toBeGreaterThan(1.05);
    expect(lowerK).toBeLessThan(1.5);
    expect(summary.recalculation).toEqual({
      calculated: 2,
      leftAlone: 1,
      complete: false,
      reason: "S!B4 kept the stored value: The function OTHERS.SHARE is not known here.",
    });
  });

  test("the engine is not asked where there is no formula", async () => {
    const { summary } = await auditRecalculated(bookOf({ S: faulty("12,5") }), () => {
      throw new Error("asked");
    });
    expect(summary.recalculation).toEqual({
      calculated: 0,
      leftAlone: 0,
      complete: true,
      reason: null,
    });
  });

  test("not done, or done in part, is said", () => {
    const reasonOf = (...options: Parameters<typeof auditWorkbook>) =>
      auditWorkbook(...options).summary.recalculation.reason;
    expect(reasonOf(bookOf({ S: rows }))).toContain("stored results were taken");
    const recalculated = { ...freshValues({ B3: 150 }), isComplete: false };
    expect(reasonOf(bookOf({ S: rows }), { recalculated })).toContain("(1 were)");
  });
});

describe("The values of an open workbook", () => {
  const summaryOf = (calculation: "automatic" | "manual" | "automatic except tables") => {
    const book = bookOf({ S: [["Ingredient", "g"]] }, {}, { calculation });
    return auditWorkbook(book, { isLive: true }).summary.recalculation;
  };
  test("are what its formulas give", () => {
    expect(summaryOf("automatic")).toMatchObject({ complete: true, reason: null });
  });
  test("may be old where it calculates on command only, and that is said", () => {
    expect(summaryOf("manual")).toMatchObject({
      complete: false,
      reason: expect.stringMatching(/manual calculation: its values may be older/),
    });
    expect(summaryOf("automatic except tables").reason).toMatch(/data tables/);
  });
});
