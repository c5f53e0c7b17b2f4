import * as z from "zod";

const count = z.int().nonnegative();

const effect = z.strictObject({
  quantity: z.string(),
  from: z.union([z.number(), z.string()]),
  to: z.union([z.number(), z.string()]),
  unit: z.string(),
});

const edit = z.strictObject({
  sheet: z.string(),
  cell: z.string().describe("A1"),
  from: z.union([z.string(), z.number()]),
  to: z.union([z.string(), z.number()]),
});

const finding = z.strictObject({
  rule: z.string(),
  severity: z.enum(["error", "warning", "note"]),
  sheet: z.string(),
  cell: z
    .string()
    .regex(/^[A-Z]{1,3}\d+(:[A-Z]{1,3}\d+)?$/)
    .describe("A1 or A1:B9"),
  message: z.string().describe("One sentence of evidence"),
  effect: effect.nullable().describe("What it does to the answer; null when nothing"),
  fix: z.string().optional(),
  edits: z.array(edit).optional().describe("What the fix would write, cell by cell"),
  key: z.string().describe("For accepting it; changes when the cell does"),
});

const correction = z.strictObject({
  sheet: z.string(),
  range: z.string().describe("A1:C9, headers included"),
  recipe: z.enum(["down", "across", "none"]),
  names: z.string().optional().describe("The column (or row, across) of the names"),
  amounts: z.string().optional().describe("Those of the amounts: B, D:F"),
  unit: z.string().optional().describe("Of all amounts, whatever headers say"),
  heading: z.string().optional().describe("The words in its first row, by which it is known again"),
});

const acceptance = { reason: z.string() };

/** The report as it is printed with --json; report.schema.json is made from it. */
export const reportSchema = z.strictObject({
  findings: z.array(finding),
  accepted: z.array(z.strictObject({ finding, ...acceptance })),
  staleAcceptances: z.array(
    z.strictObject({ finding: z.string(), ...acceptance, why: z.string() }),
  ),
  recipes: z.array(
    z.strictObject({
      sheet: z.string(),
      range: z.string(),
      recipes: count,
      taken: z.string(),
      isCorrected: z.boolean().describe("True when the user said how it lies"),
      correction: correction.describe("An entry for --corrections that has it read like this"),
    }),
  ),
  reading: z.array(z.string()).describe("How the file was read"),
  summary: z.strictObject({
    sheets: count,
    recipes: count,
    errors: count,
    warnings: count,
    notes: count,
    accepted: count,
    recalculation: z.strictObject({
      calculated: count,
      leftAlone: count,
      complete: z.boolean(),
      reason: z.string().nullable(),
    }),
  }),
});
