import type { AuditReport } from "../../src/audit/report/auditReport";
import type { SpreadsheetHost } from "../host";
import type { Words } from "../words/words";
import {
  acceptanceAddress,
  acceptanceContents,
  isAcceptanceSheet,
  updatedContents,
} from "./acceptanceSheet";

export interface Stored {
  readonly outcome: "added" | "updated" | "changed meanwhile" | "not ours";
  readonly sheet: string;
}

/** Keeps the accepted findings on a sheet of their own: a new one, or the one that holds them already. */
export async function storeAcceptances(
  host: SpreadsheetHost,
  words: Words,
  { accepted, staleAcceptances }: AuditReport,
  sheet: string | null,
  date: string,
): Promise<Stored> {
  const texts = words.readThrough.acceptanceSheet;
  if (sheet === null) {
    const contents = acceptanceContents(accepted, texts.headers, date);
    return { outcome: "added", sheet: await host.addSheet(texts.name, contents) };
  }
  const used = await host.usedBlock(sheet);
  if (used === null || !isAcceptanceSheet(used)) return { outcome: "not ours", sheet };
  const address = acceptanceAddress(used.formulas.length, accepted.length);
  const block = await host.read(sheet, address);
  const contents = updatedContents(block, accepted, staleAcceptances, date);
  const answer = await host.insert(block, contents, { overwrite: true });
  return { outcome: answer === "written" ? "updated" : "changed meanwhile", sheet };
}
