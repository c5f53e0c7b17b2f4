import { auditInSteps } from "../../src/audit/auditInSteps";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { rules } from "../../src/audit/rules";
import { bookOf } from "./bookOf";

const book = bookOf({
  S: [
    ["Ingredient", "Amount (g)"],
    ["Water", 500],
    ["Sucrose", 150],
    ["Fructose", "12,5"],
  ],
});

describe("the audit in steps", () => {
  test("gives the same report as in one go, one step a rule", () => {
    const steps = auditInSteps(book);
    const seen: number[] = [];
    let next = steps.next();
    for (; next.done !== true; next = steps.next()) seen.push(next.value.done);
    expect(next.value).toEqual(auditWorkbook(book));
    expect(next.value.findings.length).toBeGreaterThan(0);
    expect(seen).toEqual(rules.map((_, index) => index + 1));
  });

  test("can be stopped, and leaves rules out", () => {
    const steps = auditInSteps(book);
    steps.next();
    expect(steps.return(undefined as never).done).toBe(true);
    const without = ["number-as-text"];
    const few = auditInSteps(book, { without });
    let next = few.next();
    while (next.done !== true) next = few.next();
    expect(next.value.findings.map(({ rule }) => rule)).not.toContain("number-as-text");
  });
});
