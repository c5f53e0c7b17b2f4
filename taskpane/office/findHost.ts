import { excelHost } from "../excelHost";
import type { SpreadsheetHost } from "../host";

const PATIENCE_MS = 5000;
const NEEDED_API = "1.7"; // getSurroundingRegion and the name of a defined name's formula

export type FoundHost =
  | { readonly host: SpreadsheetHost }
  | { readonly host: null; readonly why: "no script" | "no spreadsheet" | "too old" };

/** What the host's script says of where it runs; null when it does not say so in time. */
async function ready() {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const patienceEnds = new Promise<null>((resolve) => {
    timer = setTimeout(() => resolve(null), PATIENCE_MS);
  });
  const info = await Promise.race([Office.onReady(), patienceEnds]);
  clearTimeout(timer);
  return info;
}

/** Waits until the host's script knows where it runs. */
export async function findHost(): Promise<FoundHost> {
  if (typeof Office === "undefined") return { host: null, why: "no script" };
  const info = await ready();
  // Compared as text: the script's own list of hosts need not be there.
  if (info === null || String(info.host) !== "Excel") {
    return { host: null, why: "no spreadsheet" };
  }
  if (!Office.context.requirements.isSetSupported("ExcelApi", NEEDED_API)) {
    return { host: null, why: "too old" };
  }
  return { host: excelHost() };
}
