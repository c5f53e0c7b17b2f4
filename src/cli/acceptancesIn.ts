import { readFile } from "node:fs/promises";
import type { Acceptance } from "../audit/report/auditReport";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";

/** The acceptances in a file, none without one. */
export async function acceptancesIn(file: string | null): Promise<Result<readonly Acceptance[]>> {
  if (file === null) return [];
  let text: string;
  try {
    text = await readFile(file, "utf8");
  } catch {
    return badInput(`The file of acceptances "${file}" cannot be read.`);
  }
  const { readAcceptances } = await import("../audit/report/readAcceptances");
  return readAcceptances(text);
}
