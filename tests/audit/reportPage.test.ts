import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { applyAcceptances } from "../../src/audit/report/applyAcceptances";
import { htmlReport } from "../../src/audit/report/htmlReport";
import { bookOf } from "./bookOf";

const attack = `<img src=x onerror="alert(1)">&'"`;
const report = auditWorkbook(
  bookOf({
    [`S ${attack}`]: [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", "150,5"],
      ["Pistachios", 20],
      [`Moon ${attack}\u0007`, 5],
    ],
  }),
);
const page = htmlReport(`book ${attack}.xlsx`, report);

test("nothing of the workbook becomes markup, and nothing is loaded or run", () => {
  expect(page).not.toContain("<img");
  expect(page).toContain("&lt;img src=x");
  expect(page).not.toContain("\u0007");
  expect(page).not.toMatch(/<script|<link|\ssrc=(?!x)|https?:/);
  expect(page).toContain("default-src 'none'");
});

test("each finding says its effect first, then its severity in words and its cell", () => {
  const items = [...page.matchAll(/<li class="(error|warning|note)">(.*?)<\/li>/gs)];
  expect(items).toHaveLength(report.findings.length);
  for (const [index, [, severity, inside = ""]] of items.entries()) {
    const { cell, effect } = report.findings[index]!;
    const text = inside.replace(/<[^>]*>/g, "|");
    const start = effect === null ? "No effect on the answer" : effect.quantity;
    expect(text.replace(/^\|+/, "").startsWith(start)).toBe(true);
    expect(text).toContain(`|${severity ?? ""}|`);
    expect(text).toContain(`!${cell}`);
  }
});

test("accepted findings keep their reason on the page", () => {
  const [first] = report.findings;
  const accepted = applyAcceptances(report, [
    { finding: first!.key, reason: "typed <so>" },
    { finding: "rule@S!A1#0", reason: "old" },
  ]);
  const html = htmlReport("book.xlsx", accepted);
  expect(html).toMatch(/typed &lt;so(>|&gt;)/);
  expect(html).toContain("No longer accepted");
});
