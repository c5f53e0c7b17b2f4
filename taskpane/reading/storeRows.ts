import type { SpreadsheetHost } from "../host";
import { isOfKind, keptAddress, newContents, updatedContents } from "./keptSheet";
import type { KeptRow, KeptSheet } from "./keptSheet";

export interface Stored {
  readonly outcome: "added" | "updated" | "changed meanwhile" | "not ours";
  readonly sheet: string;
}

/** Keeps entries on a sheet of their own: the one that holds them already, or a new one. */
export async function storeRows(
  host: SpreadsheetHost,
  kind: KeptSheet,
  rows: readonly KeptRow[],
  sheet: string | null,
  { name, headers }: { readonly name: string; readonly headers: readonly string[] },
): Promise<Stored> {
  if (sheet === null) {
    const contents = newContents(kind, headers, rows);
    return { outcome: "added", sheet: await host.addSheet(name, contents) };
  }
  const used = await host.usedBlock(sheet);
  if (used === null || !isOfKind(kind, used)) return { outcome: "not ours", sheet };
  const address = keptAddress(kind, used.formulas.length, rows);
  const block = await host.read(sheet, address);
  const answer = await host.insert(block, updatedContents(kind, block, rows), { overwrite: true });
  return { outcome: answer === "written" ? "updated" : "changed meanwhile", sheet };
}
