import type { Layout } from "./kit";
import { apiaries } from "./settled/apiary";
import { popColumns } from "./settled/popColumns";
import { savedMixes } from "./settled/savedMixes";
import { schuelerfirmen } from "./settled/schuelerfirma";
import { scoopShops } from "./settled/scoopShop";
import { sortenspalten } from "./settled/spalten";
import { stillRooms } from "./settled/stillRoom";
import { stuecklisten } from "./settled/stueckliste";

/** Sheets kept for years. */
export const settled: readonly Layout[] = [
  ...scoopShops,
  ...popColumns,
  ...stillRooms,
  ...apiaries,
  ...savedMixes,
  ...sortenspalten,
  ...stuecklisten,
  ...schuelerfirmen,
];
