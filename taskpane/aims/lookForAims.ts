import type { Workbook } from "../../src/workbook/model";
import { toMatrix } from "../bowl/cells";
import type { OwnRange } from "../bowl/ownIngredients";
import type { Store } from "../components/store";
import type { SpreadsheetHost } from "../host";
import type { AimState } from "./aimStore";
import { findAimTables, type AimTable } from "./aimTables";

async function read(
  host: SpreadsheetHost,
  ranges: readonly OwnRange[],
): Promise<readonly AimTable[]> {
  const tables: AimTable[] = [];
  for (const { sheet, address } of ranges) {
    tables.push({ sheet, address, cells: toMatrix((await host.read(sheet, address)).values) });
  }
  return tables;
}

/** The same cells stay the same state, so that nothing is drawn anew for them. */
function keep(store: Store<AimState>, tables: readonly AimTable[]): void {
  const now = store.now();
  if (JSON.stringify(now.tables) !== JSON.stringify(tables)) store.set({ ...now, tables });
}

/** The tables of targets that a workbook holds, with their cells as they are now. */
export const takeAims = async (
  host: SpreadsheetHost,
  store: Store<AimState>,
  workbook: Workbook,
): Promise<void> => keep(store, await read(host, findAimTables(workbook)));

/** The cells of the known tables, which may have changed. */
export const refreshAims = async (host: SpreadsheetHost, store: Store<AimState>): Promise<void> =>
  keep(store, await read(host, store.now().tables));
