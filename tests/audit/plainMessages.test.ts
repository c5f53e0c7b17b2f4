import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { bookOf, formula, type Rows } from "./bookOf";

const told = (rows: Rows, rule: string) =>
  auditWorkbook(bookOf({ Sheet: rows })).findings.filter((finding) => finding.rule === rule);

test("a total that leaves out what is nothing yet says so, without an effect", () => {
  const rows = (salt: number): Rows => [
    ["Ingredient", "Grams"],
    ["Water", 700],
    ["Sucrose", 200],
    ["Salt", formula("C1*1", salt)],
    ["Total", formula("SUM(B2:B3)", 900)],
  ];
  const [none] = told(rows(0), "total-incomplete");
  expect(none).toMatchObject({
    message: "The total in B5 is 900 as it should be, but it leaves out B4.",
    effect: null,
  });
  const [some] = told(rows(2), "total-incomplete");
  expect(some?.effect).toMatchObject({ from: 900, to: 902 });
});

test.each([
  ["Menge [g]", "The recipe has"],
  ["weight, g", "The recipe has"],
  ["g", "The recipe has"],
  ["Batch 2 (g)", '"Batch 2 (g)" has'],
  ["Milk ice", '"Milk ice" has'],
])("a recipe headed %p begins its sentence with %p", (heading, beginning) => {
  const [finding] = told(
    [
      ["Ingredient, in g", heading],
      ["Whole milk", 600],
      ["Skim milk powder", 200],
      ["Sucrose", 100],
    ],
    "lactose-may-feel-sandy",
  );
  expect(finding?.message.startsWith(beginning)).toBe(true);
});
