import { condense } from "../../src/audit/condense";
import type { Finding } from "../../src/audit/finding";

const finding = (cell: string, rule = "result-differs"): Finding => ({
  rule,
  severity: "error",
  sheet: "S",
  cell,
  message: `${cell} is off.`,
  effect: null,
});

test("a column with a hundred faults is told by its twenty worst and one line for the rest", () => {
  const findings = Array.from({ length: 100 }, (_, at) => finding(`J${at + 2}`));
  const told = condense(findings);
  expect(told).toHaveLength(21);
  expect(told[20]?.cell).toBe("J22:J101");
  expect(told[20]?.message).toMatch(
    /^80 more cells of this column have the same fault; the largest: J22 is off\.$/,
  );
});

test("other columns and rules are told apart", () => {
  const findings = [
    ...Array.from({ length: 21 }, (_, at) => finding(`J${at + 2}`)),
    finding("K2"),
    finding("J9", "total"),
  ];
  expect(condense(findings)).toHaveLength(23);
});
