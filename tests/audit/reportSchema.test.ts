import { readFileSync } from "node:fs";
import path from "node:path";
import Ajv2020 from "ajv/dist/2020";
import * as z from "zod";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { applyAcceptances } from "../../src/audit/report/applyAcceptances";
import { readAcceptances } from "../../src/audit/report/readAcceptances";
import { reportSchema } from "../../src/audit/report/reportSchema";
import { isProblem } from "../../src/foundation/problem";
import { bookOf } from "./bookOf";

const folder = path.join(__dirname, "..", "..", "src", "audit", "report");
const schema: object = JSON.parse(readFileSync(path.join(folder, "report.schema.json"), "utf8"));
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);

const report = auditWorkbook(
  bookOf({
    S: [
      ["Ingredient", "Amount (g)", "Notes"],
      ["Water", 500],
      ["Sucrose", "150,5"],
      ["Pistachios", 20],
      ["Moon dust", 5],
    ],
  }),
);

test("the published schema is the one in the code (npx tsx src/audit/report/writeSchema.ts writes it)", () => {
  expect(schema).toEqual(JSON.parse(JSON.stringify(z.toJSONSchema(reportSchema))));
});

test("what is printed is of the published schema, accepted and stale findings included", () => {
  const [first] = report.findings;
  const given = [
    { finding: first!.key, reason: "so it is" },
    { finding: "rule@S!A1#0", reason: "was so" },
  ];
  for (const each of [report, applyAcceptances(report, given)]) {
    validate(JSON.parse(JSON.stringify(each)));
    expect(validate.errors).toBeNull();
  }
  expect(report.findings.length).toBeGreaterThan(2);
});

test.each<[string, (printed: typeof report) => unknown]>([
  [
    "a severity of its own",
    (each) => ({ ...each, findings: [{ ...each.findings[0], severity: "x" }] }),
  ],
  ["a cell that is none", (each) => ({ ...each, findings: [{ ...each.findings[0], cell: "1A" }] })],
  ["a summary that is missing", ({ findings }) => ({ findings })],
  ["something more", (each) => ({ ...each, more: 1 })],
])("the schema refuses %s", (_, spoilt) => {
  expect(validate(JSON.parse(JSON.stringify(spoilt(report))))).toBe(false);
});

test.each([
  ["no JSON", "{", /not JSON/],
  ["a number", "7", /not of the shape/],
  ["an entry without a reason", '[{"finding":"a"}]', /at 0\.reason/],
  ["a blank reason", '[{"finding":"a","reason":" "}]', /a reason must not be blank/],
  ["a field too many", '[{"finding":"a","reason":"b","by":"c"}]', /"by"/],
])("a file of acceptances with %s ends in one sentence", (_, text, sentence) => {
  const answer = readAcceptances(text);
  expect(isProblem(answer) && answer.message).toMatch(sentence);
  expect((answer as { message: string }).message).toMatch(/^[^\n]+\.$/);
});

test("a good file of acceptances", () => {
  expect(readAcceptances('[{"finding":"a","reason":" b "}]')).toEqual([
    { finding: "a", reason: "b" },
  ]);
});
