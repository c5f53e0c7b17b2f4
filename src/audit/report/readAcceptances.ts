import * as z from "zod";
import { badInput } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Acceptance } from "./auditReport";

const MOST = 10_000;

const acceptances = z
  .array(
    z.strictObject({
      finding: z.string().min(1).max(2000),
      reason: z.string().trim().min(1, "a reason must not be blank").max(2000),
    }),
  )
  .max(MOST);

const SHAPE = `[{"finding": "<key of the finding>", "reason": "why it may stay"}]`;

/** Reads a file of acceptances; a Problem in one sentence when it is not of that shape. */
export function readAcceptances(text: string): Result<readonly Acceptance[]> {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return badInput(`The file of acceptances is not JSON; it holds ${SHAPE}.`);
  }
  const checked = acceptances.safeParse(content);
  if (checked.success) return checked.data;
  const [issue] = checked.error.issues;
  const where = issue === undefined || issue.path.length === 0 ? "" : ` at ${issue.path.join(".")}`;
  return badInput(
    `The file of acceptances is not of the shape ${SHAPE}${where}: ${issue?.message ?? ""}.`,
  );
}
