import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { bookOf } from "./bookOf";
import { of } from "./findingsOf";

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
  ])("'%s' would be mended by the number %d", (amount, to) => {
    expect(editsFor(amount)).toEqual([[{ sheet: "S", cell: "B4", from: amount, to }]]);
  });

  test.each(["1,200", "1.200", "12 oz", "12,5 g"])(
    "'%s' is left for a person to decide: a thousand or a decimal, another unit",
    (amount) => {
      expect(editsFor(amount)).toEqual([undefined]);
    },
  );
});
